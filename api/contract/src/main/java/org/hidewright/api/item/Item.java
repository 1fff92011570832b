package org.hidewright.api.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A thing to make: its parts, the seams that hold them together and the fittings that go through them. */
public final class Item {
    private final List<Part> parts;
    private final List<Seam> seams;
    private final List<Fitting> fittings;

    private Item(Builder builder) {
        this.parts = Ids.distinct(builder.parts, Part::id);
        this.seams = Ids.distinct(builder.seams, Seam::id);
        this.fittings = Ids.distinct(builder.fittings, Fitting::id);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("an item has at least one part");
        }
        seams.stream().flatMap(seam -> seam.lines().stream()).forEach(on -> must("stitch line", on, stitchLine(on)));
        fittings.stream().flatMap(fitting -> fitting.holes().stream()).forEach(on -> must("hole", on, hole(on)));
    }

    private static void must(String what, OnPart on, Optional<?> found) {
        if (found.isEmpty()) {
            throw new IllegalArgumentException("there is no " + what + " " + on);
        }
    }

    public static Builder builder() {
        return new Builder();
    }

    public List<Part> parts() {
        return parts;
    }

    public List<Seam> seams() {
        return seams;
    }

    public List<Fitting> fittings() {
        return fittings;
    }

    public Optional<Part> part(String id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }

    public Optional<StitchLine> stitchLine(OnPart on) {
        return part(on.part()).stream()
                .flatMap(part -> part.stitchLines().stream())
                .filter(line -> line.id().equals(on.id()))
                .findFirst();
    }

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
                && fittings.equals(item.fittings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(parts, seams, fittings);
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

        private Builder() {}

        public Builder part(Part part) {
            parts.add(Objects.requireNonNull(part, "part"));
            return this;
        }

        public Builder seam(Seam seam) {
            seams.add(Objects.requireNonNull(seam, "seam"));
            return this;
        }

        public Builder fitting(Fitting fitting) {
            fittings.add(Objects.requireNonNull(fitting, "fitting"));
            return this;
        }

        /**
         * @throws IllegalArgumentException if there is no part, an id is there twice, or a seam or fitting names something
         *     that is not on a part
         */
        public Item build() {
            return new Item(this);
        }
    }
}
