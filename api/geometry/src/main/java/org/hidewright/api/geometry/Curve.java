package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;

/**
 * A chain of lines, arcs and cubic curves, each starting where the one before ended; open, or closed to an outline.
 *
 * <p>An outline that runs counter-clockwise has its inside to the left and a positive {@link #area()}.
 */
public final class Curve {
    private final Path path;
    private final List<Stretch> stretches;
    private final double[] startsAt;
    private Box bounds;

    private Curve(List<Stretch> stretches, boolean closed) {
        this.path = Path.of(Role.CUT, stretches.stream().map(Stretch::segment).toList(), closed);
        this.stretches = List.copyOf(stretches);
        this.startsAt = new double[stretches.size() + 1];
        for (int i = 0; i < stretches.size(); i++) {
            startsAt[i + 1] = startsAt[i] + stretches.get(i).length();
        }
        if (!(length() > 0)) {
            throw new IllegalArgumentException("a curve needs a length");
        }
    }

    /**
     * A curve with two ends. Segments without length are left out.
     *
     * @throws IllegalArgumentException if a segment does not start where the one before ended, or there is no length
     */
    public static Curve open(List<? extends Segment> segments) {
        return new Curve(withLength(segments), false);
    }

    /**
     * An outline. Segments without length are left out.
     *
     * @throws IllegalArgumentException if a segment does not start where the one before ended, the last one does not end
     *     where the first one starts, or there is no length
     */
    public static Curve closed(List<? extends Segment> segments) {
        return new Curve(withLength(segments), true);
    }

    /** The line of a drawing as a curve, open or closed as it is. */
    public static Curve of(Path path) {
        return path.isClosed() ? closed(path.segments()) : open(path.segments());
    }

    static Curve ofStretches(List<Stretch> stretches, boolean closed) {
        return new Curve(
                stretches.stream().filter(stretch -> stretch.length() > 0).toList(), closed);
    }

    private static List<Stretch> withLength(List<? extends Segment> segments) {
        List<Stretch> kept = new ArrayList<>();
        for (Segment segment : segments) {
            Stretch stretch = Stretch.of(segment);
            if (stretch.length() > 0) {
                kept.add(stretch);
            }
        }
        return kept;
    }

    /** Its segments, each beginning where the one before ends. */
    public List<Segment> segments() {
        return path.segments();
    }

    List<Stretch> stretches() {
        return stretches;
    }

    /** Whether it ends where it begins. */
    public boolean isClosed() {
        return path.isClosed();
    }

    /** Where it begins. */
    public Point start() {
        return segments().get(0).start();
    }

    /** Where it ends; of a closed one where it begins. */
    public Point end() {
        return segments().get(segments().size() - 1).end();
    }

    /** Millimetres from start to end, once round if closed. */
    public double length() {
        return startsAt[stretches.size()];
    }

    /** Length from the start to where a segment starts; to the end for the number of segments. */
    public double startOf(int segment) {
        return startsAt[segment];
    }

    /**
     * Square millimetres inside, positive if the outline runs counter-clockwise.
     *
     * @throws IllegalStateException if the curve is open
     */
    public double area() {
        if (!isClosed()) {
            throw new IllegalStateException("an open curve has no inside");
        }
        return stretches.stream().mapToDouble(Stretch::sweptArea).sum();
    }

    /** The smallest upright box round it. */
    public Box bounds() {
        if (bounds == null) {
            bounds = path.bounds();
        }
        return bounds;
    }

    /**
     * The spot at a length from the start. On a corner it belongs to the segment that starts there.
     *
     * @param alongMm from 0 to {@link #length()}; of an outline any length, counted round
     * @throws IllegalArgumentException if an open curve is not as long
     */
    public Spot at(double alongMm) {
        double along = alongMm;
        if (isClosed()) {
            along -= length() * Math.floor(along / length());
        } else if (!(along >= -Stretch.NOTHING_MM && along <= length() + Stretch.NOTHING_MM)) {
            throw new IllegalArgumentException("the curve is " + length() + " mm long; there is no spot at " + alongMm);
        }
        int segment = segmentAt(along);
        return spot(segment, stretches.get(segment).parameterAt(along - startsAt[segment]));
    }

    private int segmentAt(double along) {
        int found = Arrays.binarySearch(startsAt, 0, stretches.size(), along);
        return found >= 0 ? found : Math.max(0, -found - 2);
    }

