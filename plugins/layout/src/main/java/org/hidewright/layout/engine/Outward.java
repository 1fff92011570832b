package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;

/**
 * A ring with fewer corners that holds the given one: corners that point inwards are left out, and short edges between two that
 * point outwards give way to the longer edges beside them, those first that add least area.
 */
final class Outward {
    private final List<double[]> corners = new ArrayList<>();

    private Outward(double[] x, double[] y) {
        for (int corner = 0; corner < x.length; corner++) {
            corners.add(new double[] {x[corner], y[corner]});
        }
    }

    /** One corner, or the edge from it to the next, that may go; and what comes in its place, if anything. */
    private record Change(int corner, double[] instead, double added) {}

    /**
     * @param x corners counter-clockwise, the first not repeated
     * @param share by how much of its area the ring may grow at most
     * @return x and y
     */
    static double[][] of(double[] x, double[] y, double share) {
        Outward ring = new Outward(x, y);
        double allowed = share * Math.abs(Rings.area(x, y));
        while (ring.corners.size() > 4) {
            Change least = ring.least(allowed);
            if (least == null) {
                break;
            }
            allowed -= least.added();
            ring.change(least);
        }
        double[][] result = new double[2][ring.corners.size()];
        for (int corner = 0; corner < ring.corners.size(); corner++) {
            result[0][corner] = ring.corners.get(corner)[0];
            result[1][corner] = ring.corners.get(corner)[1];
        }
        return result;
    }

    private double[] at(int corner) {
        return corners.get(Math.floorMod(corner, corners.size()));
    }

    private Change least(double allowed) {
        Change least = null;
        for (int corner = 0; corner < corners.size(); corner++) {
            double bound = least == null ? allowed : least.added();
            Change change =
                    turn(at(corner - 1), at(corner), at(corner + 1)) <= 0 ? withoutCorner(corner) : withoutEdge(corner);
            if (change != null && change.added() <= bound && free(change)) {
                least = change;
            }
        }
        return least;
    }

    private Change withoutCorner(int corner) {
        return new Change(corner, null, -turn(at(corner - 1), at(corner), at(corner + 1)) / 2);
    }

    /** The edge from a corner to the next goes, and those beside it are drawn out until they meet. */
    private Change withoutEdge(int corner) {
        double[] a = at(corner - 1);
        double[] b = at(corner);
        double[] c = at(corner + 1);
        double[] d = at(corner + 2);
        double abX = b[0] - a[0];
        double abY = b[1] - a[1];
        double dcX = c[0] - d[0];
        double dcY = c[1] - d[1];
        double cross = abX * dcY - abY * dcX;
        if (turn(b, c, d) <= 0 || cross >= 0) {
            return null;
        }
        double along = ((d[0] - b[0]) * dcY - (d[1] - b[1]) * dcX) / cross;
        double[] meets = {b[0] + along * abX, b[1] + along * abY};
        // beyond both ends, else the edges do not meet outside
        double beyond = (meets[0] - c[0]) * dcX + (meets[1] - c[1]) * dcY;
        if (along < 0 || beyond < 0) {
            return null;
        }
        return new Change(corner, meets, Math.abs(turn(b, meets, c)) / 2);
    }

    /** Whether what the ring gains holds no other corner of it and crosses no other edge. */
    private boolean free(Change change) {
        int corner = change.corner();
        boolean edge = change.instead() != null;
        double[] from = edge ? at(corner) : at(corner - 1);
        double[] tip = edge ? change.instead() : at(corner);
        double[] to = at(corner + 1);
        int size = corners.size();
        for (int other = 0; other < size; other++) {
            double[] point = corners.get(other);
            boolean own = point == from || point == to || point == tip;
            if (!own && holds(from, tip, to, point)) {
                return false;
            }
            double[] next = at(other + 1);
            if (own || next == from || next == to || next == tip) {
                continue;
            }
            if (edge && (crosses(point, next, from, tip) || crosses(point, next, tip, to))
                    || !edge && crosses(point, next, from, to)) {
                return false;
            }
        }
        return true;
    }

    private static boolean holds(double[] a, double[] b, double[] c, double[] point) {
        double one = turn(a, b, point);
        double two = turn(b, c, point);
        double three = turn(c, a, point);
        return one >= 0 && two >= 0 && three >= 0 || one <= 0 && two <= 0 && three <= 0;
    }

    private static boolean crosses(double[] a, double[] b, double[] c, double[] d) {
        return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0;
    }

    private void change(Change change) {
        int corner = change.corner();
        if (change.instead() == null) {
            corners.remove(corner);
        } else {
            corners.set(corner, change.instead());
            corners.remove((corner + 1) % corners.size());
        }
    }

    private static double turn(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    }
}
