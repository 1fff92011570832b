package org.hidewright.api.drawing;

import java.util.List;
import java.util.Objects;

/** One stretch of a path, from a start to an end: a line, an arc of a circle, or a cubic Bézier curve. */
public sealed interface Segment {
    /** Where it begins. */
    Point start();

    /** Where it ends. */
    Point end();

    /** The smallest box round the stretch itself, not round its control points. */
    Box bounds();

    /** A straight stretch between two places. */
    static Line line(Point start, Point end) {
        return new Line(Objects.requireNonNull(start, "start"), Objects.requireNonNull(end, "end"));
    }

    /**
     * Part of a circle round a centre.
     *
     * @param sweepRad angle turned from the start, radians, positive counter-clockwise
     * @throws IllegalArgumentException if the start is the centre, or the sweep is 0 or more than a full turn
     */
    static Arc arc(Point start, Point centre, double sweepRad) {
        return new Arc(Objects.requireNonNull(start, "start"), Objects.requireNonNull(centre, "centre"), sweepRad);
    }

    /** A cubic Bézier curve with two control points. */
    static Cubic cubic(Point start, Point control1, Point control2, Point end) {
        return new Cubic(
                Objects.requireNonNull(start, "start"),
                Objects.requireNonNull(control1, "control1"),
                Objects.requireNonNull(control2, "control2"),
                Objects.requireNonNull(end, "end"));
    }

    /** A straight stretch. */
    final class Line extends Value implements Segment {
        private final Point start;
        private final Point end;

        Line(Point start, Point end) {
            this.start = start;
            this.end = end;
        }

        @Override
        public Point start() {
            return start;
        }

        @Override
        public Point end() {
            return end;
        }

        @Override
        public Box bounds() {
            return Box.around(start, end);
        }

        @Override
        List<Object> parts() {
            return List.of(start, end);
        }
    }

    /** Part of a circle, or all of it. */
    final class Arc extends Value implements Segment {
        private final Point centre;
        private final double radius;
        private final double startAngle;
        private final double sweep;
        private final Point start;
        private final Point end;

        /** @throws IllegalArgumentException if the start is the centre, or the sweep is 0 or more than a full turn */
        Arc(Point start, Point centre, double sweepRad) {
            this.centre = centre;
            this.start = start;
            this.radius = above0(centre.distanceTo(start), "radius");
            this.startAngle = centre.directionTo(start);
            this.sweep = finite(sweepRad, "sweep");
            if (sweep == 0 || Math.abs(sweep) > 2 * Math.PI + 1e-9) {
                throw new IllegalArgumentException("an arc turns by more than 0 and at most a full turn, not " + sweep);
            }
            this.end = centre.towards(startAngle + sweep, radius);
        }

        /** The middle of its circle. */
        public Point centre() {
            return centre;
        }

        /** Of its circle, in millimetres. */
        public double radius() {
            return radius;
        }

        /** Direction from the centre to the start, radians. */
        public double startAngle() {
            return startAngle;
        }

        /** Angle turned, radians, positive counter-clockwise. */
        public double sweep() {
            return sweep;
        }

        @Override
        public Point start() {
            return start;
        }

        @Override
        public Point end() {
            return end;
        }

        @Override
        public Box bounds() {
            Box box = Box.around(start, end);
            double low = Math.min(startAngle, startAngle + sweep);
            double high = Math.max(startAngle, startAngle + sweep);
            for (double turn = Math.ceil(low / (Math.PI / 2)); turn * Math.PI / 2 <= high; turn++) {
                box = box.with(Box.around(centre.towards(turn * Math.PI / 2, radius)));
            }
            return box;
        }

        @Override
        List<Object> parts() {
            return List.of(start, centre, sweep);
        }
    }

    /** A cubic Bézier curve with two control points. */
    final class Cubic extends Value implements Segment {
        private final Point start;
        private final Point control1;
        private final Point control2;
        private final Point end;

        Cubic(Point start, Point control1, Point control2, Point end) {
            this.start = start;
            this.control1 = control1;
            this.control2 = control2;
            this.end = end;
        }

        @Override
        public Point start() {
            return start;
        }

        /** What it heads for where it begins. */
        public Point control1() {
            return control1;
        }

        /** What it comes from where it ends. */
        public Point control2() {
            return control2;
        }

        @Override
        public Point end() {
            return end;
        }

        /** The place at a parameter from 0 (start) to 1 (end). */
        public Point at(double t) {
            return Point.of(
                    CubicExtremes.at(start.x(), control1.x(), control2.x(), end.x(), t),
                    CubicExtremes.at(start.y(), control1.y(), control2.y(), end.y(), t));
        }

        @Override
        public Box bounds() {
            Box box = Box.around(start, end);
            for (double t : CubicExtremes.of(start.x(), control1.x(), control2.x(), end.x())) {
                box = box.with(Box.around(at(t)));
            }
            for (double t : CubicExtremes.of(start.y(), control1.y(), control2.y(), end.y())) {
                box = box.with(Box.around(at(t)));
            }
            return box;
        }

        @Override
        List<Object> parts() {
            return List.of(start, control1, control2, end);
        }
    }
}
