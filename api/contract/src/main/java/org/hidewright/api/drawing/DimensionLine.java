package org.hidewright.api.drawing;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Quantity;

/**
 * A measured distance: two places, and a line with arrows and a text at a distance beside them.
 *
 * <p>Like the height of the letters, the distance of the line from the two places is on paper, at any scale.
 */
public final class DimensionLine extends Value implements Shape {
    private final Point from;
    private final Point to;
    private final double offset;
    private final Object words;
    private final double height;

    private DimensionLine(Point from, Point to, double offset, Object words, double height) {
        this.from = Objects.requireNonNull(from, "from");
        this.to = Objects.requireNonNull(to, "to");
        this.offset = finite(offset, "offset");
        this.words = Objects.requireNonNull(words, "words");
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

    /** A distance whose value the host writes in the maker’s units. */
    public static DimensionLine of(Point from, Point to, double offsetMm, Quantity<?> value, double heightMm) {
        return new DimensionLine(from, to, offsetMm, value, heightMm);
    }

    /** A distance with a text that the host puts into the maker’s language. */
    public static DimensionLine of(Point from, Point to, double offsetMm, Phrase phrase, double heightMm) {
        return new DimensionLine(from, to, offsetMm, phrase, heightMm);
    }

    /** Always {@link Role#NOTE}. */
    @Override
    public Role role() {
        return Role.NOTE;
    }

    /** Where what is measured begins. */
    public Point from() {
        return from;
    }

    /** Where what is measured ends. */
    public Point to() {
        return to;
    }

    /** How far beside the two places the line is drawn, in millimetres on paper; positive is to the left on the way from the first to the second. */
    public double offset() {
        return offset;
    }

    /** A {@code String} ready to print, a {@link Phrase} or a {@link Quantity}. */
    public Object words() {
        return words;
    }

    /**
     * The text to print.
     *
     * @throws IllegalStateException if the drawing has not been {@link Drawing#worded put into words}
     */
    public String text() {
        return label().text();
    }

    DimensionLine worded(Function<Object, String> wording) {
        return words instanceof String ? this : new DimensionLine(from, to, offset, wording.apply(words), height);
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
     * The text as a label: level or turned along the line so that it is read from below or from the right, and always
     * above its own line as it is read, so that in a stack of lines none is read for its neighbour (ISO 129-1, from
     * memory).
     */
    public Label label() {
        double direction = from.directionTo(to);
        boolean upsideDown = direction > Math.PI / 2 + 1e-9 || direction <= -Math.PI / 2 + 1e-9;
        double turn = upsideDown ? direction + Math.PI : direction;
        Point start = lineStart();
        Point end = lineEnd();
        Point middle = Point.of((start.x() + end.x()) / 2, (start.y() + end.y()) / 2);
        return Label.ofWords(words, middle, Anchor.BOTTOM, height).turned(turn);
    }

    @Override
    public Box bounds() {
        return Box.around(from, to, lineStart(), lineEnd()).with(label().bounds());
    }

    @Override
    List<Object> parts() {
        return List.of(from, to, offset, words, height);
    }
}
