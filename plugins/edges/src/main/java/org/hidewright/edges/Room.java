package org.hidewright.edges;

/** Where work is left to dry. */
public enum Room {
    /** About 20 °C and 50 % relative humidity. */
    USUAL(1),
    /** Over 70 % relative humidity or under 15 °C: times can double. */
    COLD_OR_DAMP(2);

    private final double factor;

    Room(double factor) {
        this.factor = factor;
    }

    double factor() {
        return factor;
    }

    Wait of(Wait usual) {
        return usual.times(factor);
    }
}
