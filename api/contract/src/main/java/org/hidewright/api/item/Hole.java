package org.hidewright.api.item;

import java.util.Objects;
import org.hidewright.api.drawing.Point;

/** A round hole punched through a part. */
public final class Hole {
    private final String id;
    private final Point centre;
    private final double diameter;

    private Hole(String id, Point centre, double diameter) {
        this.id = Ids.of(id);
        this.centre = Objects.requireNonNull(centre, "centre");
        this.diameter = Ids.above0(diameter, "a hole");
    }

    /** @throws IllegalArgumentException if the diameter is not above 0 */
    public static Hole of(String id, Point centre, double diameterMm) {
        return new Hole(id, centre, diameterMm);
    }

    /** Its name among the holes of the part. */
    public String id() {
        return id;
    }

    /** Its middle. */
    public Point centre() {
        return centre;
    }

    /** Millimetres. */
    public double diameter() {
        return diameter;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Hole hole
                && id.equals(hole.id)
                && centre.equals(hole.centre)
                && diameter == hole.diameter;
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, centre, diameter);
    }

    @Override
    public String toString() {
        return "Hole[" + id + ", " + centre + ", " + diameter + "]";
    }
}
