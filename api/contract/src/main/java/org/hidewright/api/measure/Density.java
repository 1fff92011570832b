package org.hidewright.api.measure;

/** Apparent density of leather (ISO 2420), held in grams per cubic centimetre. */
public final class Density extends Quantity<Density> {
    /** Nothing at all. */
    public static final Density ZERO = new Density(0);

    private Density(double base) {
        super(Dimension.DENSITY, base);
    }

    /**
     * A value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     * @throws ArithmeticException if the value is not finite
     */
    public static Density of(double value, Unit unit) {
        return new Density(checked(unit, Dimension.DENSITY).toBase(value));
    }

    /** A density of so many grams for a cubic centimetre. */
    public static Density ofGramsPerCm3(double gramsPerCm3) {
        return new Density(gramsPerCm3);
    }

    /** In grams for a cubic centimetre. */
    public double gramsPerCm3() {
        return base();
    }

    @Override
    Density make(double newBase) {
        return new Density(newBase);
    }
}
