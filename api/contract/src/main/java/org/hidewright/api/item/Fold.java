package org.hidewright.api.item;

import java.util.Objects;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;

/** A line a part is folded along. */
public final class Fold {
    private final String id;
    private final Path line;
    private final double insideRadius;
    private final Face outside;

    private Fold(String id, Path line, double insideRadius, Face outside) {
        this.id = Ids.of(id);
        this.line = Objects.requireNonNull(line, "line");
        this.insideRadius = Ids.atLeast0(insideRadius, "the radius of a fold");
        this.outside = Objects.requireNonNull(outside, "outside");
        if (line.role() != Role.FOLD) {
            throw new IllegalArgumentException("a fold is drawn as one, not as " + line.role());
        }
    }

    /**
     * A fold.
     *
     * @param line its middle, of role {@link Role#FOLD}
     * @param insideRadiusMm radius of what it is folded round, 0 for flat on itself
     * @param outside the face that is seen when it is folded
     * @throws IllegalArgumentException if the line has another role, or the radius is below 0
     */
    public static Fold of(String id, Path line, double insideRadiusMm, Face outside) {
        return new Fold(id, line, insideRadiusMm, outside);
    }

    /** Its name among the folds of the part. */
    public String id() {
        return id;
    }

    /** Where the part is folded. */
    public Path line() {
        return line;
    }

    /** Millimetres. */
    public double insideRadius() {
        return insideRadius;
    }

    /** The face that is seen when it is folded. */
    public Face outside() {
        return outside;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fold fold
                && id.equals(fold.id)
                && line.equals(fold.line)
                && insideRadius == fold.insideRadius
                && outside == fold.outside;
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, line, insideRadius, outside);
    }

    @Override
    public String toString() {
        return "Fold[" + id + ", round " + insideRadius + ", " + outside + " outside]";
    }
}
