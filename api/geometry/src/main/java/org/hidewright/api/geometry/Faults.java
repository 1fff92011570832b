package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.api.drawing.Point;

/** What is wrong with the edges of a piece, each with its place. */
public final class Faults {
    /** Segments shorter than this cannot be cut, and are a slip of the pen. */
    private static final double SHORTEST_MM = 0.01;
    /** Places nearer than this are told as one. */
    private static final double ONE_MM = 1e-5;
    /** A turn so near to half a turn goes back on its own line. */
    private static final double BACK_RAD = 1e-4;

    private Faults() {}

    /**
     * Faults of one curve, in the order of their places along it: {@link Fault.Kind#TOO_SHORT},
     * {@link Fault.Kind#TURNS_BACK} and {@link Fault.Kind#CROSSES_ITSELF}. An outline that touches itself in one place is
     * told as crossing there: it comes apart when it is cut.
     */
    public static List<Fault> of(Curve curve) {
        List<Fault> faults = new ArrayList<>();
        List<Stretch> stretches = curve.stretches();
        for (int i = 0; i < stretches.size(); i++) {
            if (stretches.get(i).length() < SHORTEST_MM) {
                faults.add(new Fault(Fault.Kind.TOO_SHORT, stretches.get(i).at(0.5)));
            }
            boolean corner = i > 0 || curve.isClosed() && stretches.size() > 1;
            if (corner && Math.PI - Math.abs(curve.turnBefore(i)) < BACK_RAD) {
                faults.add(new Fault(Fault.Kind.TURNS_BACK, stretches.get(i).start()));
            }
        }
        crossings(curve).forEach(place -> faults.add(new Fault(Fault.Kind.CROSSES_ITSELF, place)));
        faults.sort(
                Comparator.comparingDouble(fault -> curve.nearest(fault.place()).along()));
        return List.copyOf(faults);
    }

    /**
     * Faults of a piece: those of its edges, then holes that are not inside ({@link Fault.Kind#HOLE_OUTSIDE}), cross the
     * outline ({@link Fault.Kind#HOLE_CROSSES_EDGE}) or another hole ({@link Fault.Kind#HOLES_CROSS}).
     */
    public static List<Fault> of(Region region) {
        List<Fault> faults = new ArrayList<>();
        region.edges().forEach(edge -> faults.addAll(of(edge)));
        List<Curve> holes = region.holes();
        for (int i = 0; i < holes.size(); i++) {
            Curve hole = holes.get(i);
            List<Point> over = crossings(hole, region.outline());
            over.forEach(place -> faults.add(new Fault(Fault.Kind.HOLE_CROSSES_EDGE, place)));
            if (over.isEmpty() && !region.outline().surrounds(hole.start())) {
                faults.add(new Fault(Fault.Kind.HOLE_OUTSIDE, hole.start()));
            }
            for (Curve other : holes.subList(i + 1, holes.size())) {
                List<Point> both = crossings(hole, other);
                both.forEach(place -> faults.add(new Fault(Fault.Kind.HOLES_CROSS, place)));
                if (both.isEmpty() && (other.surrounds(hole.start()) || hole.surrounds(other.start()))) {
                    faults.add(new Fault(Fault.Kind.HOLES_CROSS, hole.start()));
                }
            }
        }
        return List.copyOf(faults);
    }

    private static List<Point> crossings(Curve one, Curve other) {
        List<Point> places = new ArrayList<>();
        if (!Crossings.apart(one.bounds(), other.bounds())) {
            for (Stretch a : one.stretches()) {
                other.stretches()
                        .forEach(b -> Crossings.of(a, b).forEach(crossing -> add(places, a.at(crossing.first()))));
            }
        }
        return places;
    }

    /**
     * Whether two stretches of which one goes on after the other may meet elsewhere: a line that comes back to a place of its
     * own turns by half a turn at least on the way.
     */
    private static boolean mayComeBack(Stretch before, Stretch after) {
        double corner = Math.abs(before.tangent(1).turnTo(after.tangent(0)));
        return before.turning() + corner + after.turning() > Math.PI + 1e-9;
    }

    /** Places where a curve meets itself, except where one segment goes over into the next. */
    private static List<Point> crossings(Curve curve) {
        List<Stretch> parts = new ArrayList<>();
        curve.stretches().forEach(stretch -> parts.addAll(withoutLoops(stretch)));
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                boolean follows = j == i + 1;
                boolean closes = curve.isClosed() && i == 0 && j == parts.size() - 1;
                Stretch before = parts.get(follows ? i : j);
                Stretch after = parts.get(follows ? j : i);
                if (follows == closes || mayComeBack(before, after)) {
                    crossings(parts.get(i), parts.get(j), follows, closes).forEach(place -> add(places, place));
                }
            }
        }
        return places;
    }

    /**
     * Where two stretches of a curve meet, but for their joints.
     *
     * @param follows whether the second goes on from the first
     * @param closes whether the first goes on from the second
     */
    private static List<Point> crossings(Stretch one, Stretch other, boolean follows, boolean closes) {
        List<Point> places = new ArrayList<>();
        for (Crossing crossing : Crossings.of(one, other)) {
            boolean joint = follows && isJoint(one, crossing.first(), other, crossing.second())
                    || closes && isJoint(other, crossing.second(), one, crossing.first());
            if (!joint) {
                places.add(one.at(crossing.first()));
            }
        }
        return places;
    }

    private static boolean isJoint(Stretch before, double end, Stretch after, double start) {
        return Stretch.within(ONE_MM, before.at(end), before.end())
                && Stretch.within(ONE_MM, after.at(start), after.start());
    }

    private static List<Stretch> withoutLoops(Stretch stretch) {
        if (!(stretch instanceof CubicStretch cubic) || stretch.turning() <= Math.PI) {
            return List.of(stretch);
        }
        List<Stretch> parts = new ArrayList<>();
        double from = 0;
        for (double at : cubic.turningPoints()) {
            if (stretch.length(from, at) > Stretch.NOTHING_MM) {
                parts.add(stretch.part(from, at));
                from = at;
            }
        }
        parts.add(from == 0 ? stretch : stretch.part(from, 1));
        return parts;
    }

    private static void add(List<Point> places, Point place) {
        if (places.stream().noneMatch(known -> Stretch.within(ONE_MM, known, place))) {
            places.add(place);
        }
    }
}
