package org.hidewright.layout.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.hidewright.layout.task.Outline;

/**
 * A simple polygon, corners counter-clockwise, of which it is told without rounding what it shares with another one.
 *
 * <p>Two rings whose edges nowhere cross may still share their inside, by lying in each other or by touching. So each edge is parted
 * where corners of the other ring lie on it; each of its stretches is then wholly inside, outside or on the border of the
 * other, which its middle tells. Where edges neither cross nor touch, all go on where the first one is.
 */
final class Ring {
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private final double[] x;
    private final double[] y;
    private final int corners;

    final double minX;
    final double minY;
    final double maxX;
    final double maxY;

    /** An outline that may run either way. */
    Ring(Outline outline) {
        corners = outline.corners();
        x = new double[corners + 1];
        y = new double[corners + 1];
        boolean reverse = outline.clockwise();
        double lowX = Double.POSITIVE_INFINITY;
        double lowY = Double.POSITIVE_INFINITY;
        double highX = Double.NEGATIVE_INFINITY;
        double highY = Double.NEGATIVE_INFINITY;
        for (int corner = 0; corner < corners; corner++) {
            int from = reverse ? corners - 1 - corner : corner;
            x[corner] = outline.x(from);
            y[corner] = outline.y(from);
            lowX = Math.min(lowX, x[corner]);
            lowY = Math.min(lowY, y[corner]);
            highX = Math.max(highX, x[corner]);
            highY = Math.max(highY, y[corner]);
        }
        x[corners] = x[0];
        y[corners] = y[0];
        minX = lowX;
        minY = lowY;
        maxX = highX;
        maxY = highY;
    }

    /** Where a stretch of one ring lies by another: on its border either with the inside on the same side, or on the other. */
    private enum Lies {
        INSIDE,
        OUTSIDE,
        ALONG,
        AGAINST
    }

    /** Whether the insides of both share a point; to touch is not to share. */
    boolean sharesInsideWith(Ring other) {
        if (minX >= other.maxX || maxX <= other.minX || minY >= other.maxY || maxY <= other.minY) {
            return false;
        }
        if (crosses(other)) {
            return true;
        }
        Set<Lies> lies = stretches(other);
        return lies.contains(Lies.INSIDE)
                || lies.contains(Lies.ALONG)
                || other.stretches(this).contains(Lies.INSIDE);
    }

    /** Whether no point of this ring lies outside of the other. */
    boolean liesWithin(Ring other) {
        if (minX < other.minX || maxX > other.maxX || minY < other.minY || maxY > other.maxY || crosses(other)) {
            return false;
        }
        Set<Lies> lies = stretches(other);
        return !lies.contains(Lies.OUTSIDE)
                && !lies.contains(Lies.AGAINST)
                && !other.stretches(this).contains(Lies.INSIDE);
    }

    /** The least distance between the borders of both, rounded; nought where they cross. */
    double distanceTo(Ring other) {
        if (crosses(other)) {
            return 0;
        }
        // of two stretches that do not cross, the least distance begins at an end of one of them
        return Math.sqrt(Math.min(squareFromCorners(other), other.squareFromCorners(this)));
    }

    private double squareFromCorners(Ring other) {
        double least = Double.POSITIVE_INFINITY;
        for (int corner = 0; corner < corners; corner++) {
            for (int edge = 0; edge < other.corners; edge++) {
                double ax = other.x[edge];
                double ay = other.y[edge];
                double ex = other.x[edge + 1] - ax;
                double ey = other.y[edge + 1] - ay;
                double along = ((x[corner] - ax) * ex + (y[corner] - ay) * ey) / (ex * ex + ey * ey);
                along = Math.max(0, Math.min(1, along));
                double dx = x[corner] - ax - along * ex;
                double dy = y[corner] - ay - along * ey;
                least = Math.min(least, dx * dx + dy * dy);
            }
        }
        return least;
    }

