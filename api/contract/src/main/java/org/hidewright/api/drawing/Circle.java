package org.hidewright.api.drawing;

import java.util.List;
import java.util.Objects;

/** A full circle: a hole to punch, a bar seen from its end, a place to mark. */
public final class Circle extends Value implements Shape {
    private final Role role;
    private final Point centre;
    private final double diameter;

    private Circle(Role role, Point centre, double diameter) {
        this.role = Objects.requireNonNull(role, "role");
        this.centre = Objects.requireNonNull(centre, "centre");
        this.diameter = above0(diameter, "diameter");
    }

    /** @throws IllegalArgumentException if the diameter is not above 0 */
    public static Circle of(Role role, Point centre, double diameterMm) {
        return new Circle(role, centre, diameterMm);
    }

    /** A punched hole. */
    public static Circle hole(Point centre, double diameterMm) {
        return new Circle(Role.INNER_CUT, centre, diameterMm);
    }

    @Override
    public Role role() {
        return role;
    }

    /** Its middle. */
    public Point centre() {
        return centre;
    }

    /** Across, in millimetres. */
    public double diameter() {
        return diameter;
    }

    @Override
    public Box bounds() {
        return Box.around(centre).grown(diameter / 2);
    }

    @Override
    List<Object> parts() {
        return List.of(role, centre, diameter);
    }
}
