package org.hidewright.api.geometry;

/** Where two stretches meet, as the parameter on each. */
record Crossing(double first, double second) {
    Crossing swapped() {
        return new Crossing(second, first);
    }
}
