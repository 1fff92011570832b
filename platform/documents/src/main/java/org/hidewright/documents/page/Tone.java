package org.hidewright.documents.page;

/**
 * The inks. There is one colour, and it means: look here before you cut. Printed in black and white it is as dark as
 * {@link #QUIET} or darker, and whatever bears it is told by its shape as well.
 */
public enum Tone {
    INK(0.10, 0.10, 0.10),
    /** Working, sources, captions; contrast on white above 6 to 1. */
    QUIET(0.36, 0.36, 0.36),
    /** Hairlines between rows. */
    HAIRLINE(0.68, 0.68, 0.68),
    /** Leather cut through. */
    LEATHER(0.88, 0.88, 0.88),
    /** Metal. */
    METAL(0.72, 0.72, 0.72),
    /** Rust; contrast on white above 6 to 1. */
    ACCENT(0.62, 0.20, 0.08),
    /** The sheet itself. */
    PAPER(1, 1, 1);

    private final float red;
    private final float green;
    private final float blue;

    Tone(double red, double green, double blue) {
        this.red = (float) red;
        this.green = (float) green;
        this.blue = (float) blue;
    }

    public float red() {
        return red;
    }

    public float green() {
        return green;
    }

    public float blue() {
        return blue;
    }

    /** A tone without colour, which may be set as plain grey. */
    public boolean isGrey() {
        return red == green && green == blue;
    }
}
