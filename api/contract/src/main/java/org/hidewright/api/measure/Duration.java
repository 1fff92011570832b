package org.hidewright.api.measure;

/** A length of time at work or of waiting, held in seconds; not a point in time. */
public final class Duration extends Quantity<Duration> {
    /** Nothing at all. */
    public static final Duration ZERO = new Duration(0);

    private Duration(double base) {
        super(Dimension.DURATION, base);
    }

    /**
     * A value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     * @throws ArithmeticException if the value is not finite
     */
    public static Duration of(double value, Unit unit) {
        return new Duration(checked(unit, Dimension.DURATION).toBase(value));
    }

    /** A time of so many seconds. */
    public static Duration ofSeconds(double seconds) {
        return new Duration(seconds);
    }

    /** In seconds. */
    public double seconds() {
        return base();
    }

    @Override
    Duration make(double newBase) {
        return new Duration(newBase);
    }
}
