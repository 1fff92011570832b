package org.hidewright.edges;

/**
 * Kinds of work on edges and faces, in the order they are done within a stage: char goes first; what shows raw leather comes
 * before dye; dye before everything that closes the surface; wax last, and turned edges are folded when their face is
 * coloured. With each the usual minutes for a metre of edge, a · L + b · L · t (common practice); for faces, minutes for a
 * square metre.
 */
enum Work {
    CLEAN_CHAR(2, 1),
    SAND_FLUSH(2, 1.5),
    BEVEL(1, 0),
    SAND(1, 0.5),
    SKIVE_TURN(4, 0),
    DYE(1, 0.25, 60),
    BUFF(0, 0, 30),
    BURNISH(2, 1),
    PAINT(2, 0.5),
    /** Between two coats of paint. */
    SAND_PAINT(1, 0.25),
    SEAL(0, 0, 40),
    WAX(1, 0.25),
    CEMENT_TURN(1.5, 0),
    FOLD_TURN(4, 0),
    CHECK_MARGINS(0, 0),
    GLUE_AND_STITCH(0, 0);

    private final double perMetre;
    private final double perMetreAndMm;
    private final double perSquareMetre;

    Work(double perMetre, double perMetreAndMm) {
        this(perMetre, perMetreAndMm, 0);
    }

    Work(double perMetre, double perMetreAndMm, double perSquareMetre) {
        this.perMetre = perMetre;
        this.perMetreAndMm = perMetreAndMm;
        this.perSquareMetre = perSquareMetre;
    }

    /** Minutes for a metre of edge, whatever its thickness. */
    double perMetre() {
        return perMetre;
    }

    /** Minutes for a metre of edge and each millimetre of thickness. */
    double perMetreAndMm() {
        return perMetreAndMm;
    }

    /** Minutes for a square metre of face. */
    double perSquareMetre() {
        return perSquareMetre;
    }

    /** Paint and the sanding between its coats take turns. */
    Work phase() {
        return this == SAND_PAINT ? PAINT : this;
    }

    boolean makesDust() {
        return this == CLEAN_CHAR || this == SAND_FLUSH || this == SAND || this == SAND_PAINT;
    }

    boolean needsABlade() {
        return this == BEVEL || this == SKIVE_TURN;
    }
}
