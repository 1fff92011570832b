package org.hidewright.straps.geometry;

/**
 * Layers lying on each other; hardware is not counted.
 *
 * @param leatherMm thicknesses of all layers together
 * @param layers how many
 * @param glueMm one glue line
 */
public record Pile(double leatherMm, int layers, double glueMm) {
    /** Leather and the glue lines between the layers. */
    public double thicknessMm() {
        return leatherMm + (layers - 1) * glueMm;
    }

    /** The thicker of two. */
    public Pile thicker(Pile other) {
        return other.thicknessMm() > thicknessMm() ? other : this;
    }
}
