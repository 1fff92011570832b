package org.hidewright.api.benchwork;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Seam;

/** A strap end that is tucked under a loop, a keeper, whose two ends are sewn down beside it. */
record KeeperClosure(double strap, double stack, double keeper, double leather, double pitch) implements Closure {
    /** Room beside the strap inside the keeper, together: common practice. */
    private static final double EASE_MM = 1;

    /** From a row to the edge of the keeper: common practice. */
    private static final double MARGIN_MM = 3;

    /** Foot, up, over, down, foot, along the middle of the leather: four bends of a quarter turn. */
    double length() {
        double quarter = Allowances.bend(0, leather, Math.PI / 2);
        return 2 * foot() + strap + EASE_MM + 2 * Math.max(0, stack - leather) + 4 * quarter;
    }

    private double foot() {
        return 2 * MARGIN_MM + leather;
    }

    @Override
    public Fastened fasten(
            String id, String name, Piece top, Point onTop, double towardsEdge, Piece under, Point onUnder)
            throws NoRoom {
        Piece loop = Piece.of(id, name, Outlines.rectangle(Point.of(0, 0), length(), keeper), leather);
        List<Seam> seams = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            double middle = length() / 2 + side * (length() - foot()) / 2;
            Point foot =
                    onUnder.towards(towardsEdge + Math.PI / 2, side * (strap + EASE_MM + 2 * leather + foot()) / 2);
            Motion laid = Motion.shift(foot.x() - middle, foot.y() - keeper / 2)
                    .then(Motion.turn(foot, towardsEdge + Math.PI / 2));
            String row = side < 0 ? "right" : "left";
            StitchRow across = loop.stitches(row, Lines.straight(middle, MARGIN_MM, middle, keeper - MARGIN_MM), pitch);
            StitchRow through = under.stitchedThrough(id + "-" + row, across, laid);
            seams.add(Seam.of(id + "-" + row, List.of(across.on(), through.on())));
        }
        return Fastened.of(seams, List.of(loop));
    }

    /** Beyond the keeper the end must still be long enough to be held: common practice. */
    @Override
    public double leastToEnd() {
        return keeper / 2 + 15;
    }
}
