package org.hidewright.api.measure;

/** A length, held in millimetres; it may be negative where a difference is meant. */
public final class Length extends Quantity<Length> {
    /** Nothing at all. */
    public static final Length ZERO = new Length(0);

    private Length(double base) {
        super(Dimension.LENGTH, base);
    }

    /**
     * A value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     * @throws ArithmeticException if the value is not finite
     */
    public static Length of(double value, Unit unit) {
        return new Length(checked(unit, Dimension.LENGTH).toBase(value));
    }

    /** A length of so many millimetres. */
    public static Length ofMm(double mm) {
        return new Length(mm);
    }

    /** In millimetres. */
    public double mm() {
        return base();
    }

    @Override
    Length make(double newBase) {
        return new Length(newBase);
    }
}
