package org.hidewright.sheath;

import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * The sizes of a sheath, millimetres.
 *
 * @param margin from the seam to the edge
 * @param welt width of the welt
 * @param layers of leather in the welt
 * @param stack what is sewn through
 * @param width of a panel
 * @param radius of its lower corners
 * @param height of the front
 * @param rise of the back above the throat, to where the loop bends
 * @param bend what the loop takes where it bends
 * @param down how far the loop comes down again to its first row
 * @param loop what the back is longer than the front; 0 without a loop
 */
record Sizes(
        double margin,
        double welt,
        int layers,
        double stack,
        double width,
        double radius,
        double height,
        double rise,
        double bend,
        double down,
        double loop) {
    /** The welt reaches beyond the stitches by this much, so that an edge that wanders does not reach them: common practice. */
    private static final double BEYOND = 4;

    /** Radius round which the loop bends: it stays open for the belt. */
    private static final double LOOP_RADIUS = 3;

    /** Beyond the belt, so that it slides; and the box of stitches that holds the loop. */
    private static final double BELT_EASE = 6;

    private static final double BOX = 8;

    static Sizes of(Sheath.Asking asked) {
        double leather = asked.thickness().mm();
        double margin = Math.max(4, 1.5 * leather);
        double welt = margin + BEYOND;
        int layers = (int) Math.max(1, Math.ceil(asked.held().thickness().mm() / leather - 1e-9));
        double width = asked.held().width().mm() + asked.ease().mm() + 2 * welt;
        double height = welt + asked.held().height().mm();
        double radius = asked.tip() == Sheath.Tip.ROUND ? Math.min(width, height) / 2 : welt;
        double bend = Allowances.bend(LOOP_RADIUS, leather, Math.PI);
        double rise = 12;
        double down = asked.belt().map(belt -> rise + belt.mm() + BELT_EASE).orElse(0.0);
        double loop = asked.belt().isPresent() ? rise + bend + down + BOX + margin : 0;
        return new Sizes(margin, welt, layers, (layers + 2) * leather, width, radius, height, rise, bend, down, loop);
    }

    /** Inside radius of the loop’s bend. */
    double loopRadius() {
        return LOOP_RADIUS;
    }

    double box() {
        return BOX;
    }

    void explain(Sheath.Asking asked, Working working) {
        working.step(
                Sheath.WIDTH, Length.ofMm(width), "b", asked.held().width(), "e", asked.ease(), "u", Length.ofMm(welt));
        working.step(
                Sheath.LAYERS, layers, "s", asked.thickness(), "d", asked.held().thickness());
        if (loop > 0) {
            working.step(
                    Sheath.LOOP,
                    Length.ofMm(loop),
                    "r",
                    Length.ofMm(rise),
                    "g",
                    Length.ofMm(LOOP_RADIUS),
                    "s",
                    asked.thickness(),
                    "w",
                    Length.ofMm(down),
                    "c",
                    Length.ofMm(BOX + margin));
        }
    }
}
