package org.hidewright.straps.geometry;

import java.util.ArrayList;
import java.util.List;

/** One section of a strap as it will be folded: where its stretches lie once its start is placed, and where it ends. */
public sealed interface Piece {
    String id();

    /** The stretches in order, each at its pose, for a section that starts at a pose. */
    List<PlacedStretch> placed(Pose start);

    /** Where the next section starts. */
    Pose end(Pose start);

    /** Outside length from the start of the section to its middle. */
    double middleOutsideMm();

    /** A straight run. */
    record Run(String id, double lengthMm, double thicknessMm) implements Piece {
        @Override
        public List<PlacedStretch> placed(Pose start) {
            return List.of(new PlacedStretch(new Stretch.Level(lengthMm, thicknessMm), start));
        }

        @Override
        public Pose end(Pose start) {
            return start.ahead(lengthMm);
        }

        @Override
        public double middleOutsideMm() {
            return lengthMm / 2;
        }
    }

    /**
     * How far legs thicker than their fold lie further out than the fold’s own ends: the ramps of its skive lead there.
     *
     * @param beforeMm the leg before, square to it
     * @param afterMm the leg after
     */
    record Spread(double beforeMm, double afterMm) {
        public static final Spread NONE = new Spread(0, 0);
    }

    /**
     * A bend: one arc, or arcs at the corners of a flat bar with straight stretches between.
     *
     * @param stretches arcs and straight stretches in order, at least one, the first and the last an arc
     */
    record Bend(String id, List<Stretch> stretches, Spread spread) implements Piece {
        public Bend {
            stretches = List.copyOf(stretches);
        }

        public Bend(String id, List<Stretch> stretches) {
            this(id, stretches, Spread.NONE);
        }

        private Pose from(Pose start) {
            return start.towardsGrain(-spread.beforeMm());
        }

        @Override
        public List<PlacedStretch> placed(Pose start) {
            List<PlacedStretch> placed = new ArrayList<>();
            Pose pose = from(start);
            for (Stretch stretch : stretches) {
                placed.add(new PlacedStretch(stretch, pose));
                pose = stretch.at(pose, 1);
            }
            return placed;
        }

        @Override
        public Pose end(Pose start) {
            Pose pose = from(start);
            for (Stretch stretch : stretches) {
                pose = stretch.at(pose, 1);
            }
            return pose.towardsGrain(spread.afterMm());
        }

        @Override
        public double middleOutsideMm() {
            return stretches.stream().mapToDouble(Stretch::outsideMm).sum() / 2;
        }
    }

    /**
     * A turn-back at a buckle bar: a leg to the bar, round it, and a leg back until both meet at distance X from the
     * bar's centre. There the strap lies on itself, inside face to inside face, whatever the leg's slope was.
     *
     * @param before thickness of the leg before the middle of the bar
     * @param after thickness of the leg after it
     * @param k neutral line from the inside face
     */
    record TurnBack(
            String id,
            double barDiameterMm,
            double contactMm,
            double before,
            double after,
            double k,
            Face outside,
            Spread spread)
            implements Piece {
        public TurnBack(
                String id,
                double barDiameterMm,
                double contactMm,
                double before,
                double after,
                double k,
                Face outside) {
            this(id, barDiameterMm, contactMm, before, after, k, outside, Spread.NONE);
        }

        /** The leg of a thickness. */
        public Teardrop leg(double thickness) {
            return Teardrop.leg(barDiameterMm, contactMm, thickness, k);
        }

        private Stretch.Arc arc(double thickness) {
            return new Stretch.Arc(leg(thickness).wrapRad(), barDiameterMm / 2, thickness, k, outside);
        }

        private int sense() {
            return outside == Face.GRAIN ? -1 : 1;
        }

        /** The centre of the bar, for a section that starts at a pose. */
        public Pose centre(Pose start) {
            return start.ahead(contactMm).towardsGrain(outside == Face.GRAIN ? -before - spread.beforeMm() : 0);
        }

        @Override
        public List<PlacedStretch> placed(Pose start) {
            Pose centre = centre(start);
            Teardrop first = leg(before);
            Teardrop second = leg(after);
            Stretch.Arc firstArc = arc(before);
            Stretch.Arc secondArc = arc(after);
            Pose reaches = centre.turned(-sense() * (Math.PI / 2 - first.alphaRad()))
                    .towardsGrain(-sense() * firstArc.grainRadiusMm());
            Pose farSide = centre.turned(sense() * Math.PI / 2).towardsGrain(-sense() * secondArc.grainRadiusMm());
            return List.of(
                    new PlacedStretch(
                            new Stretch.Level(first.straightMm(), before), reaches.ahead(-first.straightMm())),
                    new PlacedStretch(firstArc, reaches),
                    new PlacedStretch(secondArc, farSide),
                    new PlacedStretch(new Stretch.Level(second.straightMm(), after), secondArc.at(farSide, 1)));
        }

        @Override
        public Pose end(Pose start) {
            double apart = before + spread.beforeMm() + after + spread.afterMm();
            return start.towardsGrain(outside == Face.GRAIN ? -apart : 0).turned(sense() * Math.PI);
        }

        @Override
        public double middleOutsideMm() {
            return leg(before).straightMm() + arc(before).outsideMm();
        }
    }
}
