package org.hidewright.api.measure;

/**
 * A measured value with a dimension: one finite {@code double} in the base unit of the dimension.
 *
 * <p>Values are immutable and compare by number; arithmetic stays inside one type. A negative zero is held as zero.
 *
 * @param <Q> the type itself
 */
public abstract sealed class Quantity<Q extends Quantity<Q>> implements Comparable<Q>
        permits Length, Angle, Area, Mass, Density, Volume, Duration {
    private final Dimension dimension;
    private final double base;

    Quantity(Dimension dimension, double base) {
        if (!Double.isFinite(base)) {
            throw new ArithmeticException("a " + dimension + " must be a finite number, not " + base);
        }
        this.dimension = dimension;
        this.base = base + 0.0; // a negative zero becomes zero, so that nothing equals nothing
    }

    abstract Q make(double newBase);

    /** What is measured. */
    public final Dimension dimension() {
        return dimension;
    }

    /** The value in the base unit of its dimension. */
    public final double base() {
        return base;
    }

    /**
     * The value counted in a unit.
     *
     * @throws IllegalArgumentException if the unit measures something else
     */
    public final double in(Unit unit) {
        return checked(unit, dimension).fromBase(base);
    }

    static Unit checked(Unit unit, Dimension dimension) {
        if (unit.dimension() != dimension) {
            throw new IllegalArgumentException(unit + " does not measure " + dimension);
        }
        return unit;
    }

    /**
     * The sum.
     *
     * @throws ArithmeticException if it is too great for a number
     */
    public final Q plus(Q other) {
        return make(base + other.base());
    }

    /**
     * The difference, which may be negative.
     *
     * @throws ArithmeticException if it is too great for a number
     */
    public final Q minus(Q other) {
        return make(base - other.base());
    }

    /**
     * The value taken a number of times.
     *
     * @throws ArithmeticException if the factor is not finite or the product too great for a number
     */
    public final Q times(double factor) {
        return make(base * factor);
    }

    /**
     * The plain ratio of this value to another of the same kind.
     *
     * @throws ArithmeticException if the other is zero, or the ratio is too great for a number
     */
    public final double per(Q other) {
        double ratio = base / other.base();
        if (!Double.isFinite(ratio)) {
            throw new ArithmeticException(this + " has no ratio to " + other);
        }
        return ratio;
    }

    @Override
    public final int compareTo(Q other) {
        return Double.compare(base, other.base());
    }

    @Override
    public final boolean equals(Object other) {
        return other != null && other.getClass() == getClass() && Double.compare(((Quantity<?>) other).base, base) == 0;
    }

    @Override
    public final int hashCode() {
        return 31 * dimension.hashCode() + Double.hashCode(base);
    }

    /** The full number with the base unit, for diagnostics; pages and windows format values elsewhere. */
    @Override
    public final String toString() {
        return base + " " + Units.base(dimension);
    }
}
