package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

/** Seeded segments of all kinds held against what is found by looking at many of their places. */
class SampledTest {
    private static final int LOOKS = 600;

    /** At least sixty: each is soon done, and fewer would miss much. */
    private static int seeds(int usual, int inLongRuns) {
        return Math.max(60, Seeds.count(usual, inLongRuns));
    }

    private static double in(Random random, double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    private static Point place(Random random) {
        return Point.of(in(random, -40, 40), in(random, -40, 40));
    }

    private static Segment segment(Random random, Point start) {
        return switch (random.nextInt(4)) {
            case 0 -> Segment.line(start, place(random));
            case 1 -> Segment.arc(start, place(random), in(random, 0.2, 6) * (random.nextBoolean() ? 1 : -1));
            case 2 -> Segment.cubic(start, place(random), place(random), place(random));
            default -> { // a handle without length, or both on one place
                Point end = place(random);
                Point middle = place(random);
                yield random.nextBoolean()
                        ? Segment.cubic(start, random.nextBoolean() ? start : middle, middle, end)
                        : Segment.cubic(start, middle, random.nextBoolean() ? end : middle, end);
            }
        };
    }

    private static List<Point> sampled(Stretch stretch) {
        List<Point> places = new ArrayList<>();
        for (int i = 0; i <= LOOKS; i++) {
            places.add(stretch.at((double) i / LOOKS));
        }
        return places;
    }

    @Test
    void nothingSampledIsNearerThanTheNearest() {
        for (long seed = 0; seed < seeds(150, 4000); seed++) {
            Random random = new Random(seed);
            Stretch stretch = Stretch.of(segment(random, place(random)));
            Point from = place(random);
            double least = sampled(stretch).stream()
                    .mapToDouble(from::distanceTo)
                    .min()
                    .orElseThrow();
            double found = stretch.distanceTo(from);
            assertTrue(found <= least + 1e-9, "seed " + seed + ": " + found + " where there is " + least);
            assertTrue(found > least - 1, "seed " + seed);
            double t = stretch.nearest(from);
            assertTrue(t >= 0 && t <= 1);
        }
    }

    @Test
    void theNearestOfAnArcIsOnItAtOnceOrAtAnEnd() {
        Stretch arc = Stretch.of(Segment.arc(Point.of(10, 0), Point.of(0, 0), Math.PI / 2));
        assertEquals(0.5, arc.nearest(Point.of(30, 30)), 1e-12);
        assertEquals(0.5, arc.nearest(Point.of(1, 1)), 1e-12);
        assertEquals(0, arc.nearest(Point.of(10, -3)), 1e-12);
        assertEquals(1, arc.nearest(Point.of(-3, 10)), 1e-12);
        assertEquals(0, arc.nearest(Point.of(0, 0)), 1e-12);
        Stretch clockwise = Stretch.of(Segment.arc(Point.of(10, 0), Point.of(0, 0), -Math.PI / 2));
        assertEquals(0.25, clockwise.nearest(Point.of(20, -20 * Math.tan(Math.PI / 8))), 1e-12);
        assertEquals(0, clockwise.nearest(Point.of(10, 3)), 1e-12);
        assertEquals(1, clockwise.nearest(Point.of(-3, -10)), 1e-12);
    }

    @Test
    void aLengthAlongASegmentIsFoundAgain() {
        for (long seed = 0; seed < seeds(120, 3000); seed++) {
            Random random = new Random(seed);
            Stretch stretch = Stretch.of(segment(random, place(random)));
            double along = stretch.length() * random.nextDouble();
            double t = stretch.parameterAt(along);
            assertEquals(along, stretch.length(0, t), 1e-8, "seed " + seed);
            assertEquals(stretch.length(), stretch.length(0, t) + stretch.length(t, 1), 1e-8, "seed " + seed);
            double chord = 0;
            List<Point> places = sampled(stretch);
            for (int i = 1; i < places.size(); i++) {
                chord += places.get(i - 1).distanceTo(places.get(i));
            }
            assertEquals(chord, stretch.length(), 0.02, "seed " + seed);
        }
    }

    /** A cubic that all but stops on its way: the speed near its middle is a ten-thousandth of that at its ends. */
    @Test
    void aLengthIsFoundWhereACurveNearlyStops() {
        Stretch cusp =
                Stretch.of(Segment.cubic(Point.of(0, 0), Point.of(40, 30.001), Point.of(0, 30), Point.of(40, 0)));
        for (int i = 1; i < 200; i++) {
            double along = cusp.length() * i / 200;
            assertEquals(along, cusp.length(0, cusp.parameterAt(along)), 1e-8);
        }
    }

    /** A handle without length at the end: the nearest place is still between the ends. */
    @Test
    void aHandleWithoutLengthHidesNoNearerPlace() {
        Point end = Point.of(40, 0);
        Stretch late = Stretch.of(Segment.cubic(Point.of(0, 0), Point.of(20, 30), end, end));
        Stretch early = late.reversed();
        Point from = Point.of(15, 40);
        double least =
                sampled(late).stream().mapToDouble(from::distanceTo).min().orElseThrow();
        assertEquals(least, late.distanceTo(from), 1e-4);
        assertEquals(least, early.distanceTo(from), 1e-4);
    }

    @Test
    void rootsAreThoseThatWereMultipliedTogether() {
        // (t - 0.2) (t - 0.5) (t - 0.9) = t³ - 1.6 t² + 0.73 t - 0.09
        List<Double> three =
                new CubicRoots(1, -1.6, 0.73, -0.09).inside().boxed().toList();
        assertEquals(3, three.size());
        assertEquals(0.2, three.get(0), 1e-12);
        assertEquals(0.5, three.get(1), 1e-12);
        assertEquals(0.9, three.get(2), 1e-12);
        // (t - 0.25) (t² + 1), (2 t - 1) alone, none: t² + 1
        assertEquals(
                0.25,
                new CubicRoots(1, -0.25, 1, -0.25).inside().boxed().toList().get(0),
                1e-12);
        assertEquals(List.of(0.5), new CubicRoots(0, 0, 2, -1).inside().boxed().toList());
        assertEquals(List.of(), new CubicRoots(0, 1, 0, 1).inside().boxed().toList());
        // (t - 0.3) (t - 2) (t + 1) = t³ - 1.3 t² - 1.7 t + 0.6: one is inside
        List<Double> one = new CubicRoots(1, -1.3, -1.7, 0.6).inside().boxed().toList();
        assertEquals(1, one.size());
        assertEquals(0.3, one.get(0), 1e-12);
        // t² - 0.36 and its negative
        assertEquals(
                0.6, new CubicRoots(0, 1, 0, -0.36).inside().boxed().toList().get(0), 1e-12);
        assertEquals(
                0.6, new CubicRoots(0, -1, 0, 0.36).inside().boxed().toList().get(0), 1e-12);
    }

    @Test
    void boxesHoldWhatTheyAreRound() {
        for (long seed = 0; seed < seeds(100, 2000); seed++) {
            Random random = new Random(seed);
            Stretch stretch = Stretch.of(segment(random, place(random)));
            double from = in(random, 0, 0.6);
            double to = in(random, from + 0.05, 1);
            var box = stretch.boxAround(from, to);
            double off = stretch.sagitta(from, to);
            Point a = stretch.at(from);
            Point b = stretch.at(to);
            for (int i = 0; i <= 50; i++) {
                Point at = stretch.at(from + (to - from) * i / 50);
                assertTrue(at.x() >= box.minX() - 1e-9 && at.x() <= box.maxX() + 1e-9, "seed " + seed);
                assertTrue(at.y() >= box.minY() - 1e-9 && at.y() <= box.maxY() + 1e-9, "seed " + seed);
                Stretch chord = Stretch.of(Segment.line(a, b.equals(a) ? b.plus(1e-9, 0) : b));
                assertTrue(chord.distanceTo(at) <= off + 1e-9, "seed " + seed);
            }
        }
    }

    /** The direction of a curve, also where a handle has no length, against the next place on it. */
    @Test
    void aCurveGoesWhereItPoints() {
        for (long seed = 0; seed < seeds(150, 3000); seed++) {
            Random random = new Random(seed);
            Stretch stretch = Stretch.of(segment(random, place(random)));
            for (double t : new double[] {0, 0.3, 1}) {
                double step = t == 1 ? -1e-5 : 1e-5;
                double way = stretch.at(t).directionTo(stretch.at(t + step)) + (step < 0 ? Math.PI : 0);
                double off = Math.IEEEremainder(stretch.tangent(t).angle() - way, 2 * Math.PI);
                assertEquals(0, off, 0.02, "seed " + seed + " at " + t);
            }
        }
    }

    /** How often two sampled lines cross each other; touching is not counted. */
    private static int crossings(List<Point> one, List<Point> other) {
        int found = 0;
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < other.size(); j++) {
                found += cross(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j)) ? 1 : 0;
            }
        }
        return found;
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        if (Math.max(a.x(), b.x()) < Math.min(c.x(), d.x())
                || Math.max(c.x(), d.x()) < Math.min(a.x(), b.x())
                || Math.max(a.y(), b.y()) < Math.min(c.y(), d.y())
                || Math.max(c.y(), d.y()) < Math.min(a.y(), b.y())) {
            return false;
        }
        return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point p) {
        return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
    }

    @Test
    void crossingsAreThoseThatAreSeen() {
        int all = 0;
        for (long seed = 0; seed < seeds(120, 3000); seed++) {
            Random random = new Random(seed);
            Stretch one = Stretch.of(segment(random, place(random)));
            Stretch other = Stretch.of(segment(random, place(random)));
            List<Crossing> found = Crossings.of(one, other);
            assertEquals(crossings(sampled(one), sampled(other)), found.size(), "seed " + seed);
            for (Crossing crossing : found) {
                assertEquals(0, one.at(crossing.first()).distanceTo(other.at(crossing.second())), 1e-7, "seed " + seed);
            }
            assertEquals(found.size(), Crossings.of(other, one).size(), "seed " + seed);
            all += found.size();
        }
        assertTrue(all > 15, "many cross: " + all);
    }

    /** Chains of three segments, open or closed: as many places where they cross themselves as are seen. */
    @Test
    void aCurveCrossesItselfWhereItIsSeenTo() {
        int crossed = 0;
        for (long seed = 0; seed < seeds(80, 3000); seed++) {
            Random random = new Random(seed);
            List<Segment> segments = new ArrayList<>();
            Point pen = place(random);
            Point start = pen;
            for (int i = 0; i < 3; i++) {
                Segment segment = segment(random, pen);
                segments.add(segment);
                pen = segment.end();
            }
            boolean closed = random.nextBoolean();
            if (closed) {
                segments.add(Segment.line(pen, start));
            }
            Curve curve = closed ? Curve.closed(segments) : Curve.open(segments);
            List<Point> places = new ArrayList<>();
            curve.stretches().forEach(stretch -> places.addAll(sampled(stretch).subList(0, LOOKS)));
            places.add(curve.end());
            int seen = selfCrossings(places);
            List<Point> told = Faults.of(curve).stream()
                    .filter(fault -> fault.kind() == Fault.Kind.CROSSES_ITSELF)
                    .map(Fault::place)
                    .toList();
            long besideJoint = told.stream() // a loop beside a joint may be smaller than a step
                    .filter(at -> curve.segments().stream()
                            .anyMatch(segment -> segment.start().distanceTo(at) < 0.5))
                    .count();
            assertTrue(seen <= told.size() && seen >= told.size() - besideJoint, "seed " + seed + " " + told);
            crossed += seen > 0 ? 1 : 0;
        }
        assertTrue(crossed > 20, "many do: " + crossed);
    }

    private static int selfCrossings(List<Point> places) {
        int found = 0;
        for (int i = 1; i < places.size(); i++) {
            for (int j = i + 2; j < places.size(); j++) {
                found += cross(places.get(i - 1), places.get(i), places.get(j - 1), places.get(j)) ? 1 : 0;
            }
        }
        return found;
    }

    /** A foot with a large toe, turned to all sides: the roomiest place against a grid of places. */
    @Test
    void noPlaceHasMoreRoomThanTheRoomiest() {
        for (int turn = 0; turn < 8; turn++) {
            Motion motion = Motion.turn(Point.of(3, 5), turn * Math.PI / 4 + 0.1);
            Curve foot = Outlines.polygon(
                            Point.of(0, 0),
                            Point.of(90, 0),
                            Point.of(90, 34),
                            Point.of(60, 34),
                            Point.of(56, 12),
                            Point.of(0, 9))
                    .moved(motion);
            Region region = Region.of(foot, List.of(Outlines.circle(motion.apply(Point.of(82, 26)), 6)));
            double found = region.edgeDistance(region.roomiest());
            assertTrue(region.contains(region.roomiest()));
            var box = region.bounds();
            double best = 0;
            for (int i = 0; i <= 120; i++) {
                for (int j = 0; j <= 120; j++) {
                    Point at = Point.of(box.minX() + box.width() * i / 120, box.minY() + box.height() * j / 120);
                    best = region.contains(at) ? Math.max(best, region.edgeDistance(at)) : best;
                }
            }
            assertTrue(found >= best - Math.max(box.width(), box.height()) / 1000, found + " where there is " + best);
            assertEquals(best, found, 1);
        }
    }

    /** Insides by the winding of a sampled outline. */
    @Test
    void insideIsWhatTheOutlineGoesRound() {
        for (long seed = 0; seed < seeds(60, 400); seed++) {
            Curve outline = SeededOutlines.outline(seed);
            Random random = new Random(seed);
            var box = outline.bounds().grown(5);
            for (int i = 0; i < 20; i++) {
                Point at = Point.of(in(random, box.minX(), box.maxX()), in(random, box.minY(), box.maxY()));
                assertEquals(Math.abs(winding(outline, at)) > 0.5, outline.surrounds(at), "seed " + seed + " at " + at);
            }
        }
    }

    private static double winding(Curve outline, Point at) {
        DoubleUnaryOperator towards = along -> at.directionTo(outline.at(along).point());
        double sum = 0;
        int looks = 2000;
        double before = towards.applyAsDouble(0);
        for (int i = 1; i <= looks; i++) {
            double next = towards.applyAsDouble(outline.length() * i / looks);
            sum += Math.IEEEremainder(next - before, 2 * Math.PI);
            before = next;
        }
        return sum / (2 * Math.PI);
    }
}
