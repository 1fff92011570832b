package org.hidewright.held;

/** Cards by name: ISO/IEC 7810 at the upper end of its tolerances, and sizes of habit. */
public enum Card {
    ID_1(85.72, 54.03, 0.84),
    ID_2(105.1, 74.1, 0.84),
    ID_000(25.1, 15.1, 0.84),
    BUSINESS_EUROPE(85, 55, 0.5),
    BUSINESS_US(88.9, 50.8, 0.5),
    PLAYING(88.9, 63.5, 0.3);

    private final double width;
    private final double height;
    private final double thickness;

    Card(double width, double height, double thickness) {
        this.width = width;
        this.height = height;
        this.thickness = thickness;
    }

    /** Millimetres. */
    double width() {
        return width;
    }

    /** Millimetres. */
    double height() {
        return height;
    }

    /** Millimetres. */
    double thickness() {
        return thickness;
    }
}
