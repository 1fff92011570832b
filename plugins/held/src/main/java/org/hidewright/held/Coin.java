package org.hidewright.held;

/** Coins by what they are worth: Council Regulation (EU) No 729/2014, and the specifications of the US Mint. */
public enum Coin {
    EURO_CENT_1(16.25, 1.67),
    EURO_CENT_2(18.75, 1.67),
    EURO_CENT_5(21.25, 1.67),
    EURO_CENT_10(19.75, 1.93),
    EURO_CENT_20(22.25, 2.14),
    EURO_CENT_50(24.25, 2.38),
    EURO_1(23.25, 2.33),
    EURO_2(25.75, 2.2),
    US_CENT(19.05, 1.52),
    US_5_CENTS(21.209, 1.95),
    US_DIME(17.907, 1.35),
    US_QUARTER(24.257, 1.75),
    US_HALF_DOLLAR(30.607, 2.15),
    US_DOLLAR(26.4922, 2.0);

    private final double diameter;
    private final double thickness;

    Coin(double diameter, double thickness) {
        this.diameter = diameter;
        this.thickness = thickness;
    }

    /** Millimetres. */
    double diameter() {
        return diameter;
    }

    /** Millimetres. */
    double thickness() {
        return thickness;
    }
}
