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

    public static Builder builder() {
        return new Builder();
    }

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

        public Builder add(Shape shape) {
            shapes.add(Objects.requireNonNull(shape, "shape"));
            return this;
        }

        public Builder line(Role role, Point from, Point to) {
            return add(Path.line(role, from, to));
        }

        public Builder rectangle(Role role, Point lowerLeft, double widthMm, double heightMm) {
            return add(Path.rectangle(role, lowerLeft, widthMm, heightMm));
        }

        public Builder hole(Point centre, double diameterMm) {
            return add(Circle.hole(centre, diameterMm));
        }

        public Builder label(String text, Point at, Anchor anchor, double heightMm) {
            return add(Label.of(text, at, anchor, heightMm));
        }

        public Builder dimension(Point from, Point to, double offsetMm, String text, double heightMm) {
            return add(DimensionLine.of(from, to, offsetMm, text, heightMm));
        }

        public Builder label(Phrase phrase, Point at, Anchor anchor, double heightMm) {
            return add(Label.of(phrase, at, anchor, heightMm));
        }

        public Builder label(Quantity<?> value, Point at, Anchor anchor, double heightMm) {
            return add(Label.of(value, at, anchor, heightMm));
        }

        public Builder dimension(Point from, Point to, double offsetMm, Quantity<?> value, double heightMm) {
            return add(DimensionLine.of(from, to, offsetMm, value, heightMm));
        }

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
