package org.hidewright.straps.geometry;

/**
 * Lengths of a strip that goes round something. Where a neutral radius or a neutral line is asked, 0 gives the bare
 * length round the thing itself.
 */
public final class Wraps {
    private Wraps() {}

    /** Closed ring round a bar, {@code π (D + 2 e + 2 k t)}; e is ease all round. */
    public static double ringMm(double barDiameterMm, double easeMm, double thicknessMm, double k) {
        return Math.PI * (barDiameterMm + 2 * easeMm + 2 * k * thicknessMm);
    }

    /** Half way round a bar, {@code π (d/2 + k t)}. */
    public static double halfMm(double barDiameterMm, double thicknessMm, double k) {
        return Bends.allowanceMm(Math.PI, barDiameterMm / 2, thicknessMm, k);
    }

    /**
     * Perimeter of a rectangle with rounded corners, {@code 2 (w + h) - (8 - 2 π) r}.
     *
     * @param cornerRadiusMm corner radius r, 0 to half the shorter side; there the rectangle is a stadium or a circle
     */
    public static double roundedRectangleMm(double widthMm, double heightMm, double cornerRadiusMm) {
        return 2 * (widthMm + heightMm) - (8 - 2 * Math.PI) * cornerRadiusMm;
    }

    /** What the thickness adds round any convex closed core, {@code 2 π k t} (Steiner's formula for parallel curves). */
    public static double roundClosedCoreMm(double thicknessMm, double k) {
        return 2 * Math.PI * k * thicknessMm;
    }

    /**
     * Open run round two posts, {@code 2 C cos α + π (R + r) + 2 α (R - r)} with {@code sin α = (R - r) / C}.
     *
     * @param firstRadiusMm radius of one post, to the neutral line if the thickness counts
     * @param secondRadiusMm radius of the other
     * @param centresMm distance C of their centres, at least the difference of the radii
     */
    public static double openMm(double firstRadiusMm, double secondRadiusMm, double centresMm) {
        double difference = Math.abs(firstRadiusMm - secondRadiusMm);
        double alpha = Math.asin(difference / centresMm);
        return 2 * centresMm * Math.cos(alpha) + Math.PI * (firstRadiusMm + secondRadiusMm) + 2 * alpha * difference;
    }

    /**
     * Run crossed between two posts, {@code 2 C cos β + (R + r) (π + 2 β)} with {@code sin β = (R + r) / C}.
     *
     * @param centresMm distance C of the centres, at least the sum of the radii
     */
    public static double crossedMm(double firstRadiusMm, double secondRadiusMm, double centresMm) {
        double sum = firstRadiusMm + secondRadiusMm;
        double beta = Math.asin(sum / centresMm);
        return 2 * centresMm * Math.cos(beta) + sum * (Math.PI + 2 * beta);
    }

    /**
     * Roll as layers, {@code π (B² - A²) / t}: the sum of the mid-line circles, and the area rule.
     *
     * @param innerRadiusMm radius A of the core
     * @param outerRadiusMm radius B of the finished roll, {@code A + N t} for N turns
     */
    public static double rollLayersMm(double innerRadiusMm, double outerRadiusMm, double thicknessMm) {
        return Math.PI * (outerRadiusMm * outerRadiusMm - innerRadiusMm * innerRadiusMm) / thicknessMm;
    }

    /**
     * Length of an Archimedean spiral between two radii,
     * {@code [u √(u² + b²) + b² asinh(u / b)] / (2 b)} from A to B, with {@code b = t / (2 π)}.
     */
    public static double spiralMm(double fromRadiusMm, double toRadiusMm, double thicknessMm) {
        double b = thicknessMm / (2 * Math.PI);
        return spiralFromCentreMm(toRadiusMm, b) - spiralFromCentreMm(fromRadiusMm, b);
    }

    private static double spiralFromCentreMm(double u, double b) {
        double root = Math.sqrt(u * u + b * b);
        return (u * root + b * b * Math.log((u + root) / b)) / (2 * b); // ln((u + root)/b) is asinh(u/b)
    }

    /** Gusset along the sides and bottom of a U-shaped panel, {@code 2 (h - r) + (w - 2 r) + π r}. */
    public static double gussetMm(double widthMm, double heightMm, double cornerRadiusMm) {
        return 2 * (heightMm - cornerRadiusMm) + (widthMm - 2 * cornerRadiusMm) + Math.PI * cornerRadiusMm;
    }

    /**
     * What the outer of two layers needs more when both fold together, {@code θ ((1 - k) t1 + g + k t2)}: the distance
     * of their neutral lines, turned through the angle.
     */
    public static double outerLayerMoreMm(
            double turnRad, double innerThicknessMm, double outerThicknessMm, double gapMm, double k) {
        return turnRad * ((1 - k) * innerThicknessMm + gapMm + k * outerThicknessMm);
    }
}
