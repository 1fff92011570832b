package org.hidewright.api.calculator;

import java.util.Objects;

/**
 * A formula in symbols, {@code L = θ · (r + k · t)}, with its source. Its name is the message {@code formula.KEY}.
 *
 * <p>The host prints it, and prints it again with the numbers of a {@link Working} step in place of the symbols; so
 * every symbol stands alone, between spaces, brackets or operators.
 */
public final class Formula {
    private final String key;
    private final String symbols;
    private final Source source;

    private Formula(String key, String symbols, Source source) {
        this.key = Objects.requireNonNull(key, "key");
        this.symbols = Objects.requireNonNull(symbols, "symbols");
        this.source = Objects.requireNonNull(source, "source");
    }

    /** A formula, written in symbols that each stand alone, such as {@code L = 2 · t}. */
    public static Formula of(String key, String symbols, Source source) {
        return new Formula(key, symbols, source);
    }

    /** Its key: the text {@code formula.KEY} is its name. */
    public String key() {
        return key;
    }

    /** As it is written in symbols. */
    public String symbols() {
        return symbols;
    }

    /** Where it comes from. */
    public Source source() {
        return source;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Formula
                && ((Formula) other).key.equals(key)
                && ((Formula) other).symbols.equals(symbols)
                && ((Formula) other).source.equals(source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(key, symbols, source);
    }

    @Override
    public String toString() {
        return key + ": " + symbols;
    }
}
