package org.hidewright.api.measure;

/**
 * A length as the inch rule shows it: the nearest whole number and reduced fraction, for example {@code 1 5/64}.
 *
 * <p>Immutable. {@link #whole()} and {@link #numerator()} are never negative; the sign stands apart.
 */
public final class InchFraction {
    private final boolean negative;
    private final long whole;
    private final int numerator;
    private final int denominator;
    private final double errorMm;

    private InchFraction(Length length, long steps, int perInch) {
        int part = (int) (steps % perInch);
        int divisor = greatestCommonDivisor(part, perInch);
        this.negative = length.mm() < 0 && steps > 0;
        this.whole = steps / perInch;
        this.numerator = part / divisor;
        this.denominator = perInch / divisor;
        this.errorMm = toLength().mm() - length.mm();
    }

    /**
     * The fraction of an inch nearest to a length; a length half-way between two goes to the one farther from zero.
     *
     * @param denominator the finest division of the rule, usually 64
     * @throws IllegalArgumentException if the denominator is below 1
     * @throws ArithmeticException if the length is too great to be told apart in such steps
     */
    public static InchFraction nearest(Length length, int denominator) {
        if (denominator < 1) {
            throw new IllegalArgumentException("an inch is divided into at least 1 part, not " + denominator);
        }
        double steps = Math.abs(length.in(Units.INCH)) * denominator;
        if (steps >= 1L << 53) {
            throw new ArithmeticException(length + " is too great for steps of 1/" + denominator + " in");
        }
        return new InchFraction(length, Math.round(steps), denominator);
    }

    private static int greatestCommonDivisor(int a, int b) {
        return a == 0 ? b : greatestCommonDivisor(b % a, a);
    }

    /** Whether the fraction stands for a length below zero. */
    public boolean isNegative() {
        return negative;
    }

    /** Whole inches, at least 0. */
    public long whole() {
        return whole;
    }

    /** Numerator of the reduced fraction; 0 where the inches are whole. */
    public int numerator() {
        return numerator;
    }

    /** Denominator of the reduced fraction; 1 where the inches are whole. */
    public int denominator() {
        return denominator;
    }

    /** The length of the fraction itself. */
    public Length toLength() {
        double inches = whole + (double) numerator / denominator;
        return Length.of(negative ? -inches : inches, Units.INCH);
    }

    /** How far the fraction lies above the length it stands for, in millimetres; negative where it lies below. */
    public double errorMm() {
        return errorMm;
    }

    /** The fraction without its unit: {@code 1 5/64}, {@code 5/64}, {@code -2}, {@code 0}. */
    public String text() {
        String sign = negative ? "-" : "";
        if (numerator == 0) {
            return sign + whole;
        }
        String fraction = numerator + "/" + denominator;
        return sign + (whole == 0 ? fraction : whole + " " + fraction);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof InchFraction that && text().equals(that.text()) && errorMm == that.errorMm;
    }

    @Override
    public int hashCode() {
        return 31 * text().hashCode() + Double.hashCode(errorMm);
    }

    @Override
    public String toString() {
        return text() + " in";
    }
}
