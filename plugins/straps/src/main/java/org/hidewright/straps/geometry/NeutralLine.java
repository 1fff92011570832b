package org.hidewright.straps.geometry;

/**
 * Where in its thickness a bent strip keeps its length: {@code k}, from 0 at the inside face to 1 at the outside face.
 *
 * <p>No published value for leather was found. The start values are common practice: the grain hardly stretches and the
 * flesh crushes, so the neutral line lies nearer the grain.
 */
public final class NeutralLine {
    /** Grain outside, folded dry; habit 0.5 to 0.7. */
    public static final double GRAIN_OUT_DRY = 0.6;
    /** Flesh outside, folded dry; habit 0.3 to 0.5. */
    public static final double FLESH_OUT_DRY = 0.4;
    /** Cased (damp) or soft leather: the middle. */
    public static final double CASED = 0.5;

    private NeutralLine() {}

    /** Whether a value is one of those the habit starts from. */
    public static boolean isStartValue(double k) {
        return k == GRAIN_OUT_DRY || k == FLESH_OUT_DRY || k == CASED;
    }

    /** Start value of leather folded dry. */
    public static double dry(Face outside) {
        return outside == Face.GRAIN ? GRAIN_OUT_DRY : FLESH_OUT_DRY;
    }

    /**
     * A groove cut into the inside face moves the neutral line to the middle of the web that is left:
     * {@code k = 1 - w / (2 t)}.
     *
     * @param webMm thickness w left under the groove, above 0 and at most t
     * @param thicknessMm full thickness t
     */
    public static double grooved(double webMm, double thicknessMm) {
        return 1 - webMm / (2 * thicknessMm);
    }

    /**
     * The neutral line of a strip that was folded and measured, {@code k = (L / θ - r) / t}.
     *
     * @param allowanceMm flat length L that went into the bend
     * @param turnRad angle θ, above 0
     */
    public static double measured(double allowanceMm, double turnRad, double insideRadiusMm, double thicknessMm) {
        return (allowanceMm / turnRad - insideRadiusMm) / thicknessMm;
    }
}
