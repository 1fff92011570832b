package org.hidewright.straps;

import java.util.Optional;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.Piece;

/**
 * A section as it was asked for, its numbers settled.
 *
 * @param piece how it lies
 * @param rampMm length of the ramp to a thicker neighbour
 * @param fold what is known of its fold; empty for a straight run
 */
record ReadSection(Section asked, Piece piece, double rampMm, Optional<Fold> fold) {
    /**
     * A fold.
     *
     * @param insideRadiusMm inside radius; at a turn-back that of the bar
     * @param bar what it goes round if that is hardware
     */
    record Fold(
            Face outside,
            Preparation preparation,
            double turnRad,
            double insideRadiusMm,
            double thicknessMm,
            FoldRule rule,
            Optional<Bar> bar) {}

    /** A bar: round of a diameter, or flat of a thickness and a width with its corner radius. */
    record Bar(double thicknessMm, double widthMm, double cornerRadiusMm) {
        static Bar round(double diameterMm) {
            return new Bar(diameterMm, diameterMm, diameterMm / 2);
        }

        boolean isRound() {
            return widthMm <= 2 * cornerRadiusMm && thicknessMm <= 2 * cornerRadiusMm;
        }
    }

    String id() {
        return asked.id();
    }
}
