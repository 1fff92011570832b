package org.hidewright.api.measure;

/**
 * One number with the unit written after it, or {@code null} where none is. For {@code 5 ft 6 in} the count is in the
 * small unit and the number stretches up to its last digit.
 */
record Side(Count count, Unit unit, int end) {
    boolean hasUnit() {
        return unit != null;
    }

    int start() {
        return count.start();
    }
}
