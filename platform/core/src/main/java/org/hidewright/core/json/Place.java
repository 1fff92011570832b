package org.hidewright.core.json;

/**
 * A place in a text: line and column, both from 1.
 *
 * @param line from 1
 * @param column from 1, in characters
 */
public record Place(int line, int column) {
    @Override
    public String toString() {
        return line + ":" + column;
    }
}
