package org.hidewright.api.measure;

import java.util.List;
import java.util.Objects;

/**
 * A unit of measure: its symbol as printed, other spellings that are read alike, and its size in the base unit of its
 * dimension.
 *
 * <p>The units known are the constants of {@link Units}; a unit compares by identity of dimension and symbol.
 */
public final class Unit {
    private final Dimension dimension;
    private final String symbol;
    private final double times;
    private final double over;
    private final List<String> spellings;

    private Unit(Dimension dimension, String symbol, double times, double over, List<String> spellings) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.times = times;
        this.over = over;
        this.spellings = spellings;
    }

    /**
     * A unit of {@code times / over} base units. Kept as two numbers, exact in binary, so that 1 1/2 in is 38.1 mm and
     * 3 oz are 1.190625 mm to the last digit.
     */
    static Unit of(Dimension dimension, String symbol, double times, double over, String... spellings) {
        double inBase = times / over;
        if (!(inBase > 0) || Double.isInfinite(inBase)) {
            throw new IllegalArgumentException("unit " + symbol + " must have a size above 0, not " + inBase);
        }
        return new Unit(dimension, symbol, times, over, List.of(spellings));
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The symbol as printed, for example {@code mm}; empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /** How many base units one of this unit is, for example 25.4 for the inch. */
    public double inBase() {
        return times / over;
    }

    /** Other spellings read as this unit, in the order they are documented. */
    public List<String> spellings() {
        return spellings;
    }

    /** Converts a number counted in this unit to base units. */
    public double toBase(double value) {
        return value * times / over;
    }

    /** Converts a number of base units to this unit. */
    public double fromBase(double base) {
        return base * over / times;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unit && ((Unit) other).dimension == dimension && ((Unit) other).symbol.equals(symbol);
    }

    @Override
    public int hashCode() {
        return Objects.hash(dimension, symbol);
    }

    @Override
    public String toString() {
        return symbol.isEmpty() ? "number" : symbol;
    }
}
