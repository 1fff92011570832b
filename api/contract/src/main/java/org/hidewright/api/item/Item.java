package org.hidewright.api.item;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A thing to make: its parts, the seams that hold them together, the fittings that go through them, and what is done to make
 * it.
 */
public final class Item {
    private final List<Part> parts;
    private final List<Seam> seams;
    private final List<Fitting> fittings;
    private final List<Operation> operations;

    private Item(Builder builder) {
        this.parts = Ids.distinct(builder.parts, Part::id);
        this.seams = Ids.distinct(builder.seams, Seam::id);
        this.fittings = Ids.distinct(builder.fittings, Fitting::id);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("an item has at least one part");
        }
        seams.stream().flatMap(seam -> seam.lines().stream()).forEach(on -> must("stitch line", on, stitchLine(on)));
        fittings.stream().flatMap(fitting -> fitting.holes().stream()).forEach(on -> must("hole", on, hole(on)));
        this.operations = WorkOrder.of(Ids.distinct(builder.operations, Operation::id))
                .orElseThrow(() -> new IllegalArgumentException("operations wait for each other in a circle"));
        operations.forEach(this::must);
    }

    private static void must(String what, OnPart on, Optional<?> found) {
        if (found.isEmpty()) {
            throw new IllegalArgumentException("there is no " + what + " " + on);
        }
    }

    private void must(Operation operation) {
        Set<String> things = new HashSet<>();
        parts.forEach(part -> things.add(part.id()));
        seams.forEach(seam -> things.add(seam.id()));
        fittings.forEach(fitting -> things.add(fitting.id()));
        Set<String> others = new HashSet<>();
        operations.forEach(other -> others.add(other.id()));
        if (!things.containsAll(operation.on()) || !others.containsAll(operation.after())) {
            throw new IllegalArgumentException(operation + " names something that is not there");
        }
    }

    /** An item to be made, without a part. */
    public static Builder builder() {
        return new Builder();
    }

    /** What is cut, in the order it was added. */
    public List<Part> parts() {
        return parts;
    }

    /** What is sewn. */
    public List<Seam> seams() {
        return seams;
    }

    /** Its fasteners. */
    public List<Fitting> fittings() {
        return fittings;
    }

    /** What is done to make it, in an order that works. */
    public List<Operation> operations() {
        return operations;
    }

    /** The part with an id; empty where there is none. */
    public Optional<Part> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    /** The stitch line of a part; empty where there is none of that name. */
    public Optional<StitchLine> stitchLine(OnPart on) {
        return part(on.part()).stream()
                .flatMap(part -> part.stitchLines().stream())
                .filter(line -> line.id().equals(on.id()))
                .findFirst();
    }

    /** The hole of a part; empty where there is none of that name. */
    public Optional<Hole> hole(OnPart on) {
        return part(on.part()).stream()
                .flatMap(part -> part.holes().stream())
                .filter(hole -> hole.id().equals(on.id()))
                .findFirst();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Item item
                && parts.equals(item.parts)
                && seams.equals(item.seams)
                && fittings.equals(item.fittings)
                && operations.equals(item.operations);
    }

    @Override
    public int hashCode() {
        return Objects.hash(parts, seams, fittings, operations);
    }

    @Override
    public String toString() {
        return "Item" + parts;
    }

    /** Adds parts, then what goes through them; not for use by several threads. */
    public static final class Builder {
        private final List<Part> parts = new ArrayList<>();
        private final List<Seam> seams = new ArrayList<>();
        private final List<Fitting> fittings = new ArrayList<>();
        private final List<Operation> operations = new ArrayList<>();

        private Builder() {}

        /** Adds a part. */
        public Builder part(Part part) {
            parts.add(Objects.requireNonNull(part, "part"));
            return this;
        }

        /** Adds a seam. */
        public Builder seam(Seam seam) {
            seams.add(Objects.requireNonNull(seam, "seam"));
            return this;
        }

        /** Adds a fastener. */
        public Builder fitting(Fitting fitting) {
            fittings.add(Objects.requireNonNull(fitting, "fitting"));
            return this;
        }

        /** Adds an operation. */
        public Builder operation(Operation operation) {
            operations.add(Objects.requireNonNull(operation, "operation"));
            return this;
        }

        /**
         * @throws IllegalArgumentException if there is no part, an id is there twice, a seam, fitting or operation names
         *     something that is not there, or operations wait for each other in a circle
         */
        public Item build() {
            return new Item(this);
        }
    }
}
