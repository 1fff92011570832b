package org.hidewright.api.geometry;

import java.util.Comparator;
import java.util.List;
import org.hidewright.api.drawing.Point;

/** On which side of some outlines a place lies, judged at the nearest of their spots. */
final class Sides {
    private Sides() {}

    /** Whether the place is to the left of the line it is nearest to; at a corner both of its sides count. */
    static boolean isLeftOf(List<Curve> curves, Point place) {
        Curve nearest = nearest(curves, place);
        Spot spot = nearest.nearest(place);
        List<Stretch> stretches = nearest.stretches();
        Stretch here = stretches.get(spot.segment());
        double t = here.nearest(place);
        Vector out = Vector.between(spot.point(), place);
        boolean atStart = Stretch.within(Stretch.NOTHING_MM, here.at(t), here.start());
        boolean atEnd = Stretch.within(Stretch.NOTHING_MM, here.at(t), here.end());
        if (!atStart && !atEnd) {
            return here.tangent(t).cross(out) > 0;
        }
        int count = stretches.size();
        int before = atStart ? (spot.segment() + count - 1) % count : spot.segment();
        int after = atStart ? spot.segment() : (spot.segment() + 1) % count;
        Vector in = stretches.get(before).tangent(1);
        Vector on = stretches.get(after).tangent(0);
        double leftOfIn = in.cross(out);
        double leftOfOn = on.cross(out);
        return (in.cross(on) > 0 ? Math.min(leftOfIn, leftOfOn) : Math.max(leftOfIn, leftOfOn)) > 0;
    }

    /** The curve that comes nearest to a place, the first of equals. */
    static Curve nearest(List<Curve> curves, Point place) {
        return curves.stream()
                .min(Comparator.comparingDouble(curve -> curve.distanceTo(place)))
                .orElseThrow();
    }
}
