package org.hidewright.straps.geometry;

/** A stretch of strap of one thickness that is straight or goes round one centre. */
public sealed interface Stretch {
    /** Thickness in this stretch, above 0. */
    double thicknessMm();

    /** Length on the flat strap. */
    double flatMm();

    /** Length on the outside face of the folded strap; of a straight stretch its length, in every depth. */
    double outsideMm();

    /** Length of the grain face in the folded strap. */
    double grainMm();

    /**
     * The pose on the grain face part of the way along.
     *
     * @param start the pose at the start of the stretch
     * @param share of the way, 0 at the start to 1 at the end
     */
    Pose at(Pose start, double share);

    /** A straight stretch: every depth keeps its length. */
    record Level(double lengthMm, double thicknessMm) implements Stretch {
        @Override
        public double flatMm() {
            return lengthMm;
        }

        @Override
        public double outsideMm() {
            return lengthMm;
        }

        @Override
        public double grainMm() {
            return lengthMm;
        }

        @Override
        public Pose at(Pose start, double share) {
            return start.ahead(share * lengthMm);
        }
    }

    /**
     * A stretch round a centre: the neutral line keeps its length. With the grain outside it turns towards the flesh and
     * its grain face has the radius r + t; with the flesh outside it turns towards the grain with the radius r.
     *
     * @param turnRad angle turned through, above 0
     * @param insideRadiusMm radius r of the inside face, 0 or more
     * @param k neutral line from the inside face, as a share of the thickness
     */
    record Arc(double turnRad, double insideRadiusMm, double thicknessMm, double k, Face outside) implements Stretch {
        @Override
        public double flatMm() {
            return Bends.allowanceMm(turnRad, insideRadiusMm, thicknessMm, k);
        }

        @Override
        public double outsideMm() {
            return turnRad * outsideRadiusMm();
        }

        @Override
        public double grainMm() {
            return turnRad * grainRadiusMm();
        }

        public double outsideRadiusMm() {
            return insideRadiusMm + thicknessMm;
        }

        public double grainRadiusMm() {
            return outside == Face.GRAIN ? outsideRadiusMm() : insideRadiusMm;
        }

        public double fleshRadiusMm() {
            return outside == Face.GRAIN ? insideRadiusMm : outsideRadiusMm();
        }

        /** 1 where it turns towards the grain, counter-clockwise in the side view, otherwise -1. */
        public int sense() {
            return outside == Face.GRAIN ? -1 : 1;
        }

        /** The centre it goes round. */
        public Pose centre(Pose start) {
            return start.towardsGrain(sense() * grainRadiusMm());
        }

        @Override
        public Pose at(Pose start, double share) {
            double turned = sense() * share * turnRad;
            return centre(start).turned(turned).towardsGrain(-sense() * grainRadiusMm());
        }
    }
}
