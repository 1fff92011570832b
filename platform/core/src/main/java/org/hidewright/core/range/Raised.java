package org.hidewright.core.range;

import java.util.List;

/**
 * Something told beside answers in parts of the ranges only.
 *
 * @param what as it was told where every input is nominal, else at the far end of the first part or where it was first met
 * @param parts of single inputs; empty where it was met only as several moved together
 */
public record Raised<R>(R what, List<Part> parts) {
    public Raised {
        parts = List.copyOf(parts);
    }
}
