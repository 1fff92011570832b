package org.hidewright.api.measure;

/** A mass, held in grams. */
public final class Mass extends Quantity<Mass> {
    /** Nothing at all. */
    public static final Mass ZERO = new Mass(0);

    private Mass(double base) {
        super(Dimension.MASS, base);
    }

    /**
     * A value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     * @throws ArithmeticException if the value is not finite
     */
    public static Mass of(double value, Unit unit) {
        return new Mass(checked(unit, Dimension.MASS).toBase(value));
    }

    /** A mass of so many grams. */
    public static Mass ofGrams(double grams) {
        return new Mass(grams);
    }

    /** In grams. */
    public double grams() {
        return base();
    }

    @Override
    Mass make(double newBase) {
        return new Mass(newBase);
    }
}
