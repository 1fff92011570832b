package org.hidewright.api.item;

import java.util.Objects;

/** A stretch of a part's outline that is finished in one way. */
public final class Edge {
    private final String id;
    private final String kind;
    private final double from;
    private final double to;

    private Edge(String id, String kind, double from, double to) {
        this.id = Ids.of(id);
        this.kind = Ids.of(kind);
        this.from = Ids.atLeast0(from, "the start of an edge");
        this.to = Ids.atLeast0(to, "the end of an edge");
    }

    /**
     * An edge between two lengths along the outline, counted from its start.
     *
     * @param kind one word for all edges that are finished alike, such as {@code mouth}
     * @param toMm not after the start where the edge runs over the outline's start; the same for all the way round
     */
    public static Edge of(String id, String kind, double fromMm, double toMm) {
        return new Edge(id, kind, fromMm, toMm);
    }

    /** Its name among the edges of the part. */
    public String id() {
        return id;
    }

    /** One word for all edges that are finished alike. */
    public String kind() {
        return kind;
    }

    /** Millimetres along the outline. */
    public double from() {
        return from;
    }

    /** Millimetres along the outline. */
    public double to() {
        return to;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Edge edge
                && id.equals(edge.id)
                && kind.equals(edge.kind)
                && from == edge.from
                && to == edge.to;
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, kind, from, to);
    }

    @Override
    public String toString() {
        return "Edge[" + id + ", " + kind + ", " + from + " to " + to + "]";
    }
}
