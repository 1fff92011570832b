package org.hidewright.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.layout.CuttingLayout.LeftOver;
import org.hidewright.layout.CuttingLayout.LiesAt;
import org.hidewright.layout.CuttingLayout.PairLaid;
import org.hidewright.layout.CuttingLayout.Placed;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.CuttingLayout.SheetUsed;
import org.hidewright.layout.task.Laid;

/** What a layout comes to, after it was checked. */
final class LayoutAnswers {
    private static final Formula PARTS = Formula.of("layout-parts", "N = Σ(a)", Origins.ARITHMETIC);
    private static final Formula TAKEN = Formula.of("layout-taken", "A = Σ(A_s)", Origins.ARITHMETIC);
    private static final Formula YIELD = Formula.of("layout-yield", "y = N / A", Origins.ARITHMETIC);
    private static final Formula WASTE = Formula.of("layout-waste", "w = 1 - y", Origins.ARITHMETIC);
    private static final Formula IN_ONE_PIECE = Formula.of("layout-in-one-piece", "R = max(A_c)", Origins.ARITHMETIC);
    private static final Formula REST_KEPT =
            Formula.of("layout-waste-rest-kept", "v = 1 - N / (A - R)", Origins.ARITHMETIC);
    static final List<Formula> FORMULAS = List.of(PARTS, TAKEN, YIELD, WASTE, IN_ONE_PIECE, REST_KEPT);

    private final LayoutTask task;
    private final List<Laid> laid = new ArrayList<>();
    private final List<PairLaid> pairs;
    private final List<Notice> notices;

    LayoutAnswers(LayoutTask task, Optional<Places> there) throws Refusal {
        this.task = task;
        this.notices = new ArrayList<>(task.notices());
        List<Notice> wrong = new ArrayList<>();
        for (Placed placed : there.map(Places::pieces).orElse(List.of())) {
            try {
                laid.add(task.laid(placed));
            } catch (Refusal notThere) {
                wrong.add(notThere.notice());
            }
        }
        wrong.addAll(task.faults(laid));
        if (!wrong.isEmpty()) {
            // what is to be looked at in the rules may be why
            throw new Refusal(Stream.concat(LayoutTask.first(wrong).stream(), notices.stream())
                    .toList());
        }
        this.pairs = task.pairs().laid(there.map(Places::pieces).orElse(List.of()));
        for (PairLaid pair : pairs) {
            if (pair.apart().isEmpty()) {
                String part = task.piece(pair.id()).part().id();
                notices.add(LayoutNotices.TWO_SHEETS.at("rules[" + part + "].matches", pair.id(), pair.other()));
            }
        }
    }

    Outcome<CuttingLayout.LaidOut> outcome(Working working) {
        List<LeftOver> leftOver = leftOver();
        int missing = task.pieces().size() - laid.size();
        if (missing > 0 && !laid.isEmpty()) {
            notices.add(
                    LayoutNotices.LEFT_OVER.at("sheets", missing, task.pieces().size()));
        }
        int[] used = IntStream.range(0, task.sheets().size())
                .filter(sheet -> laid.stream().anyMatch(piece -> piece.sheet() == sheet))
                .toArray();
        Area parts = Area.ofMm2(laid.stream().mapToDouble(this::area).sum());
        Area all = Area.ofMm2(task.pieces().stream().mapToDouble(CutPiece::area).sum());
        Optional<Area> taken = used.length == 0
                ? Optional.empty()
                : Optional.of(Area.ofMm2(IntStream.of(used)
                        .mapToDouble(sheet -> task.sheets().get(sheet).area())
                        .sum()));
        Optional<Double> yield = taken.map(area -> parts.mm2() / area.mm2());
        Area inOnePiece = Area.ofMm2(laid.isEmpty() ? 0 : task.inOnePiece(laid, task.last(laid)));
        Optional<Double> restKept = taken.map(area -> 1 - parts.mm2() / (area.mm2() - inOnePiece.mm2()));
        working.step(PARTS, all);
        taken.ifPresent(area -> {
            working.step(TAKEN, area);
            working.step(YIELD, yield.orElseThrow(), "N", parts, "A", area);
            working.step(WASTE, 1 - yield.orElseThrow(), "y", yield.orElseThrow());
            working.step(IN_ONE_PIECE, inOnePiece);
            working.step(REST_KEPT, restKept.orElseThrow(), "N", parts, "A", area, "R", inOnePiece);
        });
        return Outcome.of(
                new CuttingLayout.LaidOut(
                        laid.size(),
                        task.pieces().size(),
                        used.length,
                        yield,
                        yield.map(share -> 1 - share),
                        restKept,
                        all,
                        taken,
                        cost(used),
                        IntStream.of(used).mapToObj(this::used).toList(),
                        leftOver,
                        laid.stream().map(this::lies).toList(),
                        pairs,
                        new Rests(task, laid).of(used),
                        used.length == 0 ? Optional.empty() : Optional.of(new LayoutDrawing(task, laid).of(used))),
                notices);
    }

    private List<LeftOver> leftOver() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int piece = 0; piece < task.pieces().size(); piece++) {
            int number = piece;
            if (laid.stream().noneMatch(lies -> lies.piece() == number)) {
                counts.merge(task.pieces().get(piece).part().id(), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .map(part -> new LeftOver(part.getKey(), part.getValue()))
                .toList();
    }

    private LiesAt lies(Laid seen) {
        CutSheet sheet = task.sheets().get(seen.sheet());
        CutPiece piece = task.pieces().get(seen.piece());
        Laid drawn = sheet.frame().drawn(seen);
        Box box = piece.outline()
                .moved(Motion.turn(Point.of(0, 0), drawn.angle()).then(Motion.shift(drawn.dx(), drawn.dy())))
                .bounds();
        Box whole = sheet.outline().bounds();
        return new LiesAt(
                piece.id(),
                sheet.id(),
                Length.ofMm(box.minX() - whole.minX()),
                Length.ofMm(box.minY() - whole.minY()),
                Angle.ofRadians(Math.IEEEremainder(drawn.angle(), 2 * Math.PI)));
    }

    private double area(Laid piece) {
        return task.pieces().get(piece.piece()).area();
    }

    /** Empty where a sheet that is cut from has no price. */
    private Optional<Money> cost(int[] used) {
        List<Optional<Money>> prices = IntStream.of(used)
                .mapToObj(sheet -> task.sheets().get(sheet).price())
                .toList();
        return prices.stream().allMatch(Optional::isPresent)
                ? prices.stream().map(Optional::orElseThrow).reduce(Money::plus).map(Money::rounded)
                : Optional.empty();
    }

    private SheetUsed used(int sheet) {
        List<Laid> here = laid.stream().filter(lies -> lies.sheet() == sheet).toList();
        double parts = here.stream().mapToDouble(this::area).sum();
        double whole = task.sheets().get(sheet).area();
        return new SheetUsed(
                task.sheets().get(sheet).id(),
                here.size(),
                parts / whole,
                Area.ofMm2(whole - parts),
                Area.ofMm2(task.inOnePiece(laid, sheet)));
    }
}
