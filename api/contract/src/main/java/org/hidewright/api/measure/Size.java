package org.hidewright.api.measure;

import java.util.Objects;

/** Two lengths given together, width first as typed: {@code 8.5 x 11 in}. */
public final class Size {
    private final Length width;
    private final Length height;

    private Size(Length width, Length height) {
        this.width = width;
        this.height = height;
    }

    /** A size of two sides. */
    public static Size of(Length width, Length height) {
        return new Size(Objects.requireNonNull(width, "width"), Objects.requireNonNull(height, "height"));
    }

    /** The first side. */
    public Length width() {
        return width;
    }

    /** The second side. */
    public Length height() {
        return height;
    }

    /** Width times height. */
    public Area area() {
        return Area.ofMm2(width.mm() * height.mm());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Size && ((Size) other).width.equals(width) && ((Size) other).height.equals(height);
    }

    @Override
    public int hashCode() {
        return Objects.hash(width, height);
    }

    @Override
    public String toString() {
        return width + " x " + height;
    }
}
