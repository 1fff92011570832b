package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

/** What calculations need of single segments, by hand and against what is seen at many of their places. */
class SegmentsTest {
    private static final Point ORIGIN = Point.of(0, 0);

    private static Stretch line(double x1, double y1, double x2, double y2) {
        return Stretch.of(Segment.line(Point.of(x1, y1), Point.of(x2, y2)));
    }

    private static CubicStretch cubic(double... xy) {
        return new CubicStretch(Segment.cubic(
                Point.of(xy[0], xy[1]), Point.of(xy[2], xy[3]), Point.of(xy[4], xy[5]), Point.of(xy[6], xy[7])));
    }

    private static CubicStretch seeded(Random random) {
        return cubic(random.doubles(8, -40, 40).toArray());
    }

    @Test
    void withinADistanceIsNearerThanIt() {
        assertFalse(Stretch.within(1, ORIGIN, Point.of(1, 0)));
        assertTrue(Stretch.within(1, ORIGIN, Point.of(0, 0.999)));
    }

    @Test
    void aShareIsKeptInside() {
        assertEquals(0, Stretch.inside(-0.1));
        assertEquals(0.3, Stretch.inside(0.3));
        assertEquals(1, Stretch.inside(1.1));
        assertEquals(0, Stretch.inside(Double.NaN));
    }

    @Test
    void beforeTheStartAndPastTheEndThereIsNoLength() {
        for (Stretch stretch : List.of(
                line(0, 0, 30, 40),
                Stretch.of(Segment.arc(Point.of(10, 0), ORIGIN, -2)),
                cubic(0, 0, 10, 20, 30, 20, 40, 0))) {
            assertEquals(0, stretch.parameterAt(-3));
            assertEquals(0, stretch.parameterAt(0));
            assertEquals(1, stretch.parameterAt(stretch.length()));
            assertEquals(1, stretch.parameterAt(stretch.length() + 3));
        }
        assertEquals(0.5, line(0, 0, 30, 40).parameterAt(25), 1e-15);
    }

    @Test
    void placesAreSeenFromTheCentreOfAnArc() {
        ArcStretch arc = (ArcStretch) Stretch.of(Segment.arc(Point.of(10, 0), ORIGIN, Math.PI / 2));
        assertEquals(0.5, arc.parameterTowards(Point.of(3, 3)), 1e-12);
        assertEquals(-0.25, arc.parameterTowards(ORIGIN.towards(-Math.PI / 8, 5)), 1e-12);
        assertEquals(1.5, arc.parameterTowards(ORIGIN.towards(Math.PI * 3 / 4, 5)), 1e-12);
        ArcStretch clockwise = (ArcStretch) Stretch.of(Segment.arc(Point.of(10, 0), ORIGIN, -4));
        assertEquals(0.25, clockwise.parameterTowards(ORIGIN.towards(-1, 5)), 1e-12);
        assertEquals(1.125, clockwise.parameterTowards(ORIGIN.towards(-4.5, 5)), 1e-12);
        assertEquals(-0.125, clockwise.parameterTowards(ORIGIN.towards(0.5, 5)), 1e-12);
    }

    /** The rise of an arc over its chord, r (1 - cos of half its turn), from memory; past half a turn as well. */
    @Test
    void anArcRisesOverItsChord() {
        Stretch arc = Stretch.of(Segment.arc(Point.of(10, 0), ORIGIN, 3 * Math.PI / 2));
        assertEquals(10 * (1 - Math.cos(Math.PI * 3 / 4)), arc.sagitta(0, 1), 1e-12);
        assertEquals(10, arc.sagitta(0, 2.0 / 3), 1e-12);
        assertEquals(10 * (1 - Math.cos(Math.PI / 8)), arc.sagitta(0.5, 2.0 / 3), 1e-12);
        assertEquals(Math.PI * 3 / 4, arc.swing(0, 1), 1e-12);
        assertEquals(Math.PI / 4, arc.swing(1.0 / 3, 2.0 / 3), 1e-12);
        assertEquals(3 * Math.PI / 2, arc.turning(), 1e-12);
    }

    @Test
    void noPartPointsAwayFromItsChordByMoreThanItsSwing() {
        for (long seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Stretch stretch = random.nextInt(4) > 0
                    ? seeded(random)
                    : Stretch.of(Segment.arc(ORIGIN, Point.of(random.nextDouble(), 9), 6 * random.nextDouble() - 3));
            double from = 0.8 * random.nextDouble();
            double to = from + 0.2 * random.nextDouble() + 0.001;
            Vector chord = Vector.between(stretch.at(from), stretch.at(to));
            double most = IntStream.rangeClosed(0, 100)
                    .mapToDouble(i -> Math.abs(chord.turnTo(stretch.tangent(from + (to - from) * i / 100))))
                    .max()
                    .orElseThrow();
            double swing = stretch.swing(from, to);
            assertTrue(most <= swing + 1e-9, "seed " + seed + ": " + most + " of " + swing);
            assertTrue(swing <= Math.PI, "seed " + seed);
        }
    }

