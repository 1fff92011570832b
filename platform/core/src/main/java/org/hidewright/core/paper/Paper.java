package org.hidewright.core.paper;

import java.util.Arrays;
import java.util.Optional;

/** A sheet of paper, upright. */
public enum Paper {
    /** ISO 216. */
    A4(210, 297),
    /** ANSI/ASME Y14.1, size A: 8 1/2 by 11 inches. */
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** The sheet of this name, in letters of either case. */
    public static Optional<Paper> of(String name) {
        return Arrays.stream(values())
                .filter(paper -> paper.name().equalsIgnoreCase(name))
                .findFirst();
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
