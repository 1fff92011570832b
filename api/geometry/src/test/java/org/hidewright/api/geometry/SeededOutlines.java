package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/** Outlines made up from a seed: three to twelve edges, straight, round and bent, with sharp and hollow corners. */
final class SeededOutlines {
    private SeededOutlines() {}

    /** An outline that runs counter-clockwise and does not cross itself. */
    static Curve outline(long seed) {
        Random random = new Random(seed);
        while (true) {
            Curve curve = attempt(random);
            if (curve.area() > 0 && crossesNowhere(curve)) {
                return curve;
            }
        }
    }

    private static Curve attempt(Random random) {
        int corners = 3 + random.nextInt(10);
        Point[] at = new Point[corners];
        double turn = random.nextDouble() * Math.PI;
        for (int i = 0; i < corners; i++) {
            double angle = turn + 2 * Math.PI * (i + 0.7 * random.nextDouble()) / corners;
            at[i] = Point.of(0, 0).towards(angle, 8 + 50 * random.nextDouble());
        }
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            segments.add(edge(at[i], at[(i + 1) % corners], random));
        }
        return Curve.closed(segments);
    }

    private static Segment edge(Point from, Point to, Random random) {
        double chord = from.distanceTo(to);
        double direction = from.directionTo(to);
        switch (random.nextInt(3)) {
            case 0:
                return Segment.line(from, to);
            case 1:
                double sweep = (random.nextBoolean() ? 1 : -1) * (0.2 + 1.8 * random.nextDouble());
                double radius = chord / 2 / Math.sin(Math.abs(sweep) / 2);
                double toCentre = direction + Math.signum(sweep) * (Math.PI - Math.abs(sweep)) / 2;
                return arcTo(from, from.towards(toCentre, radius), sweep, to);
            default:
                double leave = direction + 2 * (random.nextDouble() - 0.5);
                double arrive = direction + 2 * (random.nextDouble() - 0.5);
                return Segment.cubic(
                        from,
                        from.towards(leave, chord * (0.1 + 0.7 * random.nextDouble())),
                        to.towards(arrive, -chord * (0.1 + 0.7 * random.nextDouble())),
                        to);
        }
    }

    private static Segment arcTo(Point from, Point centre, double sweep, Point to) {
        Segment arc = Segment.arc(from, centre, sweep);
        if (arc.end().distanceTo(to) > 1e-6) {
            throw new IllegalStateException("the arc ends at " + arc.end() + ", not at " + to);
        }
        return arc;
    }

    private static boolean crossesNowhere(Curve curve) {
        List<Stretch> stretches = curve.stretches();
        for (int i = 0; i < stretches.size(); i++) {
            for (int j = i + 1; j < stretches.size(); j++) {
                for (Crossing crossing : Crossings.of(stretches.get(i), stretches.get(j))) {
                    boolean follows = j == i + 1 && crossing.first() > 1 - 1e-6 && crossing.second() < 1e-6;
                    boolean closes = i == 0
                            && j == stretches.size() - 1
                            && crossing.first() < 1e-6
                            && crossing.second() > 1 - 1e-6;
                    if (!follows && !closes) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
