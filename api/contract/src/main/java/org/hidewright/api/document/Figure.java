package org.hidewright.api.document;

import java.util.Objects;
import org.hidewright.api.drawing.Drawing;

/** A drawing on the page, with a caption. */
public final class Figure implements Block {
    private final Drawing drawing;
    private final String caption;
    private final String trueSize;
    private final String reduced;

    private Figure(Drawing drawing, String caption, String trueSize, String reduced) {
        this.drawing = Objects.requireNonNull(drawing, "drawing");
        this.caption = Objects.requireNonNull(caption, "caption");
        this.trueSize = Objects.requireNonNull(trueSize, "trueSize");
        this.reduced = Objects.requireNonNull(reduced, "reduced");
    }

    /** A drawing made as large as the place allows, never larger than life unless it is small. */
    public static Figure fitted(Drawing drawing, String caption) {
        return new Figure(drawing, caption, "", "");
    }

    /**
     * A drawing in true size, with squares to check the print against.
     *
     * @param trueSize said beside the squares: what they must measure, and how to print
     * @param reduced said instead where the drawing is larger than the page and had to be made smaller; no squares are
     *     drawn then
     */
    public static Figure trueSize(Drawing drawing, String caption, String trueSize, String reduced) {
        if (trueSize.isBlank() || reduced.isBlank()) {
            throw new IllegalArgumentException("a drawing in true size needs both its texts");
        }
        return new Figure(drawing, caption, trueSize, reduced);
    }

    /** What is shown. */
    public Drawing drawing() {
        return drawing;
    }

    /** Empty for none. */
    public String caption() {
        return caption;
    }

    /** Whether it is printed in true size, not made to fit. */
    public boolean isTrueSize() {
        return !trueSize.isEmpty();
    }

    /** Text beside the check squares; empty for a fitted drawing. */
    public String trueSizeText() {
        return trueSize;
    }

    /** Text where true size was not possible; empty for a fitted drawing. */
    public String reducedText() {
        return reduced;
    }
}
