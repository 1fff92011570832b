package org.hidewright.layout.engine;

/** What parts are laid on. */
interface Ground {
    double minX();

    double minY();

    double maxX();

    double maxY();

    /**
     * How far a part lies off the ground: nought where it lies on it whole, else in the unit of {@link Meeting#depth}.
     */
    double outside(Turned part, double x, double y);
}
