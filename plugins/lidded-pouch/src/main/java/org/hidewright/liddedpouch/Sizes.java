package org.hidewright.liddedpouch;

import org.hidewright.api.benchwork.Allowances;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.benchwork.Flap;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * The sizes of a pouch with a gusset, millimetres.
 *
 * @param margin from the seam to the edge; the gusset’s flange is twice as wide
 * @param depth inside, between front and back
 * @param width of front and back
 * @param radius of their lower corners
 * @param height of the front, and of the back below its lid
 * @param gussetWidth flat, with its flanges
 * @param quarter what one bend of the lid takes
 * @param lid over the top, with both its bends, and down the front
 */
record Sizes(
        double margin,
        double depth,
        double width,
        double radius,
        double height,
        double gussetWidth,
        double quarter,
        Flap lid) {
    /** Inside radius of the lid’s bends. */
    static final double BEND_RADIUS = 1.5;

    /** Above the thing, below the lid. */
    private static final double HEADROOM = 1;

    static Sizes of(LiddedPouch.Asking asked) {
        double leather = asked.thickness().mm();
        double gusset = asked.gussetThickness().mm();
        double margin = Math.max(3.5, 1.75 * leather);
        double flange = 2 * margin;
        double depth = Math.max(wantedDepth(asked), leastDepth(asked));
        double width = asked.held().width().mm() + asked.ease().mm() + 2 * gusset + 2 * flange;
        double standsOut =
                asked.closing() instanceof Closing.Open open ? open.standsOut().mm() : -HEADROOM;
        double height = flange + gusset + asked.held().height().mm() - standsOut;
        double radius = flange + 8;
        // along its middle: a flange on either panel, two quarter turns, and the web between the panels
        double quarterOfGusset = Allowances.bend(0, gusset, Math.PI / 2);
        double gussetWidth = depth - 2 * gusset + 2 * (flange - gusset / 2) + 2 * quarterOfGusset;
        double quarter = Allowances.bend(BEND_RADIUS, leather, Math.PI / 2);
        double over = depth + leather - 2 * BEND_RADIUS + 2 * quarter;
        Flap lid = asked.closing()
                .closure()
                .map(closure -> Flap.closedBy(closure, height, leather, over))
                .orElse(Flap.NONE);
        return new Sizes(margin, depth, width, radius, height, gussetWidth, quarter, lid);
    }

    /** The thing, and half the ease in front of it. */
    static double wantedDepth(LiddedPouch.Asking asked) {
        return asked.held().thickness().mm() + asked.ease().mm() / 2;
    }

    /** Below this a gusset folds onto itself: its two flanges would meet behind the seam. */
    private static double leastDepth(LiddedPouch.Asking asked) {
        return 2 * BEND_RADIUS + 4 * asked.gussetThickness().mm();
    }

    void explain(LiddedPouch.Asking asked, double seam, Working working) {
        Length inside = Length.ofMm(depth);
        Length flange = Length.ofMm(2 * margin);
        working.step(
                LiddedPouch.PANEL_WIDTH,
                Length.ofMm(width),
                "w",
                asked.held().width(),
                "e",
                asked.ease(),
                "s",
                asked.gussetThickness(),
                "f",
                flange);
        double above = height
                - 2 * margin
                - asked.gussetThickness().mm()
                - asked.held().height().mm();
        working.step(
                LiddedPouch.FRONT_HEIGHT,
                Length.ofMm(height),
                "f",
                flange,
                "s",
                asked.gussetThickness(),
                "h",
                asked.held().height(),
                "b",
                Length.ofMm(above));
        working.step(
                LiddedPouch.GUSSET_WIDTH,
                Length.ofMm(gussetWidth),
                "D",
                inside,
                "f",
                flange,
                "s",
                asked.gussetThickness());
        working.step(
                LiddedPouch.GUSSET_LENGTH,
                Length.ofMm(seam + 2 * LiddedParts.END),
                "P",
                Length.ofMm(seam),
                "x",
                Length.ofMm(LiddedParts.END));
        if (!lid.equals(Flap.NONE)) {
            working.step(
                    LiddedPouch.LID,
                    Length.ofMm(lid.fold()),
                    "D",
                    inside,
                    "q",
                    asked.thickness(),
                    "r",
                    Length.ofMm(BEND_RADIUS));
        }
    }
}
