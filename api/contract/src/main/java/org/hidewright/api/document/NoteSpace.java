package org.hidewright.api.document;

import java.util.Objects;

/** Ruled lines, to write down what really came out. */
public final class NoteSpace implements Block {
    private final String label;
    private final int lines;

    private NoteSpace(String label, int lines) {
        if (lines < 1) {
            throw new IllegalArgumentException("a space for notes needs at least one line, not " + lines);
        }
        this.label = Objects.requireNonNull(label, "label");
        this.lines = lines;
    }

    /** @param lines number of ruled lines, at least 1 */
    public static NoteSpace of(String label, int lines) {
        return new NoteSpace(label, lines);
    }

    /** What is to be written there. */
    public String label() {
        return label;
    }

    /** How many lines are left free. */
    public int lines() {
        return lines;
    }
}
