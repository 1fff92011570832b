package org.hidewright.flatpouch;

import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.benchwork.Flap;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * The sizes of a pouch, millimetres.
 *
 * @param margin from the seam to the edge
 * @param betweenSeams inside width
 * @param width of a panel
 * @param radius of its lower corners
 * @param height of the front, and of the back below its flap
 * @param flap over the top of the full pouch
 * @param slack by how much the flap reaches further when the pouch is empty
 */
record Sizes(double margin, double betweenSeams, double width, double radius, double height, Flap flap, double slack) {
    /** Above the thing, below the bend of the flap. */
    private static final double HEADROOM = 2;

    static Sizes of(FlatPouch.Asking asked) {
        double thick = asked.held().thickness().mm();
        double leather = asked.thickness().mm();
        double margin = Math.max(3.5, 1.75 * leather);
        double between = Allowances.flatPanels(
                asked.held().width().mm(), thick, asked.ease().mm());
        double width = between + 2 * margin;
        double full = margin + thick / 2 + asked.held().height().mm();
        double standsOut =
                asked.closing() instanceof Closing.Open open ? open.standsOut().mm() : -HEADROOM;
        double height = full - standsOut;
        double radius = asked.bottom() == FlatPouch.Bottom.ROUND
                ? Math.min(width / 2, height - margin)
                : Math.min(8 + margin, Math.min(width, height) / 3);
        double bend = Allowances.bend(thick / 2 + leather, leather, Math.PI);
        double flat = Allowances.bend(leather, leather, Math.PI);
        Flap flap = asked.closing()
                .closure()
                .map(closure -> Flap.closedBy(closure, height, leather, bend))
                .orElse(Flap.NONE);
        return new Sizes(margin, between, width, radius, height, flap, flap.equals(Flap.NONE) ? 0 : (bend - flat) / 2);
    }

    void explain(FlatPouch.Asking asked, Working working) {
        working.step(
                FlatPouch.BETWEEN,
                Length.ofMm(betweenSeams),
                "w",
                asked.held().width(),
                "t",
                asked.held().thickness(),
                "e",
                asked.ease());
        working.step(
                FlatPouch.HEIGHT,
                Length.ofMm(height),
                "m",
                Length.ofMm(margin),
                "t",
                asked.held().thickness(),
                "h",
                asked.held().height(),
                "a",
                Length.ofMm(height
                        - margin
                        - asked.held().thickness().mm() / 2
                        - asked.held().height().mm()));
        if (!flap.equals(Flap.NONE)) {
            working.step(
                    FlatPouch.BEND, Length.ofMm(flap.fold()), "t", asked.held().thickness(), "s", asked.thickness());
        }
    }
}
