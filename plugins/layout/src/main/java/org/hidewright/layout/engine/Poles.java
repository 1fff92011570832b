package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
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

        double lesser() {
            return Math.min(maxX - minX, maxY - minY);
        }

        double greater() {
            return Math.max(maxX - minX, maxY - minY);
        }

        double area() {
            return lesser() * greater();
        }
    }

    private static Poles find(Within within, Box box, double area, int most) {
        double[] x = new double[most];
        double[] y = new double[most];
        double[] radius = new double[most];
        List<Square> squares = squares(within, box);
        double precision = Math.max(box.lesser() / 200, box.greater() / 2000);
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
                    double dx = Math.abs(px - x[pole]);
                    double dy = Math.abs(py - y[pole]);
                    // most poles are too far already along one axis
                    if (Math.max(dx, dy) - radius[pole] < distance) {
                        distance = Math.min(distance, Math.hypot(dx, dy) - radius[pole]);
                    }
                }
                return distance;
            };
            Middle next = deepest(squares, beside, precision);
            if (next.distance() <= (size > 0 ? 0.01 * radius[0] : 0)) {
                break;
            }
            x[size] = next.square().x;
            y[size] = next.square().y;
            radius[size] = next.distance();
            covered += Math.PI * next.distance() * next.distance();
            size++;
        }
        return new Poles(Arrays.copyOf(x, size), Arrays.copyOf(y, size), Arrays.copyOf(radius, size));
    }

    /** The box, in squares as large as its lesser side. */
    private static List<Square> squares(Within within, Box box) {
        List<Square> squares = new ArrayList<>();
        double half = box.lesser() / 2;
        for (double cx = box.minX() + half; cx - half < box.maxX(); cx += 2 * half) {
            for (double cy = box.minY() + half; cy - half < box.maxY(); cy += 2 * half) {
                squares.add(new Square(within, cx, cy, half));
            }
        }
        return squares;
    }

    /** A square that is parted where poles are sought; how far its middle lies within is asked once for all poles. */
    private static final class Square {
        private final Within within;
        private final double x;
        private final double y;
        private final double half;
        private double distance = Double.NaN;
        private Square[] quarters;

        Square(Within within, double x, double y, double half) {
            this.within = within;
            this.x = x;
            this.y = y;
            this.half = half;
        }

        double distance() {
            if (Double.isNaN(distance)) {
                distance = within.at(x, y);
            }
            return distance;
        }

        Square[] quarters() {
            if (quarters == null) {
                double quarter = half / 2;
                quarters = new Square[] {
                    new Square(within, x - quarter, y - quarter, quarter),
                    new Square(within, x + quarter, y - quarter, quarter),
                    new Square(within, x - quarter, y + quarter, quarter),
                    new Square(within, x + quarter, y + quarter, quarter)
                };
            }
            return quarters;
        }

        /** The most that a point of it can be at, where its middle is at a distance. */
        double bound(double distance) {
            return distance + half * Math.sqrt(2);
        }
    }

    /** The middle of a square, and how far it lies within and from the poles there are. */
    private record Middle(Square square, double distance) {
        double bound() {
            return square.bound(distance);
        }
    }

    /**
     * The point farthest within and from the poles there are. Poles are asked first: most squares are told by them, and edges are many.
     */
    private static Middle deepest(List<Square> squares, Within beside, double precision) {
        PriorityQueue<Middle> open =
                new PriorityQueue<>(Comparator.comparingDouble(Middle::bound).reversed());
        Middle best = null;
        for (Square square : squares) {
            Middle middle = new Middle(square, Math.min(beside.at(square.x, square.y), square.distance()));
            open.add(middle);
            if (best == null || middle.distance() > best.distance()) {
                best = middle;
            }
        }
        while (!open.isEmpty() && open.peek().bound() > best.distance() + precision) {
            for (Square quarter : open.poll().square().quarters()) {
                double fromPoles = beside.at(quarter.x, quarter.y);
                boolean neitherBetterNorLeadingThere =
                        fromPoles <= best.distance() && quarter.bound(fromPoles) <= best.distance() + precision;
                if (neitherBetterNorLeadingThere) {
                    continue;
                }
                Middle middle = new Middle(quarter, Math.min(fromPoles, quarter.distance()));
                if (middle.distance() > best.distance()) {
                    best = middle;
                }
                if (middle.bound() > best.distance() + precision) {
                    open.add(middle);
                }
            }
        }
        return best;
    }
}
