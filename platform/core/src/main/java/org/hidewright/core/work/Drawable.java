package org.hidewright.core.work;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Shape;

/** Whether a drawing of a bundle can be laid out on a page. */
final class Drawable {
    static final int MOST_SHAPES = 50_000;

    /** Each text looks for a place of its own among all the others. */
    static final int MOST_TEXTS = 200;

    /** A kilometre: no strap is as long, and beyond the scales of a page are at their end. */
    private static final double FARTHEST_MM = 1e6;

    private static final double LARGEST_LETTER_MM = 1000;

    private Drawable() {}

    /**
     * Checks a drawing.
     *
     * @param name of the answer or figure
     * @throws org.hidewright.core.catalogue.BundleFault if there is too much of it, or it holds what cannot be put into
     *     words
     */
    static void check(String name, Drawing drawing) {
        int parts = 0;
        int texts = 0;
        for (Shape shape : drawing.shapes()) {
            parts += shape instanceof Path path ? path.segments().size() : 1;
            if (shape instanceof Label label) {
                Sayable.check(List.of(label.words()));
                checkLetters(name, label.height());
                texts++;
            } else if (shape instanceof DimensionLine line) {
                Sayable.check(List.of(line.words()));
                checkLetters(name, line.height());
                texts++;
            }
        }
        if (parts > MOST_SHAPES) {
            throw Nonsense.of("shapes", name, parts, MOST_SHAPES);
        }
        if (texts > MOST_TEXTS) {
            throw Nonsense.of("labels", name, texts, MOST_TEXTS);
        }
        Box box = drawing.bounds();
        if (!(Math.max(Math.max(-box.minX(), box.maxX()), Math.max(-box.minY(), box.maxY())) <= FARTHEST_MM)) {
            throw Nonsense.of("far", name, FARTHEST_MM / 1000);
        }
    }

    private static void checkLetters(String name, double heightMm) {
        if (heightMm > LARGEST_LETTER_MM) {
            throw Nonsense.of("letters", name, LARGEST_LETTER_MM);
        }
    }
}
