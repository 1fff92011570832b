package org.hidewright.flatpouch;

import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.benchwork.Closure;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * The sizes of a pouch, millimetres.
 *
 * @param margin from the seam to the edge
 * @param betweenSeams inside width
 * @param width of a panel
 * @param radius of its lower corners
 * @param height of the back below its flap
 * @param front height of the front
 * @param bend leather that the flap takes over the top, full
 * @param slack by how much the flap reaches further when the pouch is empty
 * @param fromBend from the end of the bend to the middle of the closure
 * @param flap length above the height: bend, and what hangs down the front; 0 without one
 */
record Sizes(
        double margin,
        double betweenSeams,
        double width,
        double radius,
        double height,
        double front,
        double bend,
        double slack,
        double fromBend,
        double flap) {
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
        double fromBend = asked.closing()
                .closure()
                .map(closure -> fromBend(closure, height, leather))
                .orElse(0.0);
        double flap = asked.closing()
                .closure()
                .map(closure -> bend + fromBend + toEnd(closure))
                .orElse(0.0);
        return new Sizes(
                margin,
                between,
                width,
                radius,
                height,
                height,
                flap > 0 ? bend : 0,
                flap > 0 ? (bend - flat) / 2 : 0,
                fromBend,
                flap);
    }

    /** A third of the way down, but so that the front has leather above what is set in it. */
    private static double fromBend(Closure closure, double height, double leather) {
        return Math.max(0.3 * height, closure.leastToEnd() + 2 * leather);
    }

    private static double toEnd(Closure closure) {
        return closure.leastToEnd() + 4;
    }

    /** Where the closure is on the front when the flap is down: as far below its top as it is beyond the bend. */
    double closureOnFront() {
        return front - fromBend;
    }

    double closureOnFlap() {
        return height + bend + fromBend;
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
        if (flap > 0) {
            working.step(FlatPouch.BEND, Length.ofMm(bend), "t", asked.held().thickness(), "s", asked.thickness());
        }
    }
}
