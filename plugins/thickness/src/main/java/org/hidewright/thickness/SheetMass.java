package org.hidewright.thickness;

import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;

/**
 * Mass, area, thickness and apparent density of a sheet: {@code m = A · t · ρ}.
 *
 * <p>Source: ISO 2420:2017, which defines apparent density as mass over area times thickness. One g/cm³ is 0.001
 * g/mm³. Every value is above 0.
 */
final class SheetMass {
    private static final double MM3_PER_CM3 = 1000;

    private SheetMass() {}

    /** {@code m = A · t · ρ}. */
    static Mass mass(Area area, Length thickness, Density density) {
        return Mass.ofGrams(area.mm2() * thickness.mm() * density.gramsPerCm3() / MM3_PER_CM3);
    }

    /** {@code ρ = m / (A · t)}. */
    static Density density(Mass mass, Area area, Length thickness) {
        return Density.ofGramsPerCm3(mass.grams() * MM3_PER_CM3 / (area.mm2() * thickness.mm()));
    }
}
