package org.hidewright.straps.geometry;

/**
 * One leg of a turn-back at a buckle: from where the legs meet, straight to the bar, and round it to its far side.
 *
 * <p>{@code L = ρ (π - α) + √(X² + h² - ρ²)}, {@code α = atan(h / X) + acos(ρ / √(X² + h²))}, {@code ρ = d/2 + k t},
 * {@code h = t/2}: a tangent from the point (X, h) to the circle ρ round the bar's centre. Plane geometry.
 *
 * @param neutralRadiusMm ρ
 * @param alphaRad α, from the line of the legs to the place where the leg reaches the bar
 * @param straightMm length of the straight part
 */
public record Teardrop(double neutralRadiusMm, double alphaRad, double straightMm) {
    /**
     * One leg.
     *
     * @param barDiameterMm bar diameter d
     * @param contactMm distance X from the bar's centre to where the legs meet
     * @throws IllegalArgumentException if the legs cannot meet so near; ask {@link #fits} first
     */
    public static Teardrop leg(double barDiameterMm, double contactMm, double thicknessMm, double k) {
        if (!fits(barDiameterMm, contactMm, thicknessMm, k)) {
            throw new IllegalArgumentException("legs meet inside the bend");
        }
        double rho = barDiameterMm / 2 + k * thicknessMm;
        double h = thicknessMm / 2;
        double reach = Math.hypot(contactMm, h);
        double alpha = Math.atan2(h, contactMm) + Math.acos(rho / reach);
        return new Teardrop(rho, alpha, Math.sqrt(reach * reach - rho * rho));
    }

    /** Whether X² + h² is above ρ², so that there is a tangent. */
    public static boolean fits(double barDiameterMm, double contactMm, double thicknessMm, double k) {
        return Math.hypot(contactMm, thicknessMm / 2) > barDiameterMm / 2 + k * thicknessMm;
    }

    /** The angle this leg lies on the bar, π - α. */
    public double wrapRad() {
        return Math.PI - alphaRad;
    }

    /** Flat length of this leg. */
    public double lengthMm() {
        return neutralRadiusMm * wrapRad() + straightMm;
    }
}
