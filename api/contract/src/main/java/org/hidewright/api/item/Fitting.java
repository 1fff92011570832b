package org.hidewright.api.item;

import java.util.List;
import java.util.Objects;

/**
 * Hardware that is set into an item: a fastener that goes through holes of parts, or something that leather holds without a hole
 * of its own, as a ring in its tab.
 */
public final class Fitting {
    private final String id;
    private final String name;
    private final List<OnPart> holes;

    private Fitting(String id, String name, List<OnPart> holes) {
        this.id = Ids.of(id);
        this.name = Ids.of(name);
        this.holes = List.copyOf(holes);
    }

    /**
     * A piece of hardware.
     *
     * @param name what it is, as it is to be read
     * @param holes in the order of the stack, the side that is seen first; none where leather alone holds it
     */
    public static Fitting of(String id, String name, List<OnPart> holes) {
        return new Fitting(id, name, holes);
    }

    /** Its name among the fittings of the item. */
    public String id() {
        return id;
    }

    /** What it is, as it is printed. */
    public String name() {
        return name;
    }

    /** The holes it goes through, in the order of the stack, the side that is seen first. */
    public List<OnPart> holes() {
        return holes;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fitting fitting
                && id.equals(fitting.id)
                && name.equals(fitting.name)
                && holes.equals(fitting.holes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, name, holes);
    }

    @Override
    public String toString() {
        return "Fitting[" + id + ", " + name + ", " + holes + "]";
    }
}
