package org.hidewright.layout.engine;

import java.util.SplittableRandom;

/** What parts are laid on. */
interface Ground {
    double minX();

    double minY();

    double maxX();

    double maxY();

    /** How many sheets it has. */
    default int fields() {
        return 1;
    }

    /** Where a place is drawn: one of its sheets, where it has several. */
    default Ground field(SplittableRandom random) {
        return this;
    }

    /** The sheet on which a part lies whose point of reference lies there. */
    default Ground field(double x) {
        return this;
    }

    /**
     * How far a part lies off the ground: nought where it lies on it whole, else in the unit of {@link Meeting#depth}.
     */
    double outside(Turned part, double x, double y);
}
