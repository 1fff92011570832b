package org.hidewright.layout.engine;

import java.util.List;

/**
 * The parts on one sheet, by their numbers, and where they lie.
 *
 * @param area of all parts
 */
record Stack(List<Integer> parts, Places places, double area) {
    static final Stack EMPTY = new Stack(List.of(), new Places(0), 0);

    Stack {
        parts = List.copyOf(parts);
    }
}
