package org.hidewright.edges;

import java.util.Locale;

/** What comes out of a bottle, with what a coat takes of it where no label says; named like the workshop’s liquids. */
public enum Liquid {
    DYE(120),
    GLUE(150),
    EDGE_PAINT(300),
    BURNISHING(100),
    WAX(50),
    SEALER(80),
    STAIN(120),
    CONDITIONER(80),
    THINNER(0),
    OTHER(0);

    private final double mlPerSquareMetre;

    Liquid(double mlPerSquareMetre) {
        this.mlPerSquareMetre = mlPerSquareMetre;
    }

    /** Millilitres for a coat on a square metre; from memory. */
    double mlPerSquareMetre() {
        return mlPerSquareMetre;
    }

    /** Its name in files, the same as in the workshop’s table. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
