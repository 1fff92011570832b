package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** Outlines of plain form, all counter-clockwise. */
public final class Outlines {
    private Outlines() {}

    /**
     * A full circle, as two half ones, from the right round.
     *
     * @throws IllegalArgumentException if the diameter is not above 0
     */
    public static Curve circle(Point centre, double diameterMm) {
        Point right = centre.plus(diameterMm / 2, 0);
        Point left = centre.plus(-diameterMm / 2, 0);
        return Curve.closed(List.of(Segment.arc(right, centre, Math.PI), Segment.arc(left, centre, Math.PI)));
    }

    /** An upright rectangle, from its lower left corner. */
    public static Curve rectangle(Point lowerLeft, double widthMm, double heightMm) {
        return polygon(
                lowerLeft, lowerLeft.plus(widthMm, 0), lowerLeft.plus(widthMm, heightMm), lowerLeft.plus(0, heightMm));
    }

    /** Straight from place to place and back to the first. */
    public static Curve polygon(Point... places) {
        return polygon(Arrays.asList(places));
    }

    /**
     * Straight from place to place and back to the first.
     *
     * @throws IllegalArgumentException if there are fewer than three
     */
    public static Curve polygon(List<Point> places) {
        if (places.size() < 3) {
            throw new IllegalArgumentException("an outline of straight edges needs three places, not " + places.size());
        }
        List<Segment> edges = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            edges.add(Segment.line(places.get(i), places.get((i + 1) % places.size())));
        }
        return Curve.closed(edges);
    }

    /**
     * An upright rectangle with its corners rounded; with half the height as radius, a slot with round ends.
     *
     * @throws IllegalArgumentException if the radius is below 0 or more than half of a side
     */
    public static Curve roundedRectangle(Point lowerLeft, double widthMm, double heightMm, double radiusMm) {
        if (!(radiusMm >= 0 && radiusMm <= Math.min(widthMm, heightMm) / 2)) {
            throw new IllegalArgumentException("a corner of a rectangle of " + widthMm + " by " + heightMm
                    + " mm cannot be rounded by " + radiusMm + " mm");
        }
        if (radiusMm == 0) {
            return rectangle(lowerLeft, widthMm, heightMm);
        }
        double w = widthMm;
        double h = heightMm;
        double r = radiusMm;
        double quarter = Math.PI / 2;
        return Curve.closed(List.of(
                Segment.line(lowerLeft.plus(r, 0), lowerLeft.plus(w - r, 0)),
                Segment.arc(lowerLeft.plus(w - r, 0), lowerLeft.plus(w - r, r), quarter),
                Segment.line(lowerLeft.plus(w, r), lowerLeft.plus(w, h - r)),
                Segment.arc(lowerLeft.plus(w, h - r), lowerLeft.plus(w - r, h - r), quarter),
                Segment.line(lowerLeft.plus(w - r, h), lowerLeft.plus(r, h)),
                Segment.arc(lowerLeft.plus(r, h), lowerLeft.plus(r, h - r), quarter),
                Segment.line(lowerLeft.plus(0, h - r), lowerLeft.plus(0, r)),
                Segment.arc(lowerLeft.plus(0, r), lowerLeft.plus(r, r), quarter)));
    }

    /**
     * An upright ellipse, followed by 64 cubics to a millionth of a millimetre at sizes of the bench.
     *
     * @throws IllegalArgumentException if an axis is not above 0
     */
    public static Curve ellipse(Point centre, double widthMm, double heightMm) {
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("an ellipse of " + widthMm + " by " + heightMm + " mm has no inside");
        }
        return Curve.closed(EllipseArc.whole(centre, widthMm / 2, heightMm / 2));
    }
}
