package org.hidewright.core.picture;

import java.util.List;
import java.util.function.UnaryOperator;
import org.hidewright.api.drawing.Drawing;

/** A small drawing that questions can share: each shows what is of it, and what is of all. */
public final class Picture {
    private final List<PictureShape> shapes;

    Picture(List<PictureShape> shapes) {
        this.shapes = List.copyOf(shapes);
    }

    /** Whether anything in it is of a part. */
    public boolean has(String part) {
        return shapes.stream().anyMatch(shape -> shape.of().equals(part));
    }

    /**
     * It as it is drawn.
     *
     * @param part of what; empty for what is of all alone
     * @param words the words under a key; a measure without a key has none
     */
    public Drawing drawing(String part, UnaryOperator<String> words) {
        return Drawing.of(shapes.stream()
                .filter(shape -> shape.of().isEmpty() || shape.of().equals(part))
                .map(shape -> shape.shape().with(words))
                .toList());
    }
}
