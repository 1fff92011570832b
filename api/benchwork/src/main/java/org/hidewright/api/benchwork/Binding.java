package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Face;

/**
 * A strip folded round a raw edge and sewn through all layers: straight runs, and round curves wider than its own width. Its
 * middle is folded over the edge.
 */
public final class Binding {
    private Binding() {}

    /**
     * The strip, lying along the x axis.
     *
     * @param edge length of the edge it covers
     * @param lap by how much its ends lie on each other, 0 where they end at corners
     * @param cover how far it reaches in on either face
     * @param stack thickness of what it goes round
     */
    public static Piece strip(
            String id, String name, double edge, double lap, double cover, double stack, double leather) throws NoRoom {
        double width = Allowances.binding(cover, stack, leather);
        double length = edge + lap;
        Piece strip = Piece.of(id, name, Outlines.rectangle(Point.of(0, 0), length, width), leather);
        double side = stack / 2 + Allowances.bend(0, leather, Math.PI / 2) / 2;
        strip.fold("over", Point.of(0, width / 2 + side), Point.of(length, width / 2 + side), 0, Face.GRAIN);
        strip.fold("under", Point.of(0, width / 2 - side), Point.of(length, width / 2 - side), 0, Face.GRAIN);
        return strip;
    }

    /** Rows on both sides of the strip that meet when it is folded, the side that is seen first. */
    public static List<StitchRow> rows(Piece strip, double margin, double end, double pitch) throws NoRoom {
        double length = strip.outline().bounds().width();
        double width = strip.outline().bounds().height();
        StitchRow over =
                strip.stitches("over", Lines.straight(end, width - margin, length - end, width - margin), pitch);
        StitchRow under = strip.stitches("under", Lines.straight(end, margin, length - end, margin), pitch);
        return List.of(over, under);
    }
}
