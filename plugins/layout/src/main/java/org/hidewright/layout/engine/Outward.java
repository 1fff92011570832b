package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * A ring with fewer corners that holds the given one: corners that point inwards are left out, and short edges between two that
 * point outwards give way to the longer edges beside them, those first that add least area.
 */
final class Outward {
    private static final int FEWEST = 4;

    /** Of a corner that has gone, what it was is of no meaning. */
    private final double[] x;

    private final double[] y;
    private final int[] next;
    private final int[] before;

    /** What each corner would be changed to; null where it can be by nothing, or has gone. */
    private final Change[] changes;

    /** Of two that add the same, the later corner goes first. */
    private final PriorityQueue<Change> least = new PriorityQueue<>(Comparator.comparingDouble(Change::added)
            .thenComparing(Comparator.comparingInt(Change::corner).reversed()));

    private int size;

    private Outward(double[] ringX, double[] ringY) {
        size = ringX.length;
        x = ringX.clone();
        y = ringY.clone();
        next = new int[size];
        before = new int[size];
        changes = new Change[size];
        for (int corner = 0; corner < size; corner++) {
            next[corner] = (corner + 1) % size;
            before[corner] = (corner + size - 1) % size;
        }
        for (int corner = 0; corner < size; corner++) {
            look(corner);
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
        while (ring.size > FEWEST) {
            Change least = ring.least(allowed);
            if (least == null) {
                break;
            }
            allowed -= least.added();
            ring.change(least);
        }
        return ring.corners();
    }

    /** From the first of those that are left. */
    private double[][] corners() {
        int corner = 0;
        while (next[before[corner]] != corner) {
            corner++;
        }
        double[][] corners = new double[2][size];
        for (int at = 0; at < size; at++) {
            corners[0][at] = x[corner];
            corners[1][at] = y[corner];
            corner = next[corner];
        }
        return corners;
    }

    /** The change that adds least of those that are free; those that are not may be so later. */
    private Change least(double allowed) {
        List<Change> barred = new ArrayList<>();
        Change found = null;
        while (found == null && !least.isEmpty() && least.peek().added() <= allowed) {
            Change change = least.poll();
            if (changes[change.corner()] == change) {
                if (free(change)) {
                    found = change;
                } else {
                    barred.add(change);
                }
            }
        }
        least.addAll(barred);
        return found;
    }

    private void look(int corner) {
        Change change = turn(before[corner], corner, next[corner]) <= 0 ? withoutCorner(corner) : withoutEdge(corner);
        changes[corner] = change;
        if (change != null) {
            least.add(change);
        }
    }

    private Change withoutCorner(int corner) {
        return new Change(corner, null, -turn(before[corner], corner, next[corner]) / 2);
    }

    /** The edge from a corner to the next goes, and those beside it are drawn out until they meet. */
    private Change withoutEdge(int corner) {
        int a = before[corner];
        int c = next[corner];
        int d = next[c];
        double abX = x[corner] - x[a];
        double abY = y[corner] - y[a];
        double dcX = x[c] - x[d];
        double dcY = y[c] - y[d];
        double cross = abX * dcY - abY * dcX;
        if (turn(corner, c, d) <= 0 || cross >= 0) {
            return null;
        }
        double along = ((x[d] - x[corner]) * dcY - (y[d] - y[corner]) * dcX) / cross;
        double meetsX = x[corner] + along * abX;
        double meetsY = y[corner] + along * abY;
        // beyond both ends, else the edges do not meet outside
        double beyond = (meetsX - x[c]) * dcX + (meetsY - y[c]) * dcY;
        if (along < 0 || beyond < 0) {
            return null;
        }
        double added = Math.abs(turn(x[corner], y[corner], meetsX, meetsY, x[c], y[c])) / 2;
        return new Change(corner, new double[] {meetsX, meetsY}, added);
    }

    /** Whether what the ring gains holds no other corner of it and crosses no other edge. */
    private boolean free(Change change) {
        boolean edge = change.instead() != null;
        int from = edge ? change.corner() : before[change.corner()];
        int to = next[change.corner()];
        double tipX = edge ? change.instead()[0] : x[change.corner()];
        double tipY = edge ? change.instead()[1] : y[change.corner()];
        // of the corners that are there, all but those of the change and the edges at them
        for (int other = next[to]; other != from; other = next[other]) {
            if (holds(from, tipX, tipY, to, other)) {
                return false;
            }
            int after = next[other];
            if (after == from) {
                continue;
            }
            boolean crossed = edge
                    ? crosses(other, after, x[from], y[from], tipX, tipY)
                            || crosses(other, after, tipX, tipY, x[to], y[to])
                    : crosses(other, after, x[from], y[from], x[to], y[to]);
            if (crossed) {
                return false;
            }
        }
        return true;
    }

    private boolean holds(int a, double bx, double by, int c, int point) {
        double one = turn(x[a], y[a], bx, by, x[point], y[point]);
        double two = turn(bx, by, x[c], y[c], x[point], y[point]);
        double three = turn(c, a, point);
        return one >= 0 && two >= 0 && three >= 0 || one <= 0 && two <= 0 && three <= 0;
    }

    private boolean crosses(int a, int b, double cx, double cy, double dx, double dy) {
        return turn(x[a], y[a], x[b], y[b], cx, cy) * turn(x[a], y[a], x[b], y[b], dx, dy) <= 0
                && turn(cx, cy, dx, dy, x[a], y[a]) * turn(cx, cy, dx, dy, x[b], y[b]) <= 0;
    }

    /** Makes it, and looks anew at the corners that see it. */
    private void change(Change change) {
        int corner = change.corner();
        int last = before[corner];
        int gone = corner;
        if (change.instead() != null) {
            x[corner] = change.instead()[0];
            y[corner] = change.instead()[1];
            gone = next[corner];
            last = corner;
            look(before[before[corner]]);
        }
        next[last] = next[gone];
        before[next[gone]] = last;
        changes[gone] = null;
        size--;
        look(before[last]);
        look(last);
        look(next[last]);
    }

    private double turn(int a, int b, int c) {
        return turn(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    private static double turn(double ax, double ay, double bx, double by, double cx, double cy) {
        return (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
    }
}
