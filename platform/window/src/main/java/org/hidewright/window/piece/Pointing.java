package org.hidewright.window.piece;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;

/** What lies at a place of a drawing, and what can be measured from there. */
public final class Pointing {
    private Pointing() {}

    /**
     * A line or a hole that is pointed at.
     *
     * @param role what it means
     * @param mm its length, or its diameter
     * @param round whether it is a circle
     */
    public record Met(Role role, double mm, boolean round) {}

    /** What is nearest to a place, no farther than a reach in millimetres: a circle, or one straight or round run of a line. */
    public static Optional<Met> at(Drawing drawing, Point place, double reach) {
        return drawing.shapes().stream()
                .flatMap(shape -> shape instanceof Path path
                        ? path.segments().stream().map(segment -> run(path, segment, place))
                        : shape instanceof Circle circle ? Stream.of(circle(circle, place)) : Stream.empty())
                .filter(found -> found.distance() <= reach)
                .min(Comparator.comparingDouble(Found::distance))
                .map(Found::met);
    }

    private record Found(double distance, Met met) {}

    private static Found run(Path path, Segment segment, Point place) {
        Curve run = Curve.open(List.of(segment));
        return new Found(run.distanceTo(place), new Met(path.role(), run.length(), false));
    }

    private static Found circle(Circle circle, Point place) {
        double distance = Math.abs(circle.centre().distanceTo(place) - circle.diameter() / 2);
        return new Found(
                Math.min(distance, circle.centre().distanceTo(place)), new Met(circle.role(), circle.diameter(), true));
    }

    /** The corner, end or centre nearest to a place, no farther than a reach; the place itself where there is none. */
    public static Point corner(Drawing drawing, Point place, double reach) {
        return drawing.shapes().stream()
                .flatMap(shape -> shape instanceof Path path
                        ? path.segments().stream().flatMap(segment -> Stream.of(segment.start(), segment.end()))
                        : shape instanceof Circle circle ? Stream.of(circle.centre()) : Stream.empty())
                .filter(corner -> corner.distanceTo(place) <= reach)
                .min(Comparator.comparingDouble(place::distanceTo))
                .orElse(place);
    }
}
