package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * Circles within a shape that stand for it: the first is the largest inscribed circle, each further one the largest
 * within the shape and outside of those before it. Found by halving squares, most promising first (the way to a pole of
 * inaccessibility that Garcia-Castellanos and Lombardo, 2007, ask for, with the bound of a square by its half diagonal).
 */
record Poles(double[] x, double[] y, double[] radius) {
    /** As published: 64 at most, 16 once four fifths of the area are covered, 8 once nine tenths are. */
    private static final int MOST = 64;

    private static final int MANY = 16;
    private static final int FEW = 8;
    private static final double MOSTLY = 0.8;
    private static final double NEARLY = 0.9;

    static Poles within(double[] x, double[] y) {
        return within(x, y, MOST);
    }

    static Poles within(double[] ringX, double[] ringY, int most) {
        double area = Math.abs(Rings.area(ringX, ringY));
        double[] x = new double[most];
        double[] y = new double[most];
        double[] radius = new double[most];
        double covered = 0;
        int size = 0;
        while (size < most) {
            boolean enough = size >= MANY && covered >= MOSTLY * area || size >= FEW && covered >= NEARLY * area;
            if (enough) {
                break;
            }
            double[] next = next(ringX, ringY, x, y, radius, size);
            if (size > 0 && next[2] < 0.01 * radius[0]) {
                break;
            }
            x[size] = next[0];
            y[size] = next[1];
            radius[size] = next[2];
            covered += Math.PI * next[2] * next[2];
            size++;
        }
        return new Poles(Arrays.copyOf(x, size), Arrays.copyOf(y, size), Arrays.copyOf(radius, size));
    }

    private record Square(double x, double y, double half, double distance) {
        double bound() {
            return distance + half * Math.sqrt(2);
        }
    }

    private static double[] next(double[] ringX, double[] ringY, double[] x, double[] y, double[] radius, int size) {
        double minX = Arrays.stream(ringX).min().getAsDouble();
        double maxX = Arrays.stream(ringX).max().getAsDouble();
        double minY = Arrays.stream(ringY).min().getAsDouble();
        double maxY = Arrays.stream(ringY).max().getAsDouble();
        double side = Math.min(maxX - minX, maxY - minY);
        double precision = Math.max(side / 200, Math.max(maxX - minX, maxY - minY) / 2000);
        PriorityQueue<Square> squares =
                new PriorityQueue<>(Comparator.comparingDouble(Square::bound).reversed());
        double half = side / 2;
        Square best = null;
        for (double cx = minX + half; cx - half < maxX; cx += side) {
            for (double cy = minY + half; cy - half < maxY; cy += side) {
                Square square = square(cx, cy, half, ringX, ringY, x, y, radius, size);
                squares.add(square);
                if (best == null || square.distance() > best.distance()) {
                    best = square;
                }
            }
        }
        while (!squares.isEmpty() && squares.peek().bound() > best.distance() + precision) {
            Square square = squares.poll();
            double quarter = square.half() / 2;
            for (int corner = 0; corner < 4; corner++) {
                double cx = square.x() + ((corner & 1) == 0 ? -quarter : quarter);
                double cy = square.y() + ((corner & 2) == 0 ? -quarter : quarter);
                Square part = square(cx, cy, quarter, ringX, ringY, x, y, radius, size);
                if (part.distance() > best.distance()) {
                    best = part;
                }
                if (part.bound() > best.distance() + precision) {
                    squares.add(part);
                }
            }
        }
        return new double[] {best.x(), best.y(), Math.max(best.distance(), 0)};
    }

    private static Square square(
            double cx,
            double cy,
            double half,
            double[] ringX,
            double[] ringY,
            double[] x,
            double[] y,
            double[] radius,
            int size) {
        double distance = Math.sqrt(Rings.squareToEdges(ringX, ringY, cx, cy));
        if (!Rings.holds(ringX, ringY, ringX.length, cx, cy)) {
            distance = -distance;
        }
        for (int pole = 0; pole < size; pole++) {
            distance = Math.min(distance, Math.hypot(cx - x[pole], cy - y[pole]) - radius[pole]);
        }
        return new Square(cx, cy, half, distance);
    }
}
