package org.hidewright.core.json;

/**
 * A place in a text: line and column, both from 1.
 *
 * @param line from 1
 * @param column from 1, in characters
 */
public record Place(int line, int column) {
    /** Where every text begins. */
    public static final Place START = new Place(1, 1);

    /** A place in a piece of text, seen from the whole text in which the piece begins at a place. */
    public Place within(Place piece) {
        return line == 1 ? new Place(piece.line, piece.column + column - 1) : new Place(piece.line + line - 1, column);
    }

    /** A place in a whole text, seen from a piece that begins at or before it. */
    public Place from(Place piece) {
        return line == piece.line ? new Place(1, column - piece.column + 1) : new Place(line - piece.line + 1, column);
    }

    /** The place behind a text that begins here; its lines end as the parser ends them. */
    public Place behind(String text) {
        int lines = 0;
        int lineStart = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean first = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if ((c == '\n' || c == '\r') && !first) {
                lines++;
                lineStart = i + 1;
            }
        }
        return new Place(1 + lines, 1 + text.length() - lineStart).within(this);
    }

    @Override
    public String toString() {
        return line + ":" + column;
    }
}
