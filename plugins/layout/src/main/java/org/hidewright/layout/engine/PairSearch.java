package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.layout.task.Turning;

/**
 * Seeks how two parts lie closely together: from places drawn at random, the one is moved beside the other without overlapping it, so
 * long as the way around both becomes shorter. That way is told by how far both reach to all sides (Cauchy's formula), which takes no
 * hull. How many places are drawn and how far they are bettered is a matter of time: a pair takes some milliseconds.
 */
final class PairSearch {
    private static final int STARTS = 24;
    private static final int DRAWS = 30;

    /** So many ways are kept for each turn of the one to the other. */
    private static final int KEPT = 3;

    /** Ways that differ by less, as a share of the least extent, are one. */
    private static final double ALIKE = 0.05;

    private static final double FIRST_STEP = 0.25;
    private static final double LAST_STEP = 2e-3;
    private static final double FIRST_TURN = Math.toRadians(5);
    private static final int FREE_TURNS = 2;

    /** Decides where the way around stays the same, as it does for a part within the hull of the other. */
    private static final double NEARER = 0.1;

    private static final int SIDES = 24;
    private static final double[] SIDE_X = new double[SIDES];
    private static final double[] SIDE_Y = new double[SIDES];

    static {
        for (int side = 0; side < SIDES; side++) {
            SIDE_X[side] = Turning.cos(2 * Math.PI * side / SIDES);
            SIDE_Y[side] = Turning.sin(2 * Math.PI * side / SIDES);
        }
    }

    /**
     * One way in which a second part lies closely beside a first.
     *
     * @param turn the angle of the second less that of the first, in radians
     * @param dx where the second lies from the first, by their points of reference, as if the first lay at angle 0
     * @param gain how many times as large as the convex hull about both are the hulls of the two by themselves
     */
    record Way(double turn, double dx, double dy, double gain) {
        /** The first beside the second. */
        Way reversed() {
            double cos = Turning.cos(-turn);
            double sin = Turning.sin(-turn);
            return new Way(-turn, -cos * dx + sin * dy, -sin * dx - cos * dy, gain);
        }
    }

    private final Turned first;
    private final double[] reachOfFirst;
    private final Form second;
    private final Turned scratch;
    private final SplittableRandom random;

    PairSearch(Form first, Form second, SplittableRandom random) {
        this.first = Scratch.at(first, new Turned(first), first.turning.from(0));
        this.reachOfFirst = reach(this.first);
        this.second = second;
        this.scratch = new Turned(second);
        this.random = random;
    }

    /** The closest ways that differ, the closest first. */
    Way[] run() {
        List<Way> kept = new ArrayList<>();
        int turns = second.turning.stepwise() ? second.turning.windows() : FREE_TURNS;
        for (int turn = 0; turn < turns; turn++) {
            List<Way> ways = new ArrayList<>();
            for (int start = 0; start < STARTS; start++) {
                Way way = from(second.turning.stepwise() ? second.turning.from(turn) : second.turning.any(random));
                if (way != null) {
                    ways.add(way);
                }
            }
            ways.sort(Comparator.comparingDouble(Way::gain).reversed());
            int most = kept.size() + KEPT;
            for (Way way : ways) {
                if (kept.size() < most && kept.stream().noneMatch(other -> alike(way, other))) {
                    kept.add(way);
                }
            }
        }
        kept.sort(Comparator.comparingDouble(Way::gain).reversed());
        return kept.toArray(Way[]::new);
    }

    private boolean alike(Way one, Way other) {
        double apart = ALIKE * second.least;
        return Math.abs(one.dx - other.dx) < apart
                && Math.abs(one.dy - other.dy) < apart
                && Math.abs(Math.IEEEremainder(one.turn - other.turn, 2 * Math.PI)) < FIRST_TURN;
    }

