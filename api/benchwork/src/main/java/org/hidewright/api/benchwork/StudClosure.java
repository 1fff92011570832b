package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.Fitting;

/** A stud on what lies under; the top has a hole for its neck and a slit towards the end, cut out as one. */
record StudClosure(double post, double neck, double slit) implements Closure {
    /** As wide as a knife leaves it: a slit has no width, a cut-out must have some. */
    private static final double HALF_SLIT_MM = 0.2;

    @Override
    public Fastened fasten(
            String id, String name, Piece top, Point onTop, double towardsEdge, Piece under, Point onUnder)
            throws NoRoom {
        top.window(id + "-hole", keyhole(onTop).moved(Motion.turn(onTop, towardsEdge)));
        return Fastened.of(List.of(Fitting.of(id, name, List.of(under.hole(id, onUnder, post)))));
    }

    /** The slit runs along the x axis. */
    private Curve keyhole(Point middle) {
        double opens = Math.asin(Math.min(1, 2 * HALF_SLIT_MM / neck));
        Path.Builder path = Path.from(middle.towards(opens, neck / 2));
        path.arcAround(middle, 2 * (Math.PI - opens));
        path.lineTo(middle.plus(slit, -HALF_SLIT_MM)).lineTo(middle.plus(slit, HALF_SLIT_MM));
        return Curve.of(path.closed(Role.INNER_CUT));
    }

    @Override
    public double leastToEnd() {
        return slit + 2 * neck;
    }
}
