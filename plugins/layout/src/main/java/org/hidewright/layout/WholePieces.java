package org.hidewright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Money;
import org.hidewright.layout.CuttingLayout.LaidOut;
import org.hidewright.layout.CuttingLayout.Panel;
import org.hidewright.layout.CuttingLayout.Placed;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.CuttingLayout.SheetOfLeather;
import org.hidewright.layout.PiecesFromLeather.Gives;
import org.hidewright.layout.PiecesFromLeather.Stock;

/** How many whole pieces lie on the leather, and how many could by its area. */
final class WholePieces {
    private static final Formula MOST = Formula.of("layout-most", "n <= A / a", Origins.ARITHMETIC);
    private static final Formula EACH = Formula.of("layout-each", "A / n", Origins.ARITHMETIC);

    static final List<Formula> FORMULAS = allOf(LayoutAnswers.FORMULAS);

    private final Stock stock;
    private final LayoutTask one;
    private final int atMost;

    /** @throws Refusal where the leather or the parts cannot be as they are asked for */
    WholePieces(Stock stock) throws Refusal {
        this.stock = stock;
        this.one = LayoutTask.of(stock.cut(1, Optional.empty()));
        this.atMost = (int) Math.min(pieceArea() > 0 ? sheetsArea() / pieceArea() : 0, one.most());
    }

    private static List<Formula> allOf(List<Formula> formulas) {
        List<Formula> all = new ArrayList<>(formulas);
        all.add(MOST);
        all.add(EACH);
        return List.copyOf(all);
    }

    private double pieceArea() {
        return one.pieces().stream().mapToDouble(CutPiece::area).sum();
    }

    private double sheetsArea() {
        return one.sheets().stream().mapToDouble(CutSheet::area).sum();
    }

    /** How many there are leather for by its area; no layout gives more. */
    int atMost() {
        return atMost;
    }

    /** As many pieces as the places that stand there were found for. */
    private int laidFor() {
        int places = stock.layout().map(Places::pieces).orElse(List.of()).size();
        return Math.max(1, (places + one.pieces().size() - 1) / one.pieces().size());
    }

    private LayoutTask task() throws Refusal {
        return LayoutTask.of(stock.cut(laidFor(), stock.layout()));
    }

    /**
     * How many whole pieces lie there.
     *
     * @throws Refusal where what stands there cannot be cut
     */
    int whole() throws Refusal {
        LayoutTask task = task();
        new LayoutAnswers(task, stock.layout());
        return whole(task);
    }

    private int whole(LayoutTask task) {
        Map<String, Integer> lie = new HashMap<>();
        for (Placed placed : stock.layout().map(Places::pieces).orElse(List.of())) {
            task.pieces().stream()
                    .filter(piece -> piece.id().equals(placed.id()))
                    .forEach(piece -> lie.merge(piece.part().id(), 1, Integer::sum));
        }
        return one.pieces().stream()
                .map(CutPiece::part)
                .distinct()
                .mapToInt(part -> lie.getOrDefault(part.id(), 0) / part.pieces())
                .min()
                .orElse(0);
    }

    Outcome<Gives> outcome(Working working) throws Refusal {
        LayoutTask task = task();
        Outcome<LaidOut> laidOut = new LayoutAnswers(task, stock.layout()).outcome(working);
        LaidOut laid = laidOut.answers().orElseThrow();
        int whole = whole(task);
        Area all = Area.ofMm2(sheetsArea());
        Area each = Area.ofMm2(pieceArea());
        working.step(MOST, (double) atMost, "A", all, "a", each);
        Optional<Area> eachTakes =
                whole == 0 ? Optional.empty() : laid.taken().map(area -> Area.ofMm2(area.mm2() / whole));
        eachTakes.ifPresent(area -> working.step(EACH, area, "A", laid.taken().orElseThrow(), "n", (double) whole));
        List<Notice> notices = new ArrayList<>(laidOut.notices());
        for (SheetOfLeather sheet : stock.sheets()) {
            if (sheet instanceof Panel && sheet.count().isEmpty()) {
                notices.add(LayoutNotices.COUNTED_ONE.at("sheets[" + sheet.id() + "].panel.count", sheet.id()));
            }
        }
        return Outcome.of(
                new Gives(
                        whole,
                        atMost,
                        eachTakes,
                        whole == 0
                                ? Optional.empty()
                                : laid.cost()
                                        .map(cost -> cost.times(1.0 / whole).rounded()),
                        oneMore(),
                        laid.yield(),
                        laid.sheets(),
                        laid.drawing()),
                notices);
    }

    /** The cheapest sheet that is large enough for a piece; empty where one of those has no price. */
    private Optional<Money> oneMore() {
        List<Optional<Money>> prices = one.sheets().stream()
                .filter(sheet -> sheet.area() >= pieceArea())
                .map(CutSheet::price)
                .toList();
        return prices.stream().allMatch(Optional::isPresent)
                ? prices.stream().map(Optional::orElseThrow).min(Comparator.naturalOrder())
                : Optional.empty();
    }
}
