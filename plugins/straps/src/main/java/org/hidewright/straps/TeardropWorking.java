package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Teardrop;

/** Writes down how one leg of a turn-back was worked out. */
final class TeardropWorking {
    private static final Formula ANGLE =
            Formula.of("teardrop-angle", "α = atan(h / X) + acos(ρ / √(X² + h²))", Origins.GEOMETRY);
    private static final Formula LEG =
            Formula.of("teardrop-leg", "L = ρ · (π - α) + √(X² + h² - ρ²)", Origins.GEOMETRY);
    static final List<Formula> FORMULAS = List.of(ANGLE, LEG);

    private TeardropWorking() {}

    static void write(Working working, Teardrop leg, Length contact, Length thickness) {
        Length rho = Length.ofMm(leg.neutralRadiusMm());
        Length half = thickness.times(0.5);
        Angle alpha = Angle.ofRadians(leg.alphaRad());
        working.step(ANGLE, alpha, "h", half, "X", contact, "ρ", rho);
        working.step(LEG, Length.ofMm(leg.lengthMm()), "ρ", rho, "α", alpha, "X", contact, "h", half);
    }
}
