package org.hidewright.api.measure;

/** A volume of a liquid, held in millilitres. */
public final class Volume extends Quantity<Volume> {
    /** Nothing at all. */
    public static final Volume ZERO = new Volume(0);

    private Volume(double base) {
        super(Dimension.VOLUME, base);
    }

    /**
     * A value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     * @throws ArithmeticException if the value is not finite
     */
    public static Volume of(double value, Unit unit) {
        return new Volume(checked(unit, Dimension.VOLUME).toBase(value));
    }

    /** A volume of so many millilitres. */
    public static Volume ofMl(double ml) {
        return new Volume(ml);
    }

    /** In millilitres. */
    public double ml() {
        return base();
    }

    @Override
    Volume make(double newBase) {
        return new Volume(newBase);
    }
}