    @Test
    void aStraightCubicHasNoSwingAndADropHasAll() {
        assertEquals(0, cubic(0, 0, 0, 0, 20, 10, 20, 10).swing(0, 1), 1e-9);
        assertEquals(0, cubic(0, 0, 4, 2, 10, 5, 20, 10).swing(0.1, 0.7), 1e-9);
        assertEquals(0, cubic(0, 0, 4, 2, 10, 5, 20, 10).turning(), 1e-9);
        assertEquals(Math.PI, cubic(0, 0, 60, 40, -60, 40, 0, 0).swing(0, 1), 1e-9);
        // legs at right angles: it leaves 45 degrees off its chord and arrives as much off on the other side
        assertEquals(Math.PI / 4, cubic(0, 0, 10, 0, 10, 0, 10, 10).swing(0, 1), 1e-9);
    }

    @Test
    void aCubicTurnsByNoMoreThanTheLegsOfItsControlPoints() {
        assertEquals(Math.PI, cubic(0, 0, 0, 10, 10, 10, 10, 0).turning(), 1e-12);
        assertEquals(Math.PI / 2, cubic(0, 0, 0, 0, 0, 10, 10, 10).turning(), 1e-12, "a leg without length is none");
        assertEquals(Math.PI / 2, cubic(0, 0, 0, 10, 0, 10, 10, 10).turning(), 1e-12);
        for (long seed = 0; seed < 60; seed++) {
            CubicStretch curve = seeded(new Random(seed));
            double turned = 0;
            for (int i = 1; i <= 2000; i++) {
                turned += Math.abs(curve.tangent((i - 1) / 2000.0).turnTo(curve.tangent(i / 2000.0)));
            }
            assertTrue(turned <= curve.turning() + 1e-6, "seed " + seed);
        }
    }

    /** A direction also where one handle, or two, have no length; far from the origin as well, where numbers are coarse. */
    @Test
    void aCubicPointsToItsNextControlPoint() {
        assertEquals(Math.PI / 4, cubic(5, 5, 5, 5, 15, 15, 30, 5).tangent(0).angle(), 1e-12);
        assertEquals(0, cubic(0, 0, 10, 0, 20, 0, 20, 0).tangent(1).angle(), 1e-12);
        assertEquals(0, cubic(5, 5, 5, 5, 5, 5, 15, 5).tangent(0).angle(), 1e-12);
        for (long seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            double[] xy = random.doubles(8, 9e4, 1e5).toArray();
            xy[4] = xy[6];
            xy[5] = xy[7];
            double wanted = Point.of(xy[2], xy[3]).directionTo(Point.of(xy[6], xy[7]));
            assertEquals(wanted, cubic(xy).tangent(1).angle(), 1e-6, "seed " + seed);
            Stretch back = cubic(xy).reversed();
            assertEquals(
                    0,
                    Math.IEEEremainder(back.tangent(0).angle() - wanted - Math.PI, 2 * Math.PI),
                    1e-6,
                    "seed " + seed);
        }
    }

    /** Where x or y turns round, or the curve bends over: as many as the signs of its derivatives change in 4,000 steps. */
    @Test
    void turningPointsAreWhereTheSignsOfTheDerivativesChange() {
        int all = 0;
        for (long seed = 0; seed < 80; seed++) {
            CubicStretch curve = seeded(new Random(seed));
            List<DoubleUnaryOperator> turning = List.of(
                    t -> curve.velocity(t).x(),
                    t -> curve.velocity(t).y(),
                    t -> curve.velocity(t).cross(curve.acceleration(t)));
            double[] seen = turning.stream()
                    .flatMapToDouble(f -> IntStream.range(0, 4000)
                            .filter(i -> f.applyAsDouble(i / 4000.0) * f.applyAsDouble((i + 1) / 4000.0) < 0)
                            .mapToDouble(i -> (i + 0.5) / 4000))
                    .sorted()
                    .toArray();
            assertArrayEquals(seen, curve.turningPoints(), 1 / 4000.0, "seed " + seed);
            all += seen.length;
        }
        assertTrue(all > 160, "they have many: " + all);
    }

    /** Both handles without length: straight, and the nearest place is the foot. */
    @Test
    void theNearestPlaceOfACubicWithoutHandlesIsTheFoot() {
        CubicStretch straight = cubic(0, 0, 0, 0, 40, 30, 40, 30);
        for (double share : new double[] {0.1, 0.35, 0.5, 0.8}) {
            Point foot = Point.of(40 * share, 30 * share);
            Point place = foot.plus(-6, 8);
            assertEquals(10, straight.distanceTo(place), 1e-9);
            assertEquals(0, straight.at(straight.nearest(place)).distanceTo(foot), 1e-6);
        }
    }

    /** From the centre of the tightest bend three roots are one; beside it they part again. */
    @Test
    void theNearestPlaceIsFoundFromTheCentreOfABend() {
        CubicStretch bow = cubic(0, 0, 3, 41, 57, 38, 60, 0);
        for (int i = 0; i <= 1000; i++) {
            double t = i / 1000.0;
            double radius = 1 / bow.curvature(t);
            for (double near : new double[] {-1e-4, -1e-7, 0, 1e-7}) {
                Point centre = bow.beside(t, radius + near);
                double least = IntStream.rangeClosed(0, 1000)
                        .mapToDouble(j -> bow.at(j / 1000.0).distanceTo(centre))
                        .min()
                        .orElseThrow();
                assertTrue(bow.distanceTo(centre) <= least + 1e-9, "at " + t);
            }
        }
    }