    /** From a free place drawn at random as close as it comes; null when no free place was drawn. */
    private Way from(double angle) {
        Turned as = Scratch.at(second, scratch, angle);
        // beyond the boxes too: rectangles overlap wherever their boxes do
        double spare = second.least / 2;
        double width = first.maxX - first.minX + as.maxX - as.minX + 2 * spare;
        double height = first.maxY - first.minY + as.maxY - as.minY + 2 * spare;
        for (int draw = 0; draw < DRAWS; draw++) {
            double x = first.minX - as.maxX - spare + random.nextDouble() * width;
            double y = first.minY - as.maxY - spare + random.nextDouble() * height;
            if (free(as, x, y)) {
                return closer(as, x, y);
            }
        }
        return null;
    }

    private Way closer(Turned from, double fromX, double fromY) {
        Turned as = from;
        double x = fromX;
        double y = fromY;
        double[] reach = reach(as);
        double around = around(reach, x, y);
        double step = FIRST_STEP * second.least;
        double turn = FIRST_TURN;
        int axes = second.turning.stepwise() ? 8 : 10;
        int axis = random.nextInt(axes);
        int failed = 0;
        while (step > LAST_STEP * second.least) {
            boolean turns = axis >= 8;
            double dx = turns ? 0 : step * Math.rint(Turning.cos(axis * Math.PI / 4));
            double dy = turns ? 0 : step * Math.rint(Turning.sin(axis * Math.PI / 4));
            double angle = as.angle;
            double[] turned = reach;
            if (turns) {
                as = Scratch.at(second, scratch, second.turning.nearest(angle + (axis == 8 ? turn : -turn)));
                turned = reach(as);
            }
            double now = around(turned, x + dx, y + dy);
            if (now < around && free(as, x + dx, y + dy)) {
                around = now;
                reach = turned;
                x += dx;
                y += dy;
                failed = 0;
                continue;
            }
            as = Scratch.at(second, scratch, angle);
            axis = (axis + 1) % axes;
            failed++;
            if (failed == axes) {
                step /= 2;
                turn /= 2;
                failed = 0;
            }
        }
        return way(as, x, y);
    }

    private Way way(Turned as, double x, double y) {
        double cos = Turning.cos(-first.angle);
        double sin = Turning.sin(-first.angle);
        return new Way(
                as.angle - first.angle,
                cos * x - sin * y,
                sin * x + cos * y,
                (first.form.hullArea + second.hullArea) / hullOfBoth(as, x, y));
    }

    private boolean free(Turned as, double x, double y) {
        boolean near = as.minX + x <= first.maxX
                && as.maxX + x >= first.minX
                && as.minY + y <= first.maxY
                && as.maxY + y >= first.minY;
        return !near || !Meeting.overlaps(first, as, x, y);
    }

    private static double[] reach(Turned as) {
        double[] reach = new double[SIDES];
        Arrays.fill(reach, Double.NEGATIVE_INFINITY);
        for (int side = 0; side < SIDES; side++) {
            for (int corner = 0; corner < as.edges; corner++) {
                reach[side] = Math.max(reach[side], as.x[corner] * SIDE_X[side] + as.y[corner] * SIDE_Y[side]);
            }
        }
        return reach;
    }

    private double around(double[] reach, double x, double y) {
        double sum = NEARER * Math.hypot(x, y);
        for (int side = 0; side < SIDES; side++) {
            sum += Math.max(reachOfFirst[side], reach[side] + x * SIDE_X[side] + y * SIDE_Y[side]);
        }
        return sum;
    }

    private double hullOfBoth(Turned as, double x, double y) {
        double[] allX = Arrays.copyOf(first.x, first.edges + as.edges);
        double[] allY = Arrays.copyOf(first.y, first.edges + as.edges);
        for (int corner = 0; corner < as.edges; corner++) {
            allX[first.edges + corner] = as.x[corner] + x;
            allY[first.edges + corner] = as.y[corner] + y;
        }
        double[][] hull = Rings.hull(allX, allY);
        return Math.abs(Rings.area(hull[0], hull[1]));
    }
}
