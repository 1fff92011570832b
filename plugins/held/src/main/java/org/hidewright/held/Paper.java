package org.hidewright.held;

/** Sheets by name: ISO 216 (A, B), ISO 269 (C), ANSI/ASME Y14.1 (letter), and legal. */
public enum Paper {
    A3(297, 420),
    A4(210, 297),
    A5(148, 210),
    A6(105, 148),
    A7(74, 105),
    A8(52, 74),
    B4(250, 353),
    B5(176, 250),
    B6(125, 176),
    B7(88, 125),
    C4(229, 324),
    C5(162, 229),
    C6(114, 162),
    LETTER(215.9, 279.4),
    LEGAL(215.9, 355.6);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Millimetres. */
    double width() {
        return width;
    }

    /** Millimetres. */
    double height() {
        return height;
    }
}
