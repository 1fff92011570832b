package org.hidewright.api.item;

import java.util.List;
import java.util.Objects;

/** Stitch lines of parts that are sewn through each other. */
public final class Seam {
    private final String id;
    private final List<OnPart> lines;

    private Seam(String id, List<OnPart> lines) {
        this.id = Ids.of(id);
        this.lines = List.copyOf(lines);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("a seam has at least one line");
        }
    }

    /**
     * A seam.
     *
     * @param lines in the order of the stack, the side that is seen first; one line alone for a decorative row
     * @throws IllegalArgumentException if there is none
     */
    public static Seam of(String id, List<OnPart> lines) {
        return new Seam(id, lines);
    }

    /** Its name among the seams of the item. */
    public String id() {
        return id;
    }

    /** The stitch lines that lie on each other, in the order of the stack, the side that is seen first. */
    public List<OnPart> lines() {
        return lines;
    }

    /** Whether it holds parts together, and is not for looks alone. */
    public boolean joins() {
        return lines.size() > 1;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Seam seam && id.equals(seam.id) && lines.equals(seam.lines);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, lines);
    }

    @Override
    public String toString() {
        return "Seam[" + id + ", " + lines + "]";
    }
}
