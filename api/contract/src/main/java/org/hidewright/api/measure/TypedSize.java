package org.hidewright.api.measure;

import java.util.Objects;

/** Two lengths typed together, width first as typed: {@code 8.5 x 11 in}. Either side may be a range. */
public final class TypedSize {
    private final String text;
    private final Typed width;
    private final Typed height;

    private TypedSize(String text, Typed width, Typed height) {
        this.text = Objects.requireNonNull(text, "text");
        this.width = length(width);
        this.height = length(height);
    }

    private static Typed length(Typed side) {
        if (side.dimension() != Dimension.LENGTH) {
            throw new IllegalArgumentException("a side is a length, not " + side);
        }
        return side;
    }

    /**
     * A size understood from a text.
     *
     * @throws IllegalArgumentException if a side is not a length
     */
    public static TypedSize of(String text, Typed width, Typed height) {
        return new TypedSize(text, width, height);
    }

    /** The text exactly as typed. */
    public String text() {
        return text;
    }

    /** The first side as typed. */
    public Typed width() {
        return width;
    }

    /** The second side as typed. */
    public Typed height() {
        return height;
    }

    /** Both sides at their nominal values. */
    public Size nominal() {
        return Size.of(
                Length.ofMm(width.range().nominal()), Length.ofMm(height.range().nominal()));
    }

    /** The size as understood, each side with its unit, in a form that reads back alike: {@code 8.5 in x 11 in}. */
    public String echo() {
        return width.echo() + " x " + height.echo();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TypedSize that
                && text.equals(that.text)
                && width.equals(that.width)
                && height.equals(that.height);
    }

    @Override
    public int hashCode() {
        return Objects.hash(text, width, height);
    }

    @Override
    public String toString() {
        return "\"" + text + "\" read as " + echo();
    }
}
