package org.hidewright.thickness;

/**
 * A flat cut that takes a depth off over a width: a right triangle with the depth standing and the width lying.
 *
 * <pre>
 *   full thickness  ______________
 *                  |              \  bevel
 *                  |               \______ what is left
 *                                  |width |
 * </pre>
 *
 * <p>Source: definition of the tangent and Pythagoras. Lengths in mm, the angle in radians between the cut and the
 * face of the leather, above 0 and below a right angle.
 */
final class Bevel {
    private Bevel() {}

    /**
     * Width on the face: {@code w = d / tan β}.
     *
     * @param depthMm depth d taken off, at least 0
     * @param angleRad angle β, above 0 and below π/2
     */
    static double widthMm(double depthMm, double angleRad) {
        return depthMm / Math.tan(angleRad);
    }

    /**
     * Angle of the cut: {@code β = atan(d / w)}.
     *
     * @param depthMm depth d, at least 0
     * @param widthMm width w, above 0
     */
    static double angleRad(double depthMm, double widthMm) {
        return Math.atan2(depthMm, widthMm);
    }

    /** Length along the cut: {@code b = √(d² + w²)}. */
    static double alongMm(double depthMm, double widthMm) {
        return Math.hypot(depthMm, widthMm);
    }
}
