package org.hidewright.straps.geometry;

/**
 * One bend of a strip: how much flat length it takes, and how outside dimensions lead to a flat length.
 *
 * <p>Source of all three: the general bend-allowance formulas of sheet-metal practice, which hold for any strip whose
 * neutral line is known.
 */
public final class Bends {
    private Bends() {}

    /**
     * Flat length a bend takes, {@code θ (r + k t)}.
     *
     * @param turnRad angle θ turned through, 0 or more; at 0 the allowance is 0
     * @param insideRadiusMm inside radius r, 0 or more
     * @param thicknessMm thickness t in the bend, above 0
     * @param k neutral line from the inside face, 0 to 1 of the thickness
     */
    public static double allowanceMm(double turnRad, double insideRadiusMm, double thicknessMm, double k) {
        return turnRad * (insideRadiusMm + k * thicknessMm);
    }

    /**
     * Outside setback, {@code (r + t) tan(θ/2)}: from the end of the bend to the corner its outside faces would make.
     *
     * @param turnRad angle θ, 0 or more and below a half turn; the corner runs away to infinity at a half turn
     */
    public static double setbackMm(double turnRad, double insideRadiusMm, double thicknessMm) {
        return (insideRadiusMm + thicknessMm) * Math.tan(turnRad / 2);
    }

    /** What is taken off the sum of two outside dimensions, {@code 2 (r + t) tan(θ/2) - θ (r + k t)}. */
    public static double deductionMm(double turnRad, double insideRadiusMm, double thicknessMm, double k) {
        return 2 * setbackMm(turnRad, insideRadiusMm, thicknessMm)
                - allowanceMm(turnRad, insideRadiusMm, thicknessMm, k);
    }
}
