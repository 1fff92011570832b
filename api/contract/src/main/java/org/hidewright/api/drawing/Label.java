package org.hidewright.api.drawing;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Quantity;

/**
 * A line of text on the sheet, level or turned.
 *
 * <p>Letters have their height on paper at any scale of the drawing, so that they stay readable when a long strap is drawn
 * small. Unless anchored at its centre, a text keeps two thirds of a letter's height away from its place.
 */
public final class Label extends Value implements Shape {
    /** Length of a usual letter with its space, as a share of the height of a capital; only an estimate. */
    private static final double LETTER_LENGTH = 0.85;
    /** Distance from the place, as a share of the height of a capital: room for the tail of a g. */
    private static final double GAP = 2.0 / 3;

    private final Object words;
    private final Point at;
    private final Anchor anchor;
    private final double height;
    private final double turn;

    private Label(Object words, Point at, Anchor anchor, double height, double turn) {
        this.words = Objects.requireNonNull(words, "words");
        this.at = Objects.requireNonNull(at, "at");
        this.anchor = Objects.requireNonNull(anchor, "anchor");
        this.height = above0(height, "height");
        this.turn = finite(turn, "turn");
    }

    /**
     * A level text.
     *
     * @param heightMm height of a capital letter in millimetres on paper
     */
    public static Label of(String text, Point at, Anchor anchor, double heightMm) {
        return new Label(text, at, anchor, heightMm, 0);
    }

    /** A level text that the host puts into the maker’s language. */
    public static Label of(Phrase phrase, Point at, Anchor anchor, double heightMm) {
        return new Label(phrase, at, anchor, heightMm, 0);
    }

    /** A level text that the host writes in the maker’s units. */
    public static Label of(Quantity<?> value, Point at, Anchor anchor, double heightMm) {
        return new Label(value, at, anchor, heightMm, 0);
    }

    static Label ofWords(Object words, Point at, Anchor anchor, double heightMm) {
        return new Label(words, at, anchor, heightMm, 0);
    }

    /** The same text, turned about its place by an angle in radians from level, counter-clockwise. */
    public Label turned(double turnRad) {
        return new Label(words, at, anchor, height, turnRad);
    }

    /** Always {@link Role#NOTE}: a text leaves no trace on the leather. */
    @Override
    public Role role() {
        return Role.NOTE;
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
        if (words instanceof String text) {
            return text;
        }
        throw new IllegalStateException("the drawing has not been put into words: " + words);
    }

    Label worded(Function<Object, String> wording) {
        return words instanceof String ? this : new Label(wording.apply(words), at, anchor, height, turn);
    }

    /** Where it stands. */
    public Point at() {
        return at;
    }

    /** Which point of the text lies where it stands. */
    public Anchor anchor() {
        return anchor;
    }

    /** Height of a capital letter in millimetres on paper. */
    public double height() {
        return height;
    }

    /** Angle from level, radians. */
    public double turn() {
        return turn;
    }

    /** Where the foot of the first letter stands in true size, for a text of a known length. */
    public Point foot(double lengthMm) {
        double gap = 2 * GAP * height;
        double along = (0.5 - anchor.along()) * gap - anchor.along() * lengthMm;
        double up = (0.5 - anchor.up()) * gap - anchor.up() * height;
        return at.towards(turn, along).towards(turn + Math.PI / 2, up);
    }

    @Override
    public Box bounds() {
        String text = words.toString();
        double length = text.codePointCount(0, text.length()) * height * LETTER_LENGTH;
        Point foot = foot(length);
        Point end = foot.towards(turn, length);
        return Box.around(foot, end, foot.towards(turn + Math.PI / 2, height), end.towards(turn + Math.PI / 2, height));
    }

    @Override
    List<Object> parts() {
        return List.of(words, at, anchor, height, turn);
    }
}
