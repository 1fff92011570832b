package org.hidewright.api.benchwork;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Parallel;

/**
 * A window behind which a zip is glued and sewn. Its stops are hidden behind the ends; the tape reaches beyond the stitches on
 * all sides.
 */
public final class ZipWindow {
    /** Leather between the window and its stitches: common practice. */
    public static final double MARGIN_MM = 3;

    private final double length;
    private final double width;

    private ZipWindow(double length, double width) {
        this.length = length;
        this.width = width;
    }

    /**
     * A window for a zip.
     *
     * @param betweenStops length of its teeth between the stops
     * @param stop length of one stop, which is hidden
     * @param coil width of the teeth, which the slider must pass beside: the window is 3 mm wider (from memory)
     * @throws IllegalArgumentException if one is not above 0
     */
    public static ZipWindow of(double betweenStops, double stop, double coil) {
        if (!(betweenStops > 0 && stop >= 0 && coil > 0)) {
            throw new IllegalArgumentException("a zip has a length and a width");
        }
        return new ZipWindow(betweenStops, coil + 3);
    }

    /** Of the window, end to end: the stops are just outside of it. */
    public double length() {
        return length;
    }

    /** Of the window, in millimetres. */
    public double width() {
        return width;
    }

    /** How wide the tape must be so that the stitches hold it, with 2 mm beyond them on either side. */
    public double leastTape() {
        return width + 2 * (MARGIN_MM + 2);
    }

    /** How much tape there must be beyond each stop, so that the stitches across the end hold it. */
    public double leastTapeEnd() {
        return MARGIN_MM + 2;
    }

    /**
     * Cuts the window and lays the stitches round it.
     *
     * @param middle of the window
     * @param turned from lying along the x axis, counter-clockwise
     */
    public StitchRow in(Piece piece, String id, Point middle, double turned, double pitch) throws NoRoom {
        Point corner = middle.plus(-length / 2, -width / 2);
        Curve window =
                Outlines.roundedRectangle(corner, length, width, width / 2).moved(Motion.turn(middle, turned));
        piece.window(id, window);
        Curve round = Parallel.of(window, -MARGIN_MM, Corner.ROUND).get(0);
        return piece.stitches(id, round, pitch);
    }
}
