package org.hidewright.core.jobcard;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;

/**
 * A cut-out that is punched first: a round hole and a slit that leads out of it, as the head of a stud needs.
 *
 * @param hole middle of what is punched
 * @param diameter of the punch, in millimetres
 * @param reach from the middle of the hole to the end of the slit, in millimetres
 */
record Keyhole(Point hole, double diameter, double reach) {
    /** The end of a slot is half a circle; what is punched is more of one, but for where the slit leaves it. */
    private static final double LEAST_SWEEP_RAD = 1.1 * Math.PI;
    /** Of two arcs of one circle. */
    private static final double SAME_MM = 1e-6;

    /** Read from the outline: a part keeps its cut-outs as lines. */
    static Optional<Keyhole> in(Path cutOut) {
        List<Segment.Arc> arcs = cutOut.segments().stream()
                .filter(Segment.Arc.class::isInstance)
                .map(Segment.Arc.class::cast)
                .toList();
        return arcs.stream()
                .filter(arc -> sweepAround(arc, arcs) >= LEAST_SWEEP_RAD)
                .findFirst()
                .map(arc -> new Keyhole(arc.centre(), 2 * arc.radius(), reach(arc.centre(), cutOut)))
                .filter(found -> found.reach() > found.diameter() / 2 + SAME_MM);
    }

    private static double sweepAround(Segment.Arc one, List<Segment.Arc> arcs) {
        return arcs.stream()
                .filter(arc -> arc.centre().distanceTo(one.centre()) <= SAME_MM)
                .filter(arc -> Math.abs(arc.radius() - one.radius()) <= SAME_MM)
                .mapToDouble(arc -> Math.abs(arc.sweep()))
                .sum();
    }

    private static double reach(Point middle, Path cutOut) {
        return cutOut.segments().stream()
                .mapToDouble(segment -> segment.end().distanceTo(middle))
                .max()
                .orElse(0);
    }
}