    private boolean crosses(Ring other) {
        int[] near = other.edgesNear(this);
        for (int edge : edgesNear(other)) {
            for (int with : near) {
                if (edgesCross(edge, other, with)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The edges that reach into the box about another ring: all others have nothing to do with it. */
    private int[] edgesNear(Ring other) {
        int[] near = new int[corners];
        int count = 0;
        for (int edge = 0; edge < corners; edge++) {
            if (reaches(edge, other)) {
                near[count++] = edge;
            }
        }
        return Arrays.copyOf(near, count);
    }

    private boolean reaches(int edge, Ring other) {
        return Math.min(x[edge], x[edge + 1]) <= other.maxX
                && Math.max(x[edge], x[edge + 1]) >= other.minX
                && Math.min(y[edge], y[edge + 1]) <= other.maxY
                && Math.max(y[edge], y[edge + 1]) >= other.minY;
    }

    /** Whether the boxes about two edges have no point in common. */
    private boolean apart(int edge, Ring other, int with) {
        return Math.max(x[edge], x[edge + 1]) < Math.min(other.x[with], other.x[with + 1])
                || Math.max(other.x[with], other.x[with + 1]) < Math.min(x[edge], x[edge + 1])
                || Math.max(y[edge], y[edge + 1]) < Math.min(other.y[with], other.y[with + 1])
                || Math.max(other.y[with], other.y[with + 1]) < Math.min(y[edge], y[edge + 1]);
    }

    /** Whether two edges cross in a point that is an end of neither. */
    private boolean edgesCross(int edge, Ring other, int with) {
        double ax = x[edge];
        double ay = y[edge];
        double bx = x[edge + 1];
        double by = y[edge + 1];
        double cx = other.x[with];
        double cy = other.y[with];
        double dx = other.x[with + 1];
        double dy = other.y[with + 1];
        return !apart(edge, other, with)
                && Exactly.side(ax, ay, bx, by, cx, cy) * Exactly.side(ax, ay, bx, by, dx, dy) < 0
                && Exactly.side(cx, cy, dx, dy, ax, ay) * Exactly.side(cx, cy, dx, dy, bx, by) < 0;
    }

    /** Where the stretches of this ring lie by one that it does not cross. */
    private Set<Lies> stretches(Ring other) {
        int[] near = other.edgesNear(this);
        Set<Lies> seen = EnumSet.noneOf(Lies.class);
        Lies before = null; // where the end of the edge before lies, as far as that is known
        for (int edge = 0; edge < corners; edge++) {
            if (!reaches(edge, other)) {
                before = Lies.OUTSIDE;
                seen.add(before);
            } else if (touches(edge, other, near)) {
                for (BigDecimal[] middle : middles(edge, other, near)) {
                    seen.add(where(edge, middle, other));
                }
                before = null;
            } else {
                if (before == null) {
                    before = other.holds(x[edge], y[edge]) ? Lies.INSIDE : Lies.OUTSIDE;
                }
                seen.add(before);
            }
        }
        return seen;
    }

    /** Whether an edge has a point in common with the border of the other. */
    private boolean touches(int edge, Ring other, int[] near) {
        for (int with : near) {
            boolean meets = !apart(edge, other, with)
                    && (isOn(edge, other.x[with], other.y[with])
                            || other.isOn(with, x[edge], y[edge])
                            || other.isOn(with, x[edge + 1], y[edge + 1]));
            if (meets) {
                return true;
            }
        }
        return false;
    }

    private boolean isOn(int edge, double px, double py) {
        return px >= Math.min(x[edge], x[edge + 1])
                && px <= Math.max(x[edge], x[edge + 1])
                && py >= Math.min(y[edge], y[edge + 1])
                && py <= Math.max(y[edge], y[edge + 1])
                && Exactly.side(x[edge], y[edge], x[edge + 1], y[edge + 1], px, py) == 0;
    }

    /** Whether a point that is not on the border lies inside. */
    private boolean holds(double px, double py) {
        boolean inside = false;
        for (int edge = 0; edge < corners; edge++) {
            boolean endsAbove = y[edge + 1] > py;
            if (y[edge] > py != endsAbove) {
                boolean left = Exactly.side(x[edge], y[edge], x[edge + 1], y[edge + 1], px, py) > 0;
                inside ^= left == endsAbove;
            }
        }
        return inside;
    }

    private Lies where(int edge, BigDecimal[] middle, Ring other) {
        Spot spot = other.where(middle[0], middle[1]);
        if (spot.edge() < 0) {
            return spot.inside() ? Lies.INSIDE : Lies.OUTSIDE;
        }
        return sameWay(edge, other, spot.edge()) ? Lies.ALONG : Lies.AGAINST;
    }

    private boolean sameWay(int edge, Ring other, int with) {
        return (x[edge + 1] - x[edge]) * (other.x[with + 1] - other.x[with])
                        + (y[edge + 1] - y[edge]) * (other.y[with + 1] - other.y[with])
                > 0;
    }

    /** The middles of the stretches into which corners of the other ring part an edge. */
    private List<BigDecimal[]> middles(int edge, Ring other, int[] near) {
        double ax = x[edge];
        double ay = y[edge];
        double bx = x[edge + 1];
        double by = y[edge + 1];
        List<double[]> cuts = new ArrayList<>();
        cuts.add(new double[] {ax, ay});
        for (int with : near) {
            if (isOn(edge, other.x[with], other.y[with])) {
                cuts.add(new double[] {other.x[with], other.y[with]});
            }
        }
        cuts.add(new double[] {bx, by});
        // along the edge: by whichever coordinate changes; the signs are exact, for all points lie on one line
        double alongX = Math.signum(bx - ax);
        double alongY = Math.signum(by - ay);
        cuts.sort((one, two) -> {
            int byX = Double.compare(one[0] * alongX, two[0] * alongX);
            return alongX != 0 && byX != 0 ? byX : Double.compare(one[1] * alongY, two[1] * alongY);
        });
        List<BigDecimal[]> middles = new ArrayList<>();
        for (int cut = 0; cut + 1 < cuts.size(); cut++) {
            double[] from = cuts.get(cut);
            double[] to = cuts.get(cut + 1);
            if (from[0] != to[0] || from[1] != to[1]) {
                middles.add(new BigDecimal[] {middle(from[0], to[0]), middle(from[1], to[1])});
            }
        }
        return middles;
    }

    private static BigDecimal middle(double one, double other) {
        return new BigDecimal(one).add(new BigDecimal(other)).multiply(HALF);
    }

    /** Where a point lies: inside, or on the edge of this number, or neither. */
    private record Spot(boolean inside, int edge) {}

    private Spot where(BigDecimal px, BigDecimal py) {
        double nearX = px.doubleValue();
        double nearY = py.doubleValue();
        if (nearX < minX || nearX > maxX || nearY < minY || nearY > maxY) {
            return new Spot(false, -1);
        }
        boolean inside = false;
        for (int edge = 0; edge < corners; edge++) {
            BigDecimal ay = new BigDecimal(y[edge]);
            BigDecimal by = new BigDecimal(y[edge + 1]);
            boolean startsAbove = ay.compareTo(py) > 0;
            boolean endsAbove = by.compareTo(py) > 0;
            if (startsAbove == endsAbove && ay.compareTo(py) != 0 && by.compareTo(py) != 0) {
                continue;
            }
            BigDecimal ax = new BigDecimal(x[edge]);
            BigDecimal bx = new BigDecimal(x[edge + 1]);
            int side = Exactly.side(ax, ay, bx, by, px, py);
            if (side == 0
                    && px.compareTo(ax.min(bx)) >= 0
                    && px.compareTo(ax.max(bx)) <= 0
                    && py.compareTo(ay.min(by)) >= 0
                    && py.compareTo(ay.max(by)) <= 0) {
                return new Spot(false, edge);
            }
            if (startsAbove != endsAbove && side > 0 == endsAbove) {
                inside = !inside;
            }
        }
        return new Spot(inside, -1);
    }
}
