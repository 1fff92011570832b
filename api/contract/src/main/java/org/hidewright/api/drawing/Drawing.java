package org.hidewright.api.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Quantity;

/** Shapes on a sheet, in the order in which they are laid down; later ones lie on earlier ones. */
public final class Drawing extends Value {
    private final List<Shape> shapes;

    private Drawing(List<Shape> shapes) {
        if (shapes.isEmpty()) {
            throw new IllegalArgumentException("a drawing needs at least one shape");
        }
        this.shapes = List.copyOf(shapes);
    }

    /** @throws IllegalArgumentException if there is no shape */
    public static Drawing of(List<? extends Shape> shapes) {
        return new Drawing(List.copyOf(shapes));
    }

    /** A drawing to be made, with nothing on it. */
    public static Builder builder() {
        return new Builder();
    }

    /** In the order they were added; later ones lie over earlier ones. */
    public List<Shape> shapes() {
        return shapes;
    }

    /**
     * The same drawing with every phrase and quantity written out.
     *
     * @param wording puts a {@code Phrase} or a {@code Quantity} into words
     */
    public Drawing worded(Function<Object, String> wording) {
        return new Drawing(shapes.stream()
                .map(shape -> shape instanceof Label label
                        ? label.worded(wording)
                        : shape instanceof DimensionLine line ? line.worded(wording) : shape)
                .toList());
    }

    /** The smallest box round all shapes; texts count by an estimate of their length. */
    public Box bounds() {
        return shapes.stream().map(Shape::bounds).reduce(Box::with).orElseThrow();
    }

    @Override
    List<Object> parts() {
        return List.copyOf(shapes);
    }

    /** Lays shapes down one after the other; not for use by several threads. */
    public static final class Builder {
        private final List<Shape> shapes = new ArrayList<>();

        private Builder() {}

        /** Adds a shape over the others. */
        public Builder add(Shape shape) {
            shapes.add(Objects.requireNonNull(shape, "shape"));
            return this;
        }

        /** A straight line. */
        public Builder line(Role role, Point from, Point to) {
            return add(Path.line(role, from, to));
        }

        /** A rectangle; sides in millimetres. */
        public Builder rectangle(Role role, Point lowerLeft, double widthMm, double heightMm) {
            return add(Path.rectangle(role, lowerLeft, widthMm, heightMm));
        }

        /** A hole to be punched or drilled; its diameter in millimetres. */
        public Builder hole(Point centre, double diameterMm) {
            return add(Circle.hole(centre, diameterMm));
        }

        /** A text that is printed as it stands; the height of its letters in millimetres. */
        public Builder label(String text, Point at, Anchor anchor, double heightMm) {
            return add(Label.of(text, at, anchor, heightMm));
        }

        /** A line that tells how far two points are apart, with a text that is printed as it stands; lengths in millimetres. */
        public Builder dimension(Point from, Point to, double offsetMm, String text, double heightMm) {
            return add(DimensionLine.of(from, to, offsetMm, text, heightMm));
        }

        /** The same with a phrase, which is printed in the language asked for. */
        public Builder label(Phrase phrase, Point at, Anchor anchor, double heightMm) {
            return add(Label.of(phrase, at, anchor, heightMm));
        }

        /** The same with a quantity, which is printed in the maker’s units. */
        public Builder label(Quantity<?> value, Point at, Anchor anchor, double heightMm) {
            return add(Label.of(value, at, anchor, heightMm));
        }

        /** The same with a quantity, which is printed in the maker’s units. */
        public Builder dimension(Point from, Point to, double offsetMm, Quantity<?> value, double heightMm) {
            return add(DimensionLine.of(from, to, offsetMm, value, heightMm));
        }

        /** The same with a phrase, which is printed in the language asked for. */
        public Builder dimension(Point from, Point to, double offsetMm, Phrase phrase, double heightMm) {
            return add(DimensionLine.of(from, to, offsetMm, phrase, heightMm));
        }

        /** All shapes of another drawing, where they are. */
        public Builder all(Drawing other) {
            shapes.addAll(other.shapes());
            return this;
        }

        /** @throws IllegalArgumentException if nothing was added */
        public Drawing build() {
            return new Drawing(shapes);
        }
    }
}
