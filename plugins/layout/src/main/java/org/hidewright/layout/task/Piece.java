package org.hidewright.layout.task;

import java.util.List;

/**
 * One thing to be cut.
 *
 * @param name what it is called where a fault is told
 * @param outline its outline, about a point of its own
 * @param turning the angles it may lie at
 * @param avoids the kinds of zones that may not lie under any of it, a bit for each, that of kind k being {@code 1L << k}
 * @param inner places within it that avoid more
 */
public record Piece(String name, Outline outline, Turning turning, long avoids, List<Inner> inner) {
    /** For a piece that avoids every zone. */
    public static final long ALL = -1L;

    public Piece {
        inner = List.copyOf(inner);
    }

    /** A piece that is the same all over. */
    public Piece(String name, Outline outline, Turning turning, long avoids) {
        this(name, outline, turning, avoids, List.of());
    }
}
