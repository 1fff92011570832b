package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * The line beside a curve at a distance: a seam allowance, a stitch line at its margin.
 *
 * <p>Each segment has its own line beside it; outer corners are joined; all are cut where they cross; and what is nearer
 * to the curve than the distance falls away, loops and overrun ends included. Arcs and lines stay what they are.
 */
public final class Parallel {
    /** What is nearer than the distance by more than this falls away. */
    private static final double SLACK_MM = 1e-5;
    /** The point of a corner is at most this many distances from it. */
    private static final double LONGEST_POINT = 4;

    private final List<Curve> curves;
    private final double distance;
    private final Corner corner;
    private final List<Stretch> raw = new ArrayList<>();
    private final List<PointedCorner> pointed = new ArrayList<>();

    private Parallel(List<Curve> curves, double distanceMm, Corner corner) {
        this.curves = curves;
        this.distance = distanceMm;
        this.corner = Objects.requireNonNull(corner, "corner");
    }

    /**
     * The lines beside one curve.
     *
     * @param distanceMm positive to the left, that is inwards of an outline that runs counter-clockwise; 0 gives the curve
     * @return none if there is no room, several where a narrow place parts them; each runs as the curve does
     */
    public static List<Curve> of(Curve curve, double distanceMm, Corner corner) {
        return of(List.of(curve), distanceMm, corner);
    }

    /** The lines beside several curves, where what is too near to any of them falls away. */
    static List<Curve> of(List<Curve> curves, double distanceMm, Corner corner) {
        if (distanceMm == 0) {
            return curves;
        }
        Parallel parallel = new Parallel(curves, distanceMm, corner);
        curves.forEach(parallel::addBeside);
        return parallel.trimmed();
    }

    private void addBeside(Curve curve) {
        List<Stretch> stretches = curve.stretches();
        for (int i = 0; i < stretches.size(); i++) {
            if (i > 0 || curve.isClosed()) {
                join(stretches.get(i), curve.turnBefore(i));
            }
            raw.addAll(beside(stretches.get(i), distance));
        }
    }

    /** The line beside one segment, as far as it runs forward. */
    static List<Stretch> beside(Stretch stretch, double distance) {
        if (stretch instanceof CubicStretch cubic) {
            return CubicBeside.of(cubic, distance);
        }
        if (stretch instanceof ArcStretch arc) {
            double radius =
                    arc.arc().radius() - distance * Math.signum(arc.arc().sweep());
            if (radius < Stretch.NOTHING_MM) {
                return List.of();
            }
            return List.of(Stretch.of(Segment.arc(
                    arc.beside(0, distance), arc.arc().centre(), arc.arc().sweep())));
        }
        return List.of(Stretch.of(Segment.line(stretch.beside(0, distance), stretch.beside(1, distance))));
    }

    /** On the outer side of a corner the two lines beside do not meet. */
    private void join(Stretch next, double turn) {
        if (Math.signum(turn) == Math.signum(distance)) {
            return;
        }
        Vector out = next.tangent(0);
        Point end = next.beside(0, distance);
        Vector in = new Vector(
                out.x() * Math.cos(turn) + out.y() * Math.sin(turn),
                out.y() * Math.cos(turn) - out.x() * Math.sin(turn));
        Point start = in.left().times(distance).from(next.start());
        if (Stretch.within(10 * Crossings.SAME_MM, start, end)) {
            return;
        }
        double reach = 1 / Math.cos(turn / 2);
        if (corner == Corner.POINTED && reach < LONGEST_POINT) {
            Point point =
                    in.times(Math.abs(distance) * Math.tan(Math.abs(turn) / 2)).from(start);
            raw.add(Stretch.of(Segment.line(start, point)));
            raw.add(Stretch.of(Segment.line(point, end)));
            pointed.add(new PointedCorner(next.start(), in, out, distance));
        } else {
            raw.add(Stretch.of(Segment.arc(start, next.start(), turn)));
        }
    }

    /** The room between a corner and its point, in which no other line beside may run. */
    private record PointedCorner(Point place, Vector in, Vector out, double distance) {
        boolean covers(Point other) {
            Vector to = Vector.between(place, other);
            double ahead = Math.min(to.dot(in), -to.dot(out));
            double side = Math.signum(distance);
            double beside = Math.max(side * to.dot(in.left()), side * to.dot(out.left()));
            return ahead > 0 && beside < Math.abs(distance) - SLACK_MM;
        }
    }

    private List<Curve> trimmed() {
        List<Stretch> kept = new ArrayList<>();
        for (Stretch piece : Pieces.cut(raw)) {
            if (farEnough(piece.at(0.5)) && farEnough(piece.at(0.3)) && farEnough(piece.at(0.7))) {
                kept.add(piece);
            }
        }
        return curves.get(0).isClosed() ? Pieces.rings(kept) : Pieces.lines(kept);
    }

    private boolean farEnough(Point place) {
        for (Curve curve : curves) {
            if (curve.distanceTo(place) < Math.abs(distance) - SLACK_MM) {
                return false;
            }
        }
        return pointed.stream().noneMatch(covering -> covering.covers(place));
    }
}
