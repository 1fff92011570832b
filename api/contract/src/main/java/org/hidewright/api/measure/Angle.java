package org.hidewright.api.measure;

/** An angle, held in radians. */
public final class Angle extends Quantity<Angle> {
    /** Nothing at all. */
    public static final Angle ZERO = new Angle(0);

    private Angle(double base) {
        super(Dimension.ANGLE, base);
    }

    /**
     * A value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     * @throws ArithmeticException if the value is not finite
     */
    public static Angle of(double value, Unit unit) {
        return new Angle(checked(unit, Dimension.ANGLE).toBase(value));
    }

    /** An angle of so many radians. */
    public static Angle ofRadians(double radians) {
        return new Angle(radians);
    }

    /** In radians. */
    public double radians() {
        return base();
    }

    @Override
    Angle make(double newBase) {
        return new Angle(newBase);
    }
}
