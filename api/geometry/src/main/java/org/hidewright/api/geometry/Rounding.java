package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * Rounds corners between segments of any two kinds by an arc that leaves both without a bend.
 *
 * <p>The arc's centre is the radius away from both segments, on the inner side of the corner. It is looked for where the
 * lines beside both cross, and found exactly by Newton's method on the segments themselves.
 */
public final class Rounding {
    private Rounding() {}

    /**
     * One corner rounded.
     *
     * @param segment the segment that starts at the corner, as in {@link Spot#segment()} of {@link Curve#corners()}
     * @param radiusMm above 0
     * @return empty if there is no corner, or if the arc would not leave from the two segments of the corner
     */
    public static Optional<Curve> corner(Curve curve, int segment, double radiusMm) {
        List<Stretch> stretches = curve.stretches();
        int count = stretches.size();
        boolean atEnd = segment == 0 && !curve.isClosed();
        if (atEnd || Math.abs(curve.turnBefore(segment)) < 1e-9) {
            return Optional.empty();
        }
        if (count == 1) { // a drop: one segment whose two ends make the corner
            Stretch only = stretches.get(0);
            return corner(Curve.ofStretches(List.of(only.part(0, 0.5), only.part(0.5, 1)), true), 0, radiusMm);
        }
        int before = (segment + count - 1) % count;
        return Fit.of(stretches.get(before), stretches.get(segment), curve.turnBefore(segment), radiusMm)
                .map(fit -> {
                    List<Stretch> rounded = new ArrayList<>(stretches);
                    rounded.set(before, stretches.get(before).part(0, fit.leaves));
                    rounded.set(segment, stretches.get(segment).part(fit.arrives, 1));
                    rounded.add(segment == 0 ? count : segment, fit.arc());
                    return Curve.ofStretches(rounded, curve.isClosed());
                });
    }

    /**
     * All corners rounded by the same radius.
     *
     * @return empty if one of them cannot be
     */
    public static Optional<Curve> all(Curve curve, double radiusMm) {
        List<Integer> corners = new ArrayList<>();
        curve.corners().forEach(corner -> corners.add(corner.segment()));
        corners.sort(Collections.reverseOrder());
        Optional<Curve> rounded = Optional.of(curve);
        for (int corner : corners) {
            rounded = rounded.flatMap(so -> corner(so, corner, radiusMm));
        }
        return rounded;
    }

    private static final class Fit {
        private final Stretch in;
        private final Stretch out;
        private final double side;
        private double leaves;
        private double arrives;

        private Fit(Stretch in, Stretch out, double side, double leaves, double arrives) {
            this.in = in;
            this.out = out;
            this.side = side;
            this.leaves = leaves;
            this.arrives = arrives;
        }

        /** The fit that is nearest to the corner. */
        static Optional<Fit> of(Stretch in, Stretch out, double turn, double radiusMm) {
            double side = Math.copySign(radiusMm, turn);
            List<Fit> fits = new ArrayList<>();
            for (Stretch one : Parallel.beside(in, side)) {
                for (Stretch other : Parallel.beside(out, side)) {
                    for (Crossing crossing : Crossings.of(one, other)) {
                        Point centre = one.at(crossing.first());
                        fits.add(new Fit(in, out, side, in.nearest(centre), out.nearest(centre)));
                    }
                }
            }
            return fits.stream().filter(Fit::refined).max(Comparator.comparingDouble(fit -> fit.leaves));
        }

        private boolean refined() {
            for (int step = 0; step < 20; step++) {
                Vector gap = Vector.between(in.beside(leaves, side), out.beside(arrives, side));
                if (gap.length() < 1e-11) {
                    break;
                }
                Vector u = in.velocity(leaves).times(1 - in.curvature(leaves) * side);
                Vector v = out.velocity(arrives).times(1 - out.curvature(arrives) * side);
                double cross = u.cross(v);
                leaves = Stretch.inside(leaves + gap.cross(v) / cross);
                arrives = Stretch.inside(arrives + gap.cross(u) / cross);
            }
            return Stretch.within(Stretch.NOTHING_MM, in.beside(leaves, side), out.beside(arrives, side));
        }

        Stretch arc() {
            double sweep = in.tangent(leaves).turnTo(out.tangent(arrives), side);
            return Stretch.of(Segment.arc(in.at(leaves), in.beside(leaves, side), sweep));
        }
    }
}
