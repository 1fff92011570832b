package org.hidewright.api.item;

import java.util.List;
import java.util.Objects;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;

/** A line of stitches on a part, with the places of its holes. */
public final class StitchLine {
    private final String id;
    private final Path line;
    private final List<Point> holes;

    private StitchLine(String id, Path line, List<Point> holes) {
        this.id = Ids.of(id);
        this.line = Objects.requireNonNull(line, "line");
        this.holes = List.copyOf(holes);
        if (line.role() != Role.STITCH) {
            throw new IllegalArgumentException("a stitch line is drawn as one, not as " + line.role());
        }
    }

    /**
     * A line of stitches.
     *
     * @param line of role {@link Role#STITCH}; closed where the stitches go all the way round
     * @param holes in order along the line; none where they are still to be spaced
     * @throws IllegalArgumentException if the line has another role
     */
    public static StitchLine of(String id, Path line, List<Point> holes) {
        return new StitchLine(id, line, holes);
    }

    /** Its name among the stitch lines of the part. */
    public String id() {
        return id;
    }

    /** Where it runs. */
    public Path line() {
        return line;
    }

    /** Its holes in the order they are sewn; none where they are still to be spaced. */
    public List<Point> holes() {
        return holes;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StitchLine stitches
                && id.equals(stitches.id)
                && line.equals(stitches.line)
                && holes.equals(stitches.holes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, line, holes);
    }

    @Override
    public String toString() {
        return "StitchLine[" + id + ", " + holes.size() + " holes]";
    }
}
