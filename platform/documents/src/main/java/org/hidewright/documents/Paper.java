package org.hidewright.documents;

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

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
