package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.Comparator;

/** Measures of a ring of corners whose first is not repeated. */
final class Rings {
    /** One and the cosine between two edges that turn back so sharply that their inner ones meet no further away. */
    private static final double SHARPEST = 1e-3;

    private Rings() {}

    /** Area, positive when the ring runs counter-clockwise. */
    static double area(double[] x, double[] y) {
        double twice = 0;
        for (int here = 0, before = x.length - 1; here < x.length; before = here++) {
            twice += (x[before] - x[0]) * (y[here] - y[0]) - (x[here] - x[0]) * (y[before] - y[0]);
        }
        return twice / 2;
    }

    /** Centre of area as x and y. */
    static double[] centroid(double[] x, double[] y) {
        double twice = 0;
        double sumX = 0;
        double sumY = 0;
        for (int here = 0, before = x.length - 1; here < x.length; before = here++) {
            double x0 = x[before] - x[0];
            double y0 = y[before] - y[0];
            double x1 = x[here] - x[0];
            double y1 = y[here] - y[0];
            double cross = x0 * y1 - x1 * y0;
            twice += cross;
            sumX += (x0 + x1) * cross;
            sumY += (y0 + y1) * cross;
        }
        return new double[] {x[0] + sumX / (3 * twice), y[0] + sumY / (3 * twice)};
    }

    /** A ring that runs counter-clockwise with every edge further in by a length that is small beside them all. */
    static double[][] inset(double[] x, double[] y, double by) {
        int corners = x.length;
        double[][] inset = new double[2][corners];
        for (int corner = 0; corner < corners; corner++) {
            int before = (corner + corners - 1) % corners;
            int after = (corner + 1) % corners;
            double length = Math.hypot(x[corner] - x[before], y[corner] - y[before]);
            double next = Math.hypot(x[after] - x[corner], y[after] - y[corner]);
            double nx = -(y[corner] - y[before]) / length;
            double ny = (x[corner] - x[before]) / length;
            double mx = -(y[after] - y[corner]) / next;
            double my = (x[after] - x[corner]) / next;
            double meeting = by / Math.max(SHARPEST, 1 + nx * mx + ny * my);
            inset[0][corner] = x[corner] + meeting * (nx + mx);
            inset[1][corner] = y[corner] + meeting * (ny + my);
        }
        return inset;
    }

    /** The convex hull, counter-clockwise (monotone chain, Andrew 1979). */
    static double[][] hull(double[] x, double[] y) {
        int corners = x.length;
        Integer[] order = new Integer[corners];
        Arrays.setAll(order, index -> index);
        Arrays.sort(
                order, Comparator.<Integer>comparingDouble(index -> x[index]).thenComparingDouble(index -> y[index]));
        int[] chain = new int[2 * corners + 1];
        int size = 0;
        for (int index = 0; index < corners; index++) {
            while (size >= 2 && turn(x, y, chain[size - 2], chain[size - 1], order[index]) <= 0) {
                size--;
            }
            chain[size++] = order[index];
        }
        int lower = size + 1;
        for (int index = corners - 2; index >= 0; index--) {
            while (size >= lower && turn(x, y, chain[size - 2], chain[size - 1], order[index]) <= 0) {
                size--;
            }
            chain[size++] = order[index];
        }
        int last = Math.max(1, size - 1);
        double[][] hull = new double[2][last];
        for (int index = 0; index < last; index++) {
            hull[0][index] = x[chain[index]];
            hull[1][index] = y[chain[index]];
        }
        return hull;
    }

    /** The greatest distance between two corners of a hull. */
    static double diameter(double[] x, double[] y) {
        double greatest = 0;
        for (int one = 0; one < x.length; one++) {
            for (int other = one + 1; other < x.length; other++) {
                double dx = x[one] - x[other];
                double dy = y[one] - y[other];
                greatest = Math.max(greatest, dx * dx + dy * dy);
            }
        }
        return Math.sqrt(greatest);
    }

    /** The lesser of width and height of the box about the ring. */
    static double leastExtent(double[] x, double[] y) {
        return Math.min(
                Arrays.stream(x).max().getAsDouble() - Arrays.stream(x).min().getAsDouble(),
                Arrays.stream(y).max().getAsDouble() - Arrays.stream(y).min().getAsDouble());
    }

    /** Whether a point lies within the ring (even-odd rule); points on it may count either way. */
    static boolean holds(double[] x, double[] y, int corners, double px, double py) {
        boolean within = false;
        for (int here = 0, before = corners - 1; here < corners; before = here++) {
            if (y[here] > py != y[before] > py
                    && px < (x[before] - x[here]) * (py - y[here]) / (y[before] - y[here]) + x[here]) {
                within = !within;
            }
        }
        return within;
    }

    /** Square of the distance of a point to the ring's nearest edge. */
    static double squareToEdges(double[] x, double[] y, double px, double py) {
        double least = Double.POSITIVE_INFINITY;
        for (int here = 0, before = x.length - 1; here < x.length; before = here++) {
            double ex = x[here] - x[before];
            double ey = y[here] - y[before];
            double square = ex * ex + ey * ey;
            double along = square == 0 ? 0 : ((px - x[before]) * ex + (py - y[before]) * ey) / square;
            along = Math.max(0, Math.min(1, along));
            double dx = px - x[before] - along * ex;
            double dy = py - y[before] - along * ey;
            least = Math.min(least, dx * dx + dy * dy);
        }
        return least;
    }

    private static double turn(double[] x, double[] y, int a, int b, int c) {
        return (x[b] - x[a]) * (y[c] - y[a]) - (x[c] - x[a]) * (y[b] - y[a]);
    }

    /** Which way the longest edge runs, in radians. */
    static double longestEdge(double[] x, double[] y) {
        double longest = -1;
        double way = 0;
        for (int from = x.length - 1, to = 0; to < x.length; from = to++) {
            double length = Math.hypot(x[to] - x[from], y[to] - y[from]);
            if (length > longest) {
                longest = length;
                way = Math.atan2(y[to] - y[from], x[to] - x[from]);
            }
        }
        return way;
    }
}
