package org.hidewright.api.item;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;

/** A piece of leather, drawn flat with its grain up. */
public final class Part {
    private final String id;
    private final String name;
    private final String leather;
    private final double thickness;
    private final Path outline;
    private final List<Path> cutOuts;
    private final List<Hole> holes;
    private final List<StitchLine> stitchLines;
    private final List<Fold> folds;
    private final List<Edge> edges;
    private final List<Path> marks;
    private final double oversize;
    private final double sanded;
    private final Set<Face> shows;
    private final int count;
    private final int mirrored;
    private final double direction;

    private Part(Builder builder) {
        this.id = builder.id;
        this.name = builder.name;
        this.leather = builder.leather;
        this.thickness = builder.thickness;
        this.outline = builder.outline;
        this.cutOuts = List.copyOf(builder.cutOuts);
        this.holes = Ids.distinct(builder.holes, Hole::id);
        this.stitchLines = Ids.distinct(builder.stitchLines, StitchLine::id);
        this.folds = Ids.distinct(builder.folds, Fold::id);
        this.edges = Ids.distinct(builder.edges, Edge::id);
        this.marks = List.copyOf(builder.marks);
        this.oversize = builder.oversize;
        this.sanded = builder.sanded;
        this.shows = Set.copyOf(builder.shows);
        this.count = builder.count;
        this.mirrored = builder.mirrored;
        this.direction = builder.direction;
    }

    /**
     * A part by its finished outline.
     *
     * @param name as it is to be read on the pattern
     * @param outline closed, of role {@link Role#CUT}
     * @throws IllegalArgumentException if the outline is open or of another role
     */
    public static Builder of(String id, String name, Path outline) {
        return new Builder(id, name, outline);
    }

    /** Its name among the parts of the item. */
    public String id() {
        return id;
    }

    /** What it is called where it is printed. */
    public String name() {
        return name;
    }

    /** Which leather it is cut from, as the maker calls it; empty where nothing is said. */
    public String leather() {
        return leather;
    }

    /** Whether a maker who writes this means the part: its id, or the leather it is cut from in large or small letters. */
    public boolean isCalled(String written) {
        return id.equals(written) || leather.equalsIgnoreCase(written);
    }

    /** Millimetres; empty where nothing is said. */
    public OptionalDouble thickness() {
        return thickness > 0 ? OptionalDouble.of(thickness) : OptionalDouble.empty();
    }

    /** The finished edge, closed. */
    public Path outline() {
        return outline;
    }

    /** Windows and slots, closed, of role {@link Role#INNER_CUT}. */
    public List<Path> cutOuts() {
        return cutOuts;
    }

    /** Its holes. */
    public List<Hole> holes() {
        return holes;
    }

    /** Where it is sewn. */
    public List<StitchLine> stitchLines() {
        return stitchLines;
    }

    /** Where it is folded. */
    public List<Fold> folds() {
        return folds;
    }

    /** Its edges where they are named. */
    public List<Edge> edges() {
        return edges;
    }

    /** Places for other parts, notches to aim at: lines that are scratched or pricked. */
    public List<Path> marks() {
        return marks;
    }

    /** Millimetres of leather left standing outside the outline, to be trimmed after gluing. */
    public double oversize() {
        return oversize;
    }

    /** Millimetres that sanding takes off the edge once it is trimmed; the outline is what is left. */
    public double sanded() {
        return sanded;
    }

    /** Millimetres by which the part is cut larger than its outline: left standing to be trimmed, and to be sanded off. */
    public double allowance() {
        return oversize + sanded;
    }

    /** The faces that are seen on the finished item; none where nothing is said. */
    public Set<Face> shows() {
        return shows;
    }

    /** How many are cut as drawn. */
    public int count() {
        return count;
    }

    /** How many are cut turned over besides. */
    public int mirrored() {
        return mirrored;
    }

    /** How many are cut in all. */
    public int pieces() {
        return count + mirrored;
    }

    /** Direction of the backbone, radians from the x axis; empty where any will do. */
    public OptionalDouble direction() {
        return Double.isNaN(direction) ? OptionalDouble.empty() : OptionalDouble.of(direction);
    }

