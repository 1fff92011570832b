package org.hidewright.held;

/** Round and button cells by their designations in IEC 60086: greatest diameter and height. */
public enum Cell {
    R03(10.5, 44.5),
    R1(12.0, 30.2),
    R6(14.5, 50.5),
    R14(26.2, 50.0),
    R20(34.2, 61.5),
    R41(7.9, 3.6),
    R43(11.6, 4.2),
    R44(11.6, 5.4),
    R54(11.6, 3.05),
    CR2016(20, 1.6),
    CR2025(20, 2.5),
    CR2032(20, 3.2);

    private final double diameter;
    private final double height;

    Cell(double diameter, double height) {
        this.diameter = diameter;
        this.height = height;
    }

    /** Wider than high, and easily swallowed. */
    boolean isButton() {
        return diameter > height;
    }

    /** Millimetres. */
    double diameter() {
        return diameter;
    }

    /** Millimetres. */
    double height() {
        return height;
    }
}
