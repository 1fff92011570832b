package org.hidewright.core.paper;

import java.util.Arrays;
import java.util.Optional;

/** A sheet of paper, upright. */
public enum Paper {
    /** ISO 216. */
    A4("A4", 210, 297),
    /** ANSI/ASME Y14.1, size A: 8 1/2 by 11 inches. */
    LETTER("Letter", 215.9, 279.4),
    /** ANSI/ASME Y14.1, size B: 11 by 17 inches. */
    TABLOID("Tabloid", 279.4, 431.8),
    /** ISO 216, as those that follow. */
    A3("A3", 297, 420),
    A2("A2", 420, 594),
    A1("A1", 594, 841),
    A0("A0", 841, 1189);

    private final String title;

    private final double widthMm;
    private final double heightMm;

    Paper(String title, double widthMm, double heightMm) {
        this.title = title;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** The sheet of this name, in letters of either case. */
    public static Optional<Paper> of(String name) {
        return Arrays.stream(values())
                .filter(paper -> paper.name().equalsIgnoreCase(name))
                .findFirst();
    }

    /** As a maker writes it. */
    public String title() {
        return title;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
