package org.hidewright.api.declaration;

import java.util.Objects;

/** A variant that was chosen, with the values of its questions. */
public final class Chosen {
    private final String variant;
    private final Values values;

    private Chosen(String variant, Values values) {
        this.variant = Objects.requireNonNull(variant, "variant");
        this.values = Objects.requireNonNull(values, "values");
    }

    /** A choice of one variant, by its key, with the values of its questions. */
    public static Chosen of(String variant, Values values) {
        return new Chosen(variant, values);
    }

    /** Key of the variant. */
    public String variant() {
        return variant;
    }

    /** The values of the questions of the variant that was chosen. */
    public Values values() {
        return values;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Chosen
                && ((Chosen) other).variant.equals(variant)
                && ((Chosen) other).values.equals(values);
    }

    @Override
    public int hashCode() {
        return Objects.hash(variant, values);
    }

    @Override
    public String toString() {
        return variant + values;
    }
}
