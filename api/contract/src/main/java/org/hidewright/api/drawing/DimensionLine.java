package org.hidewright.api.drawing;

import java.util.List;
import java.util.Objects;

/**
 * A measured distance: two places, and a line with arrows and a text at a distance beside them.
 *
 * <p>Like the height of the letters, the distance of the line from the two places is on paper, at any scale.
 */
public final class DimensionLine extends Value implements Shape {
    private final Point from;
    private final Point to;
    private final double offset;
    private final String text;
    private final double height;

    private DimensionLine(Point from, Point to, double offset, String text, double height) {
        this.from = Objects.requireNonNull(from, "from");
        this.to = Objects.requireNonNull(to, "to");
        this.offset = finite(offset, "offset");
        this.text = Objects.requireNonNull(text, "text");
        this.height = above0(height, "height");
        if (from.equals(to)) {
            throw new IllegalArgumentException("a measured distance needs two places");
        }
    }

    /**
     * A distance along the straight line between two places.
     *
     * @param offsetMm how far beside the two places the line is drawn, on paper; positive is to the left when going
     *     from the first to the second
     * @param text the value with its unit, as it is to be read
     * @param heightMm height of a capital letter of the text
     * @throws IllegalArgumentException if both places are the same
     */
    public static DimensionLine of(Point from, Point to, double offsetMm, String text, double heightMm) {
        return new DimensionLine(from, to, offsetMm, text, heightMm);
    }

    /** Always {@link Role#NOTE}. */
    @Override
    public Role role() {
        return Role.NOTE;
    }

    public Point from() {
        return from;
    }

    public Point to() {
        return to;
    }

    public double offset() {
        return offset;
    }

    public String text() {
        return text;
    }

    /** Height of a capital letter of the text, millimetres. */
    public double height() {
        return height;
    }

    /** First end of the drawn line in true size. */
    public Point lineStart() {
        return from.towards(from.directionTo(to) + Math.PI / 2, offset);
    }

    /** Second end of the drawn line in true size. */
    public Point lineEnd() {
        return to.towards(from.directionTo(to) + Math.PI / 2, offset);
    }

    /**
     * The text as a label: level or turned along the line so that it is read from below or from the right, on the side
     * away from what is measured where it can be.
     */
    public Label label() {
        double direction = from.directionTo(to);
        boolean upsideDown = direction > Math.PI / 2 + 1e-9 || direction <= -Math.PI / 2 + 1e-9;
        double turn = upsideDown ? direction + Math.PI : direction;
        Point start = lineStart();
        Point end = lineEnd();
        boolean below = upsideDown ? offset > 0 : offset < 0;
        Point middle = Point.of((start.x() + end.x()) / 2, (start.y() + end.y()) / 2);
        return Label.of(text, middle, below ? Anchor.TOP : Anchor.BOTTOM, height).turned(turn);
    }

    @Override
    public Box bounds() {
        return Box.around(from, to, lineStart(), lineEnd()).with(label().bounds());
    }

    @Override
    List<Object> parts() {
        return List.of(from, to, offset, text, height);
    }
}