    private List<Object> values() {
        return Arrays.asList(
                id,
                name,
                leather,
                thickness,
                outline,
                cutOuts,
                holes,
                stitchLines,
                folds,
                edges,
                marks,
                oversize,
                sanded,
                shows,
                count,
                mirrored,
                direction);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Part part && values().equals(part.values());
    }

    @Override
    public int hashCode() {
        return values().hashCode();
    }

    @Override
    public String toString() {
        return "Part[" + id + ", " + count + " + " + mirrored + " turned over]";
    }

    /** Adds what is on a part; not for use by several threads. */
    public static final class Builder {
        private final String id;
        private final String name;
        private final Path outline;
        private final List<Path> cutOuts = new ArrayList<>();
        private final List<Hole> holes = new ArrayList<>();
        private final List<StitchLine> stitchLines = new ArrayList<>();
        private final List<Fold> folds = new ArrayList<>();
        private final List<Edge> edges = new ArrayList<>();
        private final List<Path> marks = new ArrayList<>();
        private String leather = "";
        private double thickness;
        private double oversize;
        private double sanded;
        private final Set<Face> shows = EnumSet.noneOf(Face.class);
        private int count = 1;
        private int mirrored;
        private double direction = Double.NaN;

        private Builder(String id, String name, Path outline) {
            this.id = Ids.of(id);
            this.name = Ids.of(name);
            this.outline = closed(outline, Role.CUT);
        }

        private static Path closed(Path path, Role role) {
            if (!path.isClosed() || path.role() != role) {
                throw new IllegalArgumentException("a closed path of role " + role + " is wanted here");
            }
            return path;
        }

        /** What leather it is cut from, as it is called. */
        public Builder leather(String called) {
            this.leather = Objects.requireNonNull(called, "leather");
            return this;
        }

        /** @throws IllegalArgumentException if it is not above 0 */
        public Builder thickness(double mm) {
            this.thickness = Ids.above0(mm, "a thickness");
            return this;
        }

        /**
         * A window or slot.
         *
         * @throws IllegalArgumentException if it is not closed or not of role {@link Role#INNER_CUT}
         */
        public Builder cutOut(Path path) {
            cutOuts.add(closed(path, Role.INNER_CUT));
            return this;
        }

        /** Adds a hole. */
        public Builder hole(Hole hole) {
            holes.add(Objects.requireNonNull(hole, "hole"));
            return this;
        }

        /** Adds a stitch line. */
        public Builder stitchLine(StitchLine line) {
            stitchLines.add(Objects.requireNonNull(line, "line"));
            return this;
        }

        /** Adds a fold. */
        public Builder fold(Fold fold) {
            folds.add(Objects.requireNonNull(fold, "fold"));
            return this;
        }

        /** Adds a name for a stretch of its edge. */
        public Builder edge(Edge edge) {
            edges.add(Objects.requireNonNull(edge, "edge"));
            return this;
        }

        /** A line to scratch or prick, of role {@link Role#MARK}. */
        public Builder mark(Path path) {
            if (path.role() != Role.MARK) {
                throw new IllegalArgumentException("a mark is drawn as one, not as " + path.role());
            }
            marks.add(path);
            return this;
        }

        /** @throws IllegalArgumentException if it is below 0 */
        public Builder oversize(double mm) {
            this.oversize = Ids.atLeast0(mm, "what is left standing");
            return this;
        }

        /** @throws IllegalArgumentException if it is below 0 */
        public Builder sanded(double mm) {
            this.sanded = Ids.atLeast0(mm, "what is sanded off");
            return this;
        }

        /** A face that is seen on the finished item. */
        public Builder shows(Face face) {
            shows.add(face);
            return this;
        }

        /** @throws IllegalArgumentException if one is below 0, or none is cut at all */
        public Builder pieces(int asDrawn, int turnedOver) {
            if (asDrawn < 0 || turnedOver < 0 || asDrawn + turnedOver == 0) {
                throw new IllegalArgumentException(
                        "a part is cut once at least, not " + asDrawn + " and " + turnedOver + " times");
            }
            this.count = asDrawn;
            this.mirrored = turnedOver;
            return this;
        }

        /** Direction of the backbone, radians from the x axis. */
        public Builder direction(double angleRad) {
            this.direction = angleRad;
            return this;
        }

        /** @throws IllegalArgumentException if an id is there twice */
        public Part build() {
            return new Part(this);
        }
    }
}
