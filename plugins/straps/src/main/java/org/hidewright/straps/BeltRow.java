package org.hidewright.straps;

/**
 * The holes of a belt, counted from the buckle: hole i gives {@code S + (i - m) p}.
 *
 * @param sizeMm size S asked
 * @param count holes n
 * @param worn hole m, which lies at the size asked
 * @param spacingMm p, from hole to hole
 */
record BeltRow(double sizeMm, int count, int worn, double spacingMm) {
    /** The row asked; the middle hole is worn unless another is named, of an even row the one before the middle. */
    static BeltRow of(BeltLayout.Belt belt) {
        return new BeltRow(
                belt.size().mm(),
                belt.holes(),
                belt.wornHole().orElse((belt.holes() + 1) / 2),
                belt.spacing().mm());
    }

    double sizeMm(int hole) {
        return sizeMm + (hole - worn) * spacingMm;
    }

    double smallestMm() {
        return sizeMm(1);
    }

    double largestMm() {
        return sizeMm(count);
    }

    /** Whether one of the holes is the worn one. */
    boolean holdsWorn() {
        return worn <= count;
    }
}
