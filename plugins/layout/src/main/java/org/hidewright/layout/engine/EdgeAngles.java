package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hidewright.layout.task.Turning;

/**
 * Angles for a part: any at which it may lie and, of a part that turns through a range, more often one at which edges of it run
 * along an edge of an upright sheet. Of all angles these are few, and most parts of a dense layout lie so.
 */
final class EdgeAngles {
    private static final double QUARTER = Math.PI / 2;

    /** Edges whose ways differ by no more, in radians, count as running the same way. */
    private static final double SAME = 1e-3;

    /** One draw of so many is of all angles; tried on open instances. */
    private static final int ANYWAY = 4;

    private final Turning turning;

    /** The ways edges run as drawn, in radians within a quarter of a turn, and how likely each and those before it are taken. */
    private final double[] way;

    private final double[] upTo;

    /**
     * @param x corners of the part, in their order
     */
    EdgeAngles(Turning turning, double[] x, double[] y) {
        this.turning = turning;
        // where there are only single angles, edges have no say
        int corners = turning.stepwise() ? 0 : x.length;
        double[] ways = new double[corners];
        double[] length = new double[corners];
        int count = 0;
        for (int from = corners - 1, to = 0; to < corners; from = to++) {
            double dx = x[to] - x[from];
            double dy = y[to] - y[from];
            double run = Math.atan2(dy, dx);
            int like = 0;
            while (like < count && Math.abs(Math.IEEEremainder(run - ways[like], QUARTER)) > SAME) {
                like++;
            }
            ways[like] = like == count ? run : ways[like];
            length[like] += Math.hypot(dx, dy);
            count = Math.max(count, like + 1);
        }
        this.way = Arrays.copyOf(ways, count);
        this.upTo = new double[count];
        double sum = 0;
        for (int like = 0; like < count; like++) {
            sum += length[like] * length[like];
            upTo[like] = sum;
        }
    }

    /** An angle by chance, in radians, mostly {@link #edgewise}. */
    double any(SplittableRandom random) {
        return turning.stepwise() || random.nextInt(ANYWAY) == 0 ? turning.any(random) : edgewise(random);
    }

    /**
     * An angle by chance, in radians, at which edges run along the sheet's; the longer the edges that run one way, the rather they. Where
     * the part may not lie so, any.
     */
    double edgewise(SplittableRandom random) {
        if (turning.stepwise()) {
            return turning.any(random);
        }
        double at = random.nextDouble() * upTo[upTo.length - 1];
        int edge = 0;
        while (upTo[edge] < at) {
            edge++;
        }
        double angle = random.nextInt(4) * QUARTER - way[edge];
        return turning.allows(angle) ? angle : turning.any(random);
    }
}
