package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * The line beside a cubic curve at a distance, followed by cubics.
 *
 * <p>Each one leaves and arrives in the curve's own directions; its two handles are set by Newton's method so that it goes
 * through the true line at one third and at two thirds (the way of geometric Hermite interpolation: de Boor, Höllig and
 * Sabin 1987, from memory). The curve is halved until no place looked at is off by more than a millionth of a millimetre.
 * Where the curve bends tighter than the distance, the line beside it runs backwards; that part is left out, since all of
 * it is nearer to the curve than the distance.
 */
final class CubicBeside {
    private static final double NEAR_MM = 1e-6;
    private static final double SHORTEST_MM = 2e-4;
    private static final int LOOKS = 128;
    private static final int MOST_STEPS = 8;

    private final CubicStretch curve;
    private final double distance;
    private final List<Stretch> fitted = new ArrayList<>();

    private CubicBeside(CubicStretch curve, double distanceMm) {
        this.curve = curve;
        this.distance = distanceMm;
    }

    static List<Stretch> of(CubicStretch curve, double distanceMm) {
        CubicBeside beside = new CubicBeside(curve, distanceMm);
        double from = 0;
        for (double at : beside.breaks()) {
            if (beside.forward((from + at) / 2) > 0) {
                beside.follow(from, at);
            }
            from = at;
        }
        return beside.fitted;
    }

    /** How fast the line beside runs for each step of the curve; negative where it runs backwards. */
    private double forward(double t) {
        return curve.velocity(t).length() == 0 ? 1 : 1 - curve.curvature(t) * distance;
    }

    /** Parameters where the line beside turns back, or where the bend of the curve changes; 1 at the end; in order. */
    private double[] breaks() {
        DoubleStream turnsBack = IntStream.range(0, LOOKS)
                .filter(i -> forward((double) i / LOOKS) > 0 != forward((i + 1.0) / LOOKS) > 0)
                .mapToDouble(i -> SignChange.between((double) i / LOOKS, (i + 1.0) / LOOKS, this::forward));
        return DoubleStream.concat(
                        DoubleStream.concat(turnsBack, DoubleStream.of(curve.turningPoints())), DoubleStream.of(1))
                .sorted()
                .toArray();
    }

    private void follow(double from, double to) {
        Point start = curve.beside(from, distance);
        Point end = curve.beside(to, distance);
        if (Stretch.within(SHORTEST_MM, start, end)) {
            if (!start.equals(end)) {
                fitted.add(Stretch.of(Segment.line(start, end)));
            }
            return;
        }
        Optional<CubicStretch> fit = fit(from, to, start, end).filter(cubic -> isNear(cubic, from, to));
        if (fit.isPresent()) {
            fitted.add(fit.get());
            return;
        }
        follow(from, (from + to) / 2);
        follow((from + to) / 2, to);
    }

    /** @return empty if no pair of handles does */
    private Optional<CubicStretch> fit(double from, double to, Point start, Point end) {
        Vector leaving = curve.tangent(from);
        Vector arriving = curve.tangent(to);
        double chord = start.distanceTo(end);
        double alpha = Math.max(chord / 12, handle(from, to - from));
        double beta = Math.max(chord / 12, handle(to, to - from));
        Point first = curve.beside(from + (to - from) / 3, distance);
        Point second = curve.beside(from + 2 * (to - from) / 3, distance);
        for (int step = 0; step < MOST_STEPS; step++) {
            CubicStretch fit = cubic(start, leaving, alpha, arriving, beta, end);
            Miss one = miss(fit, first, leaving, arriving);
            Miss two = miss(fit, second, leaving, arriving);
            if (Math.abs(one.off) + Math.abs(two.off) < NEAR_MM / 100) {
                return Optional.of(fit);
            }
            double determinant = one.byAlpha * two.byBeta - one.byBeta * two.byAlpha;
            alpha -= (one.off * two.byBeta - two.off * one.byBeta) / determinant;
            beta -= (two.off * one.byAlpha - one.off * two.byAlpha) / determinant;
            if (!(Math.min(alpha, beta) > 0 && alpha + beta < 4 * chord)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** A third of the way that the line beside would go in a part of the curve, were it as fast in all of it as here. */
    private double handle(double t, double part) {
        return forward(t) * curve.velocity(t).length() * part / 3;
    }

    /** How far a place is to the right of the fit, and how that changes with the handles. */
    private record Miss(double off, double byAlpha, double byBeta) {}

    private static Miss miss(CubicStretch fit, Point place, Vector leaving, Vector arriving) {
        double t = fit.nearest(place);
        Vector normal = fit.tangent(t).left();
        double u = 1 - t;
        return new Miss(
                Vector.between(place, fit.at(t)).dot(normal),
                3 * u * u * t * leaving.dot(normal),
                -3 * u * t * t * arriving.dot(normal));
    }

    private static CubicStretch cubic(
            Point start, Vector leaving, double alpha, Vector arriving, double beta, Point end) {
        return new CubicStretch(Segment.cubic(
                start, leaving.times(alpha).from(start), arriving.times(-beta).from(end), end));
    }

    private boolean isNear(Stretch fit, double from, double to) {
        return DoubleStream.of(0.1, 0.22, 0.5, 0.78, 0.9)
                .mapToObj(share -> curve.beside(from + share * (to - from), distance))
                .allMatch(place -> fit.distanceTo(place) < NEAR_MM);
    }
}