    private Spot spot(int segment, double t) {
        Stretch stretch = stretches.get(segment);
        double along = startsAt[segment] + stretch.length(0, t);
        double curvature = stretch.velocity(t).length() > 0 ? stretch.curvature(t) : 0;
        return new Spot(stretch.at(t), along, stretch.tangent(t).angle(), curvature, segment);
    }

    /** The spot nearest to a place; the first of equals. */
    public Spot nearest(Point place) {
        Near near = near(place);
        return spot(near.segment(), near.t());
    }

    /** Millimetres from a place to the nearest spot. */
    public double distanceTo(Point place) {
        return near(place).distance();
    }

    private record Near(int segment, double t, double distance) {}

    private Near near(Point place) {
        Near near = new Near(0, 0, Double.POSITIVE_INFINITY);
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            if (boxDistance(stretch.box(), place) < near.distance()) {
                double t = stretch.nearest(place);
                double distance = stretch.at(t).distanceTo(place);
                near = distance < near.distance() ? new Near(i, t, distance) : near;
            }
        }
        return near;
    }

    static double boxDistance(Box box, Point place) {
        double dx = Math.max(0, Math.max(box.minX() - place.x(), place.x() - box.maxX()));
        double dy = Math.max(0, Math.max(box.minY() - place.y(), place.y() - box.maxY()));
        return Math.sqrt(dx * dx + dy * dy);
    }

    /**
     * Whether a place is inside an outline; a place on the line is not.
     *
     * @throws IllegalStateException if the curve is open
     */
    public boolean surrounds(Point place) {
        boolean left = Sides.isLeftOf(List.of(this), place);
        return distanceTo(place) > Stretch.NOTHING_MM && (area() > 0) == left;
    }

    /**
     * The part from one length to another; of an outline, on over the start if the second is the smaller one.
     *
     * @throws IllegalArgumentException if there is nothing between, or an open curve is not as long
     */
    public Curve between(double fromMm, double toMm) {
        if (isClosed() && toMm <= fromMm) {
            List<Segment> joined = new ArrayList<>(part(fromMm, length()));
            joined.addAll(part(0, toMm));
            return open(joined);
        }
        if (fromMm < -Stretch.NOTHING_MM || toMm > length() + Stretch.NOTHING_MM) {
            throw new IllegalArgumentException(
                    "the curve is " + length() + " mm long; there is no part from " + fromMm + " to " + toMm);
        }
        return open(part(fromMm, toMm));
    }

    private List<Segment> part(double fromMm, double toMm) {
        List<Segment> parts = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            double from = Math.max(fromMm, startsAt[i]);
            double to = Math.min(toMm, startsAt[i + 1]);
            if (to - from > Stretch.NOTHING_MM) {
                Stretch stretch = stretches.get(i);
                parts.add(stretch.part(stretch.parameterAt(from - startsAt[i]), stretch.parameterAt(to - startsAt[i]))
                        .segment());
            }
        }
        return parts;
    }

    /** The same line gone the other way. */
    public Curve reversed() {
        List<Stretch> turned = new ArrayList<>();
        stretches.forEach(stretch -> turned.add(stretch.reversed()));
        Collections.reverse(turned);
        return ofStretches(turned, isClosed());
    }

    /** The curve laid somewhere else; turned over, an outline runs the other way round. */
    public Curve moved(Motion motion) {
        return new Curve(segments().stream().map(motion::apply).map(Stretch::of).toList(), isClosed());
    }

    /**
     * The corners: where the direction changes at once, and of an open curve never at its ends.
     *
     * @return for each the spot where the next segment starts
     */
    public List<Spot> corners() {
        List<Spot> corners = new ArrayList<>();
        for (int i = isClosed() ? 0 : 1; i < stretches.size(); i++) {
            if (Math.abs(turnBefore(i)) > 1e-6) {
                corners.add(spot(i, 0));
            }
        }
        return corners;
    }

    /** By how much the direction changes where a segment starts, -π to π, positive to the left. */
    double turnBefore(int segment) {
        Stretch before = stretches.get((segment + stretches.size() - 1) % stretches.size());
        return before.tangent(1).turnTo(stretches.get(segment).tangent(0));
    }

    /** The curve as a line of a drawing. */
    public Path path(Role role) {
        return Path.of(role, segments(), isClosed());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Curve curve && path.equals(curve.path);
    }

    @Override
    public int hashCode() {
        return Objects.hash(path);
    }

    @Override
    public String toString() {
        return "Curve" + segments();
    }
}
