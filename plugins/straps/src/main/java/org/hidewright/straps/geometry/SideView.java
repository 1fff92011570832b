package org.hidewright.straps.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** The leather of one stretch as it is seen from the side: what lies between its two faces and its two square ends. */
abstract sealed class SideView {
    /** A face belongs to neither side, and stretches that follow each other share an end; millimetres, and radians. */
    private static final double ROUNDING = 1e-9;

    private final PlacedStretch placed;

    private SideView(PlacedStretch placed) {
        this.placed = placed;
    }

    static SideView of(PlacedStretch placed) {
        return placed.stretch() instanceof Stretch.Arc arc ? new Bent(placed, arc) : new Level(placed);
    }

    final double thicknessMm() {
        return placed.stretch().thicknessMm();
    }

    /** The line square through the leather part of the way along. */
    final Through through(double share) {
        Pose grain = placed.at(share);
        return new Through(grain, grain.towardsGrain(-thicknessMm()));
    }

    /**
     * The shares of this stretch between which other leather comes steadily deeper into it or steadily less deep, 0 and 1
     * among them: where the other has a corner, and where a face of the other runs the same way as this stretch.
     */
    final double[] steadyBetween(SideView other) {
        List<Pose> places = new ArrayList<>(other.sameWayAs(this));
        for (double end = 0; end <= 1; end++) {
            Through square = other.through(end);
            places.add(square.grain());
            places.add(square.flesh());
        }
        return DoubleStream.concat(
                        DoubleStream.of(0, 1),
                        places.stream().mapToDouble(this::shareOf).filter(share -> share > 0 && share < 1))
                .sorted()
                .toArray();
    }

    /** Whether a place lies in the leather, under its faces. */
    abstract boolean holds(Pose place);

    /** Where a line through other leather can come into this one or leave it, as shares of the line. */
    abstract DoubleStream cuts(Through line);

    /** The share of the way along this stretch that a place lies over or under; outside 0 to 1 past its ends. */
    abstract double shareOf(Pose place);

    /** Places over or under which a face of this stretch runs the same way as another stretch. */
    abstract List<Pose> sameWayAs(SideView other);

    /** Whether the boxes round both overlap, so that it is worth looking. */
    final boolean near(SideView other) {
        Box one = box();
        Box two = other.box();
        return one.left < two.right && two.left < one.right && one.bottom < two.top && two.bottom < one.top;
    }

    abstract Box box();

    record Box(double left, double bottom, double right, double top) {}

    /** A line square through leather. */
    record Through(Pose grain, Pose flesh) {
        Pose at(double share) {
            return new Pose(
                    grain.x() + share * (flesh.x() - grain.x()), grain.y() + share * (flesh.y() - grain.y()), 0);
        }
    }

    private static boolean within(double value, double from, double to) {
        return value > from + ROUNDING && value < to - ROUNDING;
    }

    /** Where something that grows evenly from one value to another has a value; no number where it does not grow. */
    private static double evenly(double from, double to, double value) {
        return (value - from) / (to - from);
    }

    private static final class Level extends SideView {
        private final Pose start;
        private final double lengthMm;

        private Level(PlacedStretch placed) {
            super(placed);
            this.start = placed.start();
            this.lengthMm = placed.stretch().grainMm();
        }

        @Override
        boolean holds(Pose place) {
            double along = start.along(place);
            double under = -start.beside(place);
            return within(along, 0, lengthMm) && within(under, 0, thicknessMm());
        }

        @Override
        DoubleStream cuts(Through line) {
            double along = start.along(line.grain());
            double alongFlesh = start.along(line.flesh());
            double beside = start.beside(line.grain());
            double besideFlesh = start.beside(line.flesh());
            return DoubleStream.of(
                    evenly(along, alongFlesh, 0),
                    evenly(along, alongFlesh, lengthMm),
                    evenly(beside, besideFlesh, 0),
                    evenly(beside, besideFlesh, -thicknessMm()));
        }

        @Override
        double shareOf(Pose place) {
            return start.along(place) / lengthMm;
        }

        @Override
        List<Pose> sameWayAs(SideView other) {
            return other instanceof Bent bent ? List.of(start.ahead(start.along(bent.centre))) : List.of();
        }

        @Override
        Box box() {
            Through first = through(0);
            Through last = through(1);
            List<Pose> corners = List.of(first.grain, first.flesh, last.grain, last.flesh);
            return new Box(
                    corners.stream().mapToDouble(Pose::x).min().orElseThrow(),
                    corners.stream().mapToDouble(Pose::y).min().orElseThrow(),
                    corners.stream().mapToDouble(Pose::x).max().orElseThrow(),
                    corners.stream().mapToDouble(Pose::y).max().orElseThrow());
        }
    }

    private static final class Bent extends SideView {
        private final Stretch.Arc arc;
        /** Heading as the strap does where the bend begins. */
        private final Pose centre;

        private Bent(PlacedStretch placed, Stretch.Arc arc) {
            super(placed);
            this.arc = arc;
            this.centre = arc.centre(placed.start());
        }

        /** How far round from its start a place lies, 0 to 2π. */
        private double turnedRad(Pose place) {
            double turned = Math.atan2(centre.along(place), -arc.sense() * centre.beside(place));
            return turned < 0 ? turned + 2 * Math.PI : turned;
        }

        @Override
        boolean holds(Pose place) {
            return within(centre.distanceTo(place), arc.insideRadiusMm(), arc.outsideRadiusMm())
                    && within(turnedRad(place), 0, arc.turnRad());
        }

        @Override
        DoubleStream cuts(Through line) {
            Pose end = centre.turned(arc.sense() * arc.turnRad());
            DoubleStream ends =
                    DoubleStream.of(atEnd(centre, line), atEnd(end, line)); // both lie square to the strap there
            return DoubleStream.concat(
                    ends,
                    DoubleStream.concat(atRadius(arc.insideRadiusMm(), line), atRadius(arc.outsideRadiusMm(), line)));
        }

        private static double atEnd(Pose end, Through line) {
            return evenly(end.along(line.grain()), end.along(line.flesh()), 0);
        }

        /** Where a line meets a circle about the centre: {@code a u² + 2 b u + c = 0}. */
        private DoubleStream atRadius(double radius, Through line) {
            double dx = line.flesh().x() - line.grain().x();
            double dy = line.flesh().y() - line.grain().y();
            double x = line.grain().x() - centre.x();
            double y = line.grain().y() - centre.y();
            double a = dx * dx + dy * dy;
            double b = x * dx + y * dy;
            double root = Math.sqrt(b * b - a * (x * x + y * y - radius * radius));
            return DoubleStream.of((-b - root) / a, (-b + root) / a);
        }

        @Override
        double shareOf(Pose place) {
            return turnedRad(place) / arc.turnRad();
        }

        /** A straight run has the face’s crown over or under the centre; of two bends it is on the line of the centres. */
        @Override
        List<Pose> sameWayAs(SideView other) {
            return other instanceof Bent bent
                    ? List.of(centre, new Pose(2 * bent.centre.x() - centre.x(), 2 * bent.centre.y() - centre.y(), 0))
                    : List.of(centre);
        }

        @Override
        Box box() {
            double reach = arc.outsideRadiusMm();
            return new Box(centre.x() - reach, centre.y() - reach, centre.x() + reach, centre.y() + reach);
        }
    }
}
