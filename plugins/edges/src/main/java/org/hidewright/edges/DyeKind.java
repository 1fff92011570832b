package org.hidewright.edges;

/** What a dye is thinned with. */
public enum DyeKind {
    WATER(Coat.WATER_DYE),
    SPIRIT(Coat.SPIRIT_DYE),
    OIL(Coat.OIL_DYE);

    private final Coat coat;

    DyeKind(Coat coat) {
        this.coat = coat;
    }

    Coat coat() {
        return coat;
    }

    boolean burnsEasily() {
        return this != WATER;
    }
}
