package org.hidewright.foldingwallet;

import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.SteppedPockets;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * The sizes of a wallet, millimetres.
 *
 * @param pockets the stack on either side
 * @param innerWidth flat
 * @param innerHeight up to the mouth that notes go in by
 * @param shorter by how much the inner is shorter than the outer
 * @param height of the outer
 * @param full thickness, closed, with everything in it
 */
record Sizes(
        SteppedPockets pockets, double innerWidth, double innerHeight, double shorter, double height, double full) {
    /** From the seam to the edge. */
    static final double MARGIN = 3.5;

    /** From the rim’s seam to the pockets, so that they do not pile up in it. */
    static final double CLEAR = 3;

    /** Between the pockets of both sides, where it folds. */
    static final double MIDDLE = 6;

    /** Notes stand out above the inner by this much, to be taken hold of. */
    private static final double NOTES_SHOW = 6;

    /** Of a few notes together. */
    private static final double NOTES = 1;

    static Sizes of(FoldingWallet.Asking asked) {
        SteppedPockets pockets = new SteppedPockets(
                asked.pockets(),
                asked.cards().width().mm(),
                asked.cards().height().mm(),
                asked.cards().thickness().mm(),
                asked.step().mm(),
                asked.ease().mm());
        double lining = asked.liningThickness().map(Length::mm).orElse(0.0);
        double outer = asked.thickness().mm();
        double inner = asked.innerThickness().mm();
        double forNotes = Allowances.flatPanels(
                        asked.noteWidth().mm(), NOTES, asked.ease().mm())
                + 2 * MARGIN;
        double forCards = 2 * (pockets.width() + MARGIN + CLEAR) + MIDDLE;
        double innerHeight = Math.max(
                asked.noteHeight().mm()
                        + NOTES / 2
                        + MARGIN
                        - NOTES_SHOW
                        + asked.ease().mm(),
                pockets.height() + MARGIN + CLEAR + 2);
        double full = 2 * (outer + lining + inner)
                + 2
                        * asked.pockets()
                        * (asked.pocketThickness().mm()
                                + asked.cards().thickness().mm())
                + 2 * NOTES;
        return new Sizes(
                pockets,
                Math.max(forNotes, forCards),
                innerHeight,
                Allowances.innerShorter(outer, inner, Math.PI) + Math.PI * lining,
                innerHeight + NOTES_SHOW,
                full);
    }

    double outerWidth() {
        return innerWidth + shorter;
    }

    void explain(FoldingWallet.Asking asked, Working working) {
        Length lining = asked.liningThickness().orElse(Length.ofMm(0));
        working.step(
                FoldingWallet.SHORTER,
                Length.ofMm(shorter),
                "q",
                asked.thickness(),
                "n",
                lining,
                "i",
                asked.innerThickness());
        working.step(
                FoldingWallet.FULL,
                Length.ofMm(full),
                "q",
                asked.thickness(),
                "n",
                lining,
                "i",
                asked.innerThickness(),
                "z",
                asked.pockets(),
                "k",
                asked.pocketThickness(),
                "c",
                asked.cards().thickness(),
                "v",
                Length.ofMm(2 * NOTES));
    }
}
