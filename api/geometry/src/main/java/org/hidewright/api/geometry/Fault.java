package org.hidewright.api.geometry;

import java.util.Objects;
import org.hidewright.api.drawing.Point;

/** Something wrong with an edge, and where. */
public final class Fault {
    /** What can be wrong; more may be added, so keep a default branch. */
    public enum Kind {
        /** The curve comes back to a place where it was already. */
        CROSSES_ITSELF,
        /** The curve turns round and goes back on its own line. */
        TURNS_BACK,
        /** A segment shorter than 0.01 mm. */
        TOO_SHORT,
        /** A hole outside the piece. */
        HOLE_OUTSIDE,
        /** A hole over the edge of the piece. */
        HOLE_CROSSES_EDGE,
        /** Two holes over each other, or one in the other. */
        HOLES_CROSS
    }

    private final Kind kind;
    private final Point place;

    Fault(Kind kind, Point place) {
        this.kind = kind;
        this.place = place;
    }

    /** What is wrong. */
    public Kind kind() {
        return kind;
    }

    /** Where. */
    public Point place() {
        return place;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fault fault && kind == fault.kind && place.equals(fault.place);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, place);
    }

    @Override
    public String toString() {
        return kind + " at " + place;
    }
}
