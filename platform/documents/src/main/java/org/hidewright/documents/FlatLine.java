package org.hidewright.documents;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.core.json.Place;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.store.FileTrouble;

/** A chain of segments of a drawing, followed by straight stretches between places in millimetres. */
public final class FlatLine {
    /** A kilometre: beyond it somebody has slipped. */
    private static final double MOST_MM = 1e6;

    private static final Point ORIGIN = Point.of(0, 0);

    private final AffineTransform toMm;
    private final double near;

    private FlatLine(AffineTransform toMm) {
        this.toMm = toMm;
        // no length grows by more than this
        double growth = Math.sqrt(toMm.getScaleX() * toMm.getScaleX()
                + toMm.getShearX() * toMm.getShearX()
                + toMm.getScaleY() * toMm.getScaleY()
                + toMm.getShearY() * toMm.getShearY());
        this.near = DrawingReader.NEAR_MM / growth;
    }

    /**
     * What is left to say of a line that has been read.
     *
     * @param entity what the file calls it
     * @param at where in the file it begins
     * @param names what it and the groups round it are called, the nearest first
     * @param toMm from the units of the drawing to millimetres with y running up
     */
    public record Whose(String entity, Place at, List<String> names, AffineTransform toMm) {}

    /**
     * The line of some segments, each of which begins where the one before ends.
     *
     * @throws FileTrouble if it lies farther away than any hide is large
     */
    public static DrawnLine of(List<? extends Segment> segments, boolean closed, Whose whose) throws FileTrouble {
        FlatLine flat = new FlatLine(whose.toMm());
        for (Segment segment : segments) {
            Box box = segment.bounds();
            for (Point corner : List.of(Point.of(box.minX(), box.minY()), Point.of(box.maxX(), box.maxY()))) {
                if (!(flat.inMm(corner).distanceTo(ORIGIN) < MOST_MM)) {
                    throw OutlineNotices.trouble(OutlineNotices.DRAWN_TOO_FAR.with(whose.entity()), whose.at());
                }
            }
        }
        return new DrawnLine(whose.entity(), whose.at(), whose.names(), flat.places(segments), closed);
    }

    private List<Point> places(List<? extends Segment> segments) {
        List<Point> places = new ArrayList<>();
        for (Segment segment : segments) {
            List<Point> stretch = places(segment);
            places.addAll(places.isEmpty() ? stretch : stretch.subList(1, stretch.size()));
        }
        return places.stream().map(this::inMm).toList();
    }

    private List<Point> places(Segment segment) {
        if (segment instanceof Segment.Cubic cubic) {
            return FlatCubic.of(cubic, near);
        }
        if (segment instanceof Segment.Arc arc) {
            return places(arc);
        }
        return List.of(segment.start(), segment.end());
    }

    /** A chord over the angle a leaves the circle by r (1 - cos(a/2)). */
    private List<Point> places(Segment.Arc arc) {
        double widest = 2 * Math.acos(Math.max(0, 1 - near / arc.radius()));
        int stretches = (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / widest));
        List<Point> places = new ArrayList<>();
        for (int i = 0; i <= stretches; i++) {
            places.add(arc.centre().towards(arc.startAngle() + arc.sweep() * i / stretches, arc.radius()));
        }
        return places;
    }

    private Point inMm(Point place) {
        Point2D moved = toMm.transform(new Point2D.Double(place.x(), place.y()), null);
        return Point.of(moved.getX(), moved.getY());
    }
}
