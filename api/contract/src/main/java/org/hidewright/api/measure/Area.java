package org.hidewright.api.measure;

/** An area, held in square millimetres. */
public final class Area extends Quantity<Area> {
    /** Nothing at all. */
    public static final Area ZERO = new Area(0);

    private Area(double base) {
        super(Dimension.AREA, base);
    }

    /**
     * A value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     * @throws ArithmeticException if the value is not finite
     */
    public static Area of(double value, Unit unit) {
        return new Area(checked(unit, Dimension.AREA).toBase(value));
    }

    /** An area of so many square millimetres. */
    public static Area ofMm2(double mm2) {
        return new Area(mm2);
    }

    /** In square millimetres. */
    public double mm2() {
        return base();
    }

    @Override
    Area make(double newBase) {
        return new Area(newBase);
    }
}
