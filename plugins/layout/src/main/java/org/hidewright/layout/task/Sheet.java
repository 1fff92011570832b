package org.hidewright.layout.task;

import java.util.List;

/**
 * A panel, a strip or a hide to cut from.
 *
 * @param holes where there is no leather
 * @param cost what it costs to take it, in any unit
 */
public record Sheet(String name, Outline outline, List<Outline> holes, List<Zone> zones, double cost) {
    public Sheet {
        holes = List.copyOf(holes);
        zones = List.copyOf(zones);
    }

    /** A sheet without holes or faults. */
    public static Sheet plain(String name, Outline outline) {
        return new Sheet(name, outline, List.of(), List.of(), 1);
    }

    /** What can be cut from: the area within the outline less that of the holes. */
    public double area() {
        return outline.area() - holes.stream().mapToDouble(Outline::area).sum();
    }
}
