package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
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

    /** Parameters where the line beside turns back, or where the bend of the curve changes; 1 at the end. */
    private List<Double> breaks() {
        List<Double> breaks = new ArrayList<>();
        double[] turns = curve.turningPoints();
        int next = 0;
        double before = 0;
        for (int i = 1; i <= LOOKS; i++) {
            double t = (double) i / LOOKS;
            if ((forward(before) > 0) != (forward(t) > 0)) {
                breaks.add(sign(before, t));
            }
            while (next < turns.length && turns[next] <= t) {
                breaks.add(turns[next++]);
            }
            before = t;
        }
        breaks.add(1.0);
        breaks.sort(null);
        return breaks;
    }

    private double sign(double low, double high) {
        boolean atLow = forward(low) > 0;
        double from = low;
        double to = high;
        for (int step = 0; step < 60; step++) {
            double middle = (from + to) / 2;
            if ((forward(middle) > 0) == atLow) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return (from + to) / 2;
    }

    private void follow(double from, double to) {
        Point start = curve.beside(from, distance);
        Point end = curve.beside(to, distance);
        double chord = start.distanceTo(end);
        if (chord < Stretch.NOTHING_MM && curve.length(from, to) < 10 * SHORTEST_MM) {
            return;
        }
        Stretch fit = fit(from, to, start, end);
        if (fit != null && (isNear(fit, from, to) || chord < SHORTEST_MM)) {
            fitted.add(fit);
            return;
        }
        if (chord < SHORTEST_MM) {
            fitted.add(Stretch.of(Segment.line(start, end)));
            return;
        }
        follow(from, (from + to) / 2);
        follow((from + to) / 2, to);
    }

    /** @return null if no pair of handles does */
    private Stretch fit(double from, double to, Point start, Point end) {
        Vector leaving = curve.tangent(from);
        Vector arriving = curve.tangent(to);
        double alpha = Math.max(forward(from), 0.01) * curve.velocity(from).length() * (to - from) / 3;
        double beta = Math.max(forward(to), 0.01) * curve.velocity(to).length() * (to - from) / 3;
        if (alpha == 0 || beta == 0) {
            double third = start.distanceTo(end) / 3;
            alpha = alpha == 0 ? third : alpha;
            beta = beta == 0 ? third : beta;
        }
        Point first = curve.beside(from + (to - from) / 3, distance);
        Point second = curve.beside(from + 2 * (to - from) / 3, distance);
        CubicStretch fit = cubic(start, leaving, alpha, arriving, beta, end);
        for (int step = 0; step < 8; step++) {
            Miss one = miss(fit, first, leaving, arriving);
            Miss two = miss(fit, second, leaving, arriving);
            double determinant = one.byAlpha * two.byBeta - one.byBeta * two.byAlpha;
            if (Math.abs(one.off) + Math.abs(two.off) < NEAR_MM / 100 || Math.abs(determinant) < 1e-12) {
                break;
            }
            alpha -= (one.off * two.byBeta - two.off * one.byBeta) / determinant;
            beta -= (two.off * one.byAlpha - one.off * two.byAlpha) / determinant;
            if (!(alpha > 0 && beta > 0 && alpha + beta < 4 * start.distanceTo(end))) {
                return null;
            }
            fit = cubic(start, leaving, alpha, arriving, beta, end);
        }
        return fit;
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
        for (double share : new double[] {0.1, 0.22, 0.5, 0.78, 0.9}) {
            if (fit.distanceTo(curve.beside(from + share * (to - from), distance)) > NEAR_MM) {
                return false;
            }
        }
        return true;
    }
}
