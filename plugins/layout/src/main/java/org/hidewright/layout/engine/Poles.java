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

    /** How far a point lies within what poles are sought for; less than nought outside. */
    @FunctionalInterface
    private interface Within {
        double at(double x, double y);
    }

    static Poles within(double[] x, double[] y) {
        return within(x, y, MOST);
    }

    static Poles within(double[] ringX, double[] ringY, int most) {
        Within within = (x, y) -> {
            double distance = Math.sqrt(Rings.squareToEdges(ringX, ringY, x, y));
            return Rings.holds(ringX, ringY, ringX.length, x, y) ? distance : -distance;
        };
        return find(within, Box.about(ringX, ringY), Math.abs(Rings.area(ringX, ringY)), most);
    }

    /**
     * Poles of what lies around a ring, as far as the margin: they stand for where no leather is.
     *
     * @param margin how far beyond the box about the ring
     */
    static Poles around(double[] ringX, double[] ringY, double margin, int most) {
        Box box = Box.about(ringX, ringY).grown(margin);
        Within within = (x, y) -> {
            if (Rings.holds(ringX, ringY, ringX.length, x, y)) {
                return -Math.sqrt(Rings.squareToEdges(ringX, ringY, x, y));
            }
            double toFrame =
                    Math.min(Math.min(x - box.minX(), box.maxX() - x), Math.min(y - box.minY(), box.maxY() - y));
            return Math.min(toFrame, Math.sqrt(Rings.squareToEdges(ringX, ringY, x, y)));
        };
        return find(within, box, box.area() - Math.abs(Rings.area(ringX, ringY)), most);
    }

    private record Box(double minX, double minY, double maxX, double maxY) {
        static Box about(double[] x, double[] y) {
            return new Box(
                    Arrays.stream(x).min().getAsDouble(),
                    Arrays.stream(y).min().getAsDouble(),
                    Arrays.stream(x).max().getAsDouble(),
                    Arrays.stream(y).max().getAsDouble());
        }

        Box grown(double by) {
            return new Box(minX - by, minY - by, maxX + by, maxY + by);
        }

        double width() {
            return maxX - minX;
        }

        double height() {
            return maxY - minY;
        }

        double area() {
            return width() * height();
        }
    }

    private static Poles find(Within within, Box box, double area, int most) {
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
            int before = size;
            Within beside = (px, py) -> {
                double distance = Double.POSITIVE_INFINITY;
                for (int pole = 0; pole < before; pole++) {
                    distance = Math.min(distance, Math.hypot(px - x[pole], py - y[pole]) - radius[pole]);
                }
                return distance;
            };
            Square next = deepest(within, beside, box);
            if (next.distance() <= (size > 0 ? 0.01 * radius[0] : 0)) {
                break;
            }
            x[size] = next.x();
            y[size] = next.y();
            radius[size] = next.distance();
            covered += Math.PI * next.distance() * next.distance();
            size++;
        }
        return new Poles(Arrays.copyOf(x, size), Arrays.copyOf(y, size), Arrays.copyOf(radius, size));
    }

    private record Square(double x, double y, double half, double distance) {
        double bound() {
            return distance + half * Math.sqrt(2);
        }
    }

    /**
     * The point farthest within and from the poles there are, to a two-hundredth of the box's lesser side. Poles are asked first: most
     * squares are told by them, and edges are many.
     */
    private static Square deepest(Within within, Within beside, Box box) {
        double side = Math.min(box.width(), box.height());
        double precision = Math.max(side / 200, Math.max(box.width(), box.height()) / 2000);
        PriorityQueue<Square> squares =
                new PriorityQueue<>(Comparator.comparingDouble(Square::bound).reversed());
        double half = side / 2;
        Square best = null;
        for (double cx = box.minX() + half; cx - half < box.maxX(); cx += side) {
            for (double cy = box.minY() + half; cy - half < box.maxY(); cy += side) {
                Square square = new Square(cx, cy, half, Math.min(beside.at(cx, cy), within.at(cx, cy)));
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
                double fromPoles = beside.at(cx, cy);
                boolean neitherBetterNorLeadingThere = fromPoles <= best.distance()
                        && new Square(cx, cy, quarter, fromPoles).bound() <= best.distance() + precision;
                if (neitherBetterNorLeadingThere) {
                    continue;
                }
                Square part = new Square(cx, cy, quarter, Math.min(fromPoles, within.at(cx, cy)));
                if (part.distance() > best.distance()) {
                    best = part;
                }
                if (part.bound() > best.distance() + precision) {
                    squares.add(part);
                }
            }
        }
        return best;
    }
}
