package org.hidewright.api.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A chain of lines, arcs and cubic curves, each starting where the one before ended; open or closed. */
public final class Path extends Value implements Shape {
    private static final double JOINED_MM = 1e-3;

    private final Role role;
    private final List<Segment> segments;
    private final boolean closed;

    private Path(Role role, List<Segment> segments, boolean closed) {
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a path needs at least one segment");
        }
        this.role = Objects.requireNonNull(role, "role");
        this.segments = List.copyOf(segments);
        this.closed = closed;
    }

    /** Starts a path at a place. */
    public static Builder from(Point start) {
        return new Builder(start);
    }

    /**
     * A chain of stretches that are there already.
     *
     * @throws IllegalArgumentException if there is none, if one does not start where the one before ended, or if a closed
     *     chain does not end at its start; a micrometre counts as the same place
     */
    public static Path of(Role role, List<Segment> segments, boolean closed) {
        Path path = new Path(role, segments, closed);
        for (int i = closed ? 0 : 1; i < segments.size(); i++) {
            Point before = segments.get(i == 0 ? segments.size() - 1 : i - 1).end();
            if (before.distanceTo(segments.get(i).start()) > JOINED_MM) {
                throw new IllegalArgumentException("stretch " + i + " starts at "
                        + segments.get(i).start() + " but the one before ends at " + before);
            }
        }
        return path;
    }

    /** One straight line. */
    public static Path line(Role role, Point from, Point to) {
        return from(from).lineTo(to).open(role);
    }

    /** An upright closed rectangle, counter-clockwise from its lower left corner. */
    public static Path rectangle(Role role, Point lowerLeft, double widthMm, double heightMm) {
        return from(lowerLeft)
                .lineTo(lowerLeft.plus(widthMm, 0))
                .lineTo(lowerLeft.plus(widthMm, heightMm))
                .lineTo(lowerLeft.plus(0, heightMm))
                .closed(role);
    }

    @Override
    public Role role() {
        return role;
    }

    /** The stretches in order; of a closed path the last one ends at the start. */
    public List<Segment> segments() {
        return segments;
    }

    /** Whether it ends where it begins. */
    public boolean isClosed() {
        return closed;
    }

    @Override
    public Box bounds() {
        return segments.stream().map(Segment::bounds).reduce(Box::with).orElseThrow();
    }

    @Override
    List<Object> parts() {
        return List.of(role, closed, segments);
    }

    /** Adds stretches one after the other; not for use by several threads. */
    public static final class Builder {
        private static final double SAME_PLACE_MM = 1e-9;

        private final List<Segment> segments = new ArrayList<>();
        private final Point start;
        private Point pen;

        private Builder(Point start) {
            this.start = Objects.requireNonNull(start, "start");
            this.pen = start;
        }

        private Builder add(Segment segment) {
            segments.add(segment);
            pen = segment.end();
            return this;
        }

        /** Where the pen is now. */
        public Point pen() {
            return pen;
        }

        /** Straight on to a point. */
        public Builder lineTo(Point end) {
            return add(new Segment.Line(pen, Objects.requireNonNull(end, "end")));
        }

        /** Straight on to a point, in millimetres. */
        public Builder lineTo(double xMm, double yMm) {
            return lineTo(Point.of(xMm, yMm));
        }

        /**
         * Goes round a centre by an angle in radians, positive counter-clockwise.
         *
         * @throws IllegalArgumentException if the pen is at the centre, the angle is 0 or more than a full turn
         */
        public Builder arcAround(Point centre, double sweepRad) {
            return add(new Segment.Arc(pen, centre, sweepRad));
        }

        /** On to an end by a cubic Bézier curve with two control points. */
        public Builder cubicTo(Point control1, Point control2, Point end) {
            return add(new Segment.Cubic(
                    pen,
                    Objects.requireNonNull(control1, "control1"),
                    Objects.requireNonNull(control2, "control2"),
                    Objects.requireNonNull(end, "end")));
        }

        /** The path as it stands, its ends apart. */
        public Path open(Role role) {
            return new Path(role, segments, false);
        }

        /** The path closed, with a straight line back to the start if it is not there already. */
        public Path closed(Role role) {
            if (pen.distanceTo(start) > SAME_PLACE_MM) {
                lineTo(start);
            }
            return new Path(role, segments, true);
        }
    }
}
