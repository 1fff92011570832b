package org.hidewright.api.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * One quantity as the maker typed it and as it was understood.
 *
 * <p>The typed text is kept exactly; the numbers are in the base unit of the dimension. Two of them are equal when text
 * and understanding are equal.
 */
public final class Typed {
    /** Enough digits for any typed number, few enough to hide the last bit of a conversion. */
    private static final MathContext ECHO_DIGITS = new MathContext(15);

    private static final int SPREAD_DIGITS = 13;

    private final String text;
    private final Spelling spelling;
    private final Range range;
    private final Unit unit;
    private final boolean unitTyped;

    private Typed(String text, Spelling spelling, Range range, Unit unit, boolean unitTyped) {
        this.text = Objects.requireNonNull(text, "text");
        this.spelling = Objects.requireNonNull(spelling, "spelling");
        this.range = Objects.requireNonNull(range, "range");
        this.unit = Objects.requireNonNull(unit, "unit");
        this.unitTyped = unitTyped;
    }

    /**
     * A quantity understood from a text.
     *
     * @param text the text, exactly as typed
     * @param spelling how it was typed
     * @param range limits and nominal value in base units
     * @param unit the unit typed, or the one assumed
     * @param unitTyped whether the text holds a unit for it
     */
    public static Typed of(String text, Spelling spelling, Range range, Unit unit, boolean unitTyped) {
        return new Typed(text, spelling, range, unit, unitTyped);
    }

    /** The text exactly as typed; for a side of a size or an element of a list its own part, without outer spaces. */
    public String text() {
        return text;
    }

    /** What is measured. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /** Limits and nominal value, in base units. */
    public Range range() {
        return range;
    }

    /** How it was typed. */
    public Spelling spelling() {
        return spelling;
    }

    /** The unit typed, the last one where two were; otherwise the one assumed. */
    public Unit unit() {
        return unit;
    }

    /** Whether a unit was typed for it, be it one that stands later in the text and holds for this number too. */
    public boolean unitTyped() {
        return unitTyped;
    }

    /**
     * The quantity as understood, with its unit, in a form that reads back alike: {@code 2-3 oz}, {@code 31 ± 0.5 mm},
     * {@code 0.09375 in}. Numbers have a decimal point in every language and up to 15 digits.
     */
    public String echo() {
        String numbers;
        if (spelling == Spelling.EXACT) {
            numbers = count(range.nominal());
        } else if (spelling == Spelling.PLUS_MINUS) {
            numbers = count(range.nominal()) + " ± " + spread();
        } else if (range.low() < 0) {
            numbers = count(range.low()) + " to " + count(range.high());
        } else {
            numbers = count(range.low()) + "-" + count(range.high());
        }
        return (numbers + " " + unit.symbol()).strip();
    }

    private String count(double base) {
        return plain(new BigDecimal(unit.fromBase(base)).round(ECHO_DIGITS));
    }

    /** The spread is a difference of limits, so it is good only to the last digits of the limits. */
    private String spread() {
        if (range.isExact()) {
            return "0";
        }
        double largest = unit.fromBase(Math.max(Math.abs(range.low()), Math.abs(range.high())));
        int scale = SPREAD_DIGITS - (int) Math.ceil(Math.log10(largest));
        return plain(new BigDecimal(unit.fromBase(range.halfWidth())).setScale(scale, RoundingMode.HALF_EVEN));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Typed that
                && text.equals(that.text)
                && spelling == that.spelling
                && range.equals(that.range)
                && unit.equals(that.unit)
                && unitTyped == that.unitTyped;
    }

    @Override
    public int hashCode() {
        return Objects.hash(text, spelling, range, unit, unitTyped);
    }

    @Override
    public String toString() {
        return "\"" + text + "\" read as " + echo();
    }
}
