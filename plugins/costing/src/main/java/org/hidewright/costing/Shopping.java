package org.hidewright.costing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.costing.PieceCost.BuyLine;
import org.hidewright.costing.PieceCost.Piece;

/**
 * What to buy for a batch, whole sides, fittings, spools and bottles. What is spoilt takes leather, fittings, thread and
 * liquids like what is sold, so the list has enough for it.
 */
final class Shopping {
    static final Formula WHOLE = Formula.of("buy-whole", "k = ceil(n · N / ((1 - s) · V))", Origins.ARITHMETIC);

    static final String COUNT = "needed";
    private static final String SOLD_SINGLY = "sold-singly";
    static final List<String> PHRASES = Stream.concat(Stream.of(COUNT, SOLD_SINGLY), SoldBy.phrases().stream())
            .toList();

    private final Piece piece;
    private final double begun;
    private final Working working;
    private final List<BuyLine> lines = new ArrayList<>();

    private Shopping(Piece piece, Working working) {
        this.piece = piece;
        this.begun = piece.pieces() / (1 - piece.spoilage());
        this.working = working;
    }

    /** The list, in the order a piece is asked for; what costs nothing is on it too, since it must be there. */
    static List<BuyLine> of(Piece piece, Working working) {
        Shopping shopping = new Shopping(piece, working);
        piece.leather()
                .orElse(List.of())
                .forEach(leather -> shopping.line(
                        CostKind.LEATHER,
                        SoldBy.AREA,
                        leather.id(),
                        leather.wasteOf().bought(leather.used(), leather.waste()),
                        leather.area(),
                        leather.price()));
        piece.hardware()
                .orElse(List.of())
                .forEach(fitting -> shopping.fittings(fitting.id(), fitting.count(), fitting.price()));
        piece.thread()
                .orElse(List.of())
                .forEach(thread -> shopping.line(
                        CostKind.THREAD, SoldBy.LENGTH, thread.id(), thread.used(), thread.length(), thread.price()));
        piece.liquids()
                .orElse(List.of())
                .forEach(liquid -> shopping.line(
                        CostKind.LIQUIDS, SoldBy.VOLUME, liquid.id(), liquid.used(), liquid.holds(), liquid.price()));
        return List.copyOf(shopping.lines);
    }

    /** What all of it costs at the shop. */
    static Money outlay(List<BuyLine> lines, Piece piece) {
        return lines.stream().map(BuyLine::paid).reduce(piece.perHour().times(0), Money::plus);
    }

    private <Q extends Quantity<Q>> void line(CostKind kind, SoldBy by, String id, Q inOne, Q soldIn, Money price) {
        Q needed = inOne.times(begun);
        add(kind, id, by.atLeast(needed), by.label(soldIn), needed.per(soldIn), price);
        if (needed.base() > 0) {
            step(inOne, soldIn);
        }
    }

    private void fittings(String id, int inOne, Money price) {
        int needed = LeatherBought.whole(inOne * begun);
        add(CostKind.HARDWARE, id, Phrase.of(COUNT, needed), Phrase.of(SOLD_SINGLY), needed, price);
        if (needed > 0) {
            step(inOne, 1);
        }
    }

    private void add(CostKind kind, String id, Phrase needed, Phrase soldIn, double packs, Money price) {
        int whole = LeatherBought.whole(packs);
        if (whole > 0) {
            lines.add(new BuyLine(
                    kind.line(id),
                    kind,
                    id,
                    needed,
                    soldIn,
                    whole,
                    price.times(whole).rounded()));
        }
    }

    private void step(Object inOne, Object soldIn) {
        BuyLine line = lines.get(lines.size() - 1);
        working.step(WHOLE, line.toBuy(), "n", piece.pieces(), "N", inOne, "s", piece.spoilage(), "V", soldIn);
    }
}
