package org.hidewright.api.measure;

/**
 * Two limits and the value worked with between them, all in the base unit of one dimension.
 *
 * <p>Immutable. An exact value is a range whose limits are equal. Limits are finite and never reversed; a negative zero
 * is held as zero, so that equal ranges are equal objects.
 */
public final class Range {
    private final double low;
    private final double high;
    private final double nominal;

    private Range(double low, double nominal, double high) {
        if (!Double.isFinite(low) || !Double.isFinite(high) || !Double.isFinite(nominal)) {
            throw new ArithmeticException("a range needs finite limits, not " + low + " to " + high);
        }
        this.low = low + 0.0;
        this.nominal = nominal + 0.0;
        this.high = high + 0.0;
    }

    /**
     * One value without spread.
     *
     * @throws ArithmeticException if the value is not finite
     */
    public static Range exact(double value) {
        return new Range(value, value, value);
    }

    /**
     * A range given by its limits; the nominal value is the midpoint.
     *
     * @throws ArithmeticException if a limit is not finite
     * @throws IllegalArgumentException if {@code low} lies above {@code high}
     */
    public static Range between(double low, double high) {
        if (low > high) {
            throw new IllegalArgumentException("the lower limit " + low + " lies above the upper limit " + high);
        }
        return new Range(low, 0.5 * low + 0.5 * high, high);
    }

    /**
     * A range given by its nominal value and the distance to either limit.
     *
     * @throws ArithmeticException if a limit is not finite
     * @throws IllegalArgumentException if {@code half} is negative
     */
    public static Range plusMinus(double nominal, double half) {
        if (half < 0) {
            throw new IllegalArgumentException("the distance to a limit must not be negative: " + half);
        }
        return new Range(nominal - half, nominal, nominal + half);
    }

    /** The lower limit, in base units. */
    public double low() {
        return low;
    }

    /** The upper limit, in base units. */
    public double high() {
        return high;
    }

    /** The value worked with where no range is carried: the midpoint, or the one stated. */
    public double nominal() {
        return nominal;
    }

    /** Half the distance between the limits, in base units. */
    public double halfWidth() {
        return 0.5 * high - 0.5 * low;
    }

    /** Whether both limits are the same number. */
    public boolean isExact() {
        return low == high;
    }

    /** Whether a value lies within the limits, limits included. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Range that && low == that.low && nominal == that.nominal && high == that.high;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Double.hashCode(low) + Double.hashCode(nominal)) + Double.hashCode(high);
    }

    /** The full numbers, for diagnostics. */
    @Override
    public String toString() {
        return isExact() ? String.valueOf(nominal) : low + " to " + high + " (nominal " + nominal + ")";
    }
}