    @Test
    void rootsOfSeededPolynomialsAreThoseTheyWereMadeOf() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            double[] made = random.doubles(3, -0.7, 1.7).sorted().toArray();
            double a = random.nextBoolean() ? -3 : 0.02;
            double[] found = new CubicRoots(
                            a,
                            -a * (made[0] + made[1] + made[2]),
                            a * (made[0] * made[1] + made[1] * made[2] + made[2] * made[0]),
                            -a * made[0] * made[1] * made[2])
                    .inside()
                    .toArray();
            double[] wanted =
                    Arrays.stream(made).filter(root -> root > 0 && root < 1).toArray();
            assertArrayEquals(wanted, found, 1e-6, "seed " + seed);
        }
    }

    @Test
    void aRootThatChangesNoSignIsNone() {
        // (t - 0.5)², its negative, t (t - 0.5) with a root at the start, (t - 0.5)² (t - 0.75)
        assertArrayEquals(new double[0], new CubicRoots(0, 1, -1, 0.25).inside().toArray());
        assertArrayEquals(
                new double[0], new CubicRoots(0, -1, 1, -0.25).inside().toArray());
        assertArrayEquals(
                new double[] {0.5}, new CubicRoots(0, 1, -0.5, 0).inside().toArray(), 1e-12);
        assertArrayEquals(
                new double[] {0.75},
                new CubicRoots(1, -1.75, 1, -0.1875).inside().toArray(),
                1e-9);
        assertArrayEquals(new double[0], new CubicRoots(0, 0, 0, 0).inside().toArray());
    }

    @Test
    void aSignChangeIsFoundInFewSteps() {
        int[] asked = {0};
        DoubleUnaryOperator square = x -> {
            asked[0]++;
            return x * x - 2;
        };
        assertEquals(Math.sqrt(2), SignChange.between(0, 2, square), 1e-15);
        assertTrue(asked[0] < 16, "asked " + asked[0]);
        asked[0] = 0;
        assertEquals(Math.sqrt(2), SignChange.between(2, 0, x -> -square.applyAsDouble(x)), 1e-15);
        assertTrue(asked[0] < 16, "asked " + asked[0]);
        // a very lopsided one, where a plain chord would take hundreds of steps
        asked[0] = 0;
        double root = SignChange.between(0, 1, x -> {
            asked[0]++;
            return Math.pow(x, 9) - 1e-4;
        });
        assertEquals(Math.pow(1e-4, 1.0 / 9), root, 1e-14);
        assertTrue(asked[0] < 40, "asked " + asked[0]);
        assertEquals(0, SignChange.between(0, 1, x -> x));
        assertEquals(1, SignChange.between(0, 1, x -> x - 1));
    }

    /** Integrals in closed form; a kink takes many halvings, a large sum leaves no room for rounding. */
    @Test
    void sumsAreTheIntegrals() {
        assertEquals(Math.E - 1, GaussLegendre.sum(Math::exp, 0, 1), 1e-14);
        assertEquals(5.0 / 18, GaussLegendre.sum(x -> Math.abs(x - 1.0 / 3), 0, 1), 1e-12);
        assertEquals(2e9, GaussLegendre.sum(x -> 1e9 * Math.sin(x), 0, Math.PI), 1e-3);
        assertEquals(0, GaussLegendre.sum(Math::exp, 2, 2));
        int[] asked = {0};
        GaussLegendre.sum(
                x -> {
                    asked[0]++;
                    return x * x;
                },
                0,
                3);
        assertTrue(asked[0] < 100, "a square is summed at once: " + asked[0]);
    }

    @Test
    void aTurnToASideGoesThatWay() {
        Vector east = new Vector(1, 0);
        Vector north = new Vector(0, 2);
        assertEquals(Math.PI / 2, east.turnTo(north, 1), 1e-12);
        assertEquals(-3 * Math.PI / 2, east.turnTo(north, -5), 1e-12);
        assertEquals(-Math.PI / 2, north.turnTo(east, -1), 1e-12);
        assertEquals(3 * Math.PI / 2, north.turnTo(east, 0.1), 1e-12);
        assertEquals(0, east.turnTo(east, 1));
    }

    /** Lengths of parts add up, wherever the curve is slow. */
    @Test
    void partsAreTogetherAsLongAsTheWhole() {
        CubicStretch cusp = cubic(0, 0, 40, 30.0001, 0, 30, 40, 0);
        double whole = cusp.length();
        for (double at : DoubleStream.iterate(0.05, t -> t < 1, t -> t + 0.05).toArray()) {
            assertEquals(whole, cusp.length(0, at) + cusp.length(at, 1), 1e-9);
            assertEquals(cusp.part(0, at).length(), cusp.length(0, at), 1e-9);
        }
    }
}
