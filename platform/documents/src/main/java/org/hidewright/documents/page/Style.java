package org.hidewright.documents.page;

/**
 * How a text is set.
 *
 * @param points size of the letters in points
 * @param leading height of a line as a multiple of that size
 */
public record Style(Face face, double points, Tone tone, double leading) {
    /** Title of the document, once. */
    static final Style TITLE = new Style(Face.SEMIBOLD, 25, Tone.INK, 1.2);

    static final Style META = new Style(Face.REGULAR, 10.5, Tone.QUIET, 1.45);
    static final Style HEADING = new Style(Face.SEMIBOLD, 14, Tone.INK, 1.3);
    static final Style BODY = new Style(Face.REGULAR, 10.5, Tone.INK, 1.45);
    static final Style QUIET = new Style(Face.REGULAR, 8.5, Tone.QUIET, 1.45);
    /** The number read at arm's length: its digits are 7 mm high. */
    static final Style ANSWER = new Style(Face.SEMIBOLD, 31, Tone.INK, 1.2);

    static final Style ANSWER_UNIT = new Style(Face.REGULAR, 15, Tone.INK, 1.2);
    static final Style ANSWER_LABEL = new Style(Face.SEMIBOLD, 10.5, Tone.INK, 1.4);
    static final Style FROM_TO = new Style(Face.REGULAR, 11, Tone.INK, 1.4);
    static final Style REASON = new Style(Face.REGULAR, 9.5, Tone.QUIET, 1.4);
    static final Style STEP = new Style(Face.REGULAR, 13, Tone.INK, 1.35);
    static final Style STEP_NUMBER = new Style(Face.REGULAR, 13, Tone.QUIET, 1.35);
    static final Style CELL = new Style(Face.REGULAR, 11, Tone.INK, 1.4);
    static final Style COLUMN = new Style(Face.SEMIBOLD, 9, Tone.INK, 1.35);
    static final Style CHECK = new Style(Face.SEMIBOLD, 11.5, Tone.INK, 1.4);
    static final Style SEVERITY = new Style(Face.SEMIBOLD, 9, Tone.ACCENT, 1.4);
    static final Style SEVERITY_NOTE = new Style(Face.SEMIBOLD, 9, Tone.QUIET, 1.4);
    static final Style WORKING = new Style(Face.REGULAR, 9, Tone.QUIET, 1.45);
    static final Style WORKING_NAME = new Style(Face.SEMIBOLD, 9, Tone.QUIET, 1.45);
    static final Style SOURCE = new Style(Face.REGULAR, 8, Tone.QUIET, 1.45);
    static final Style SOURCE_KIND = new Style(Face.SEMIBOLD, 8, Tone.QUIET, 1.45);
    static final Style FRAME = new Style(Face.REGULAR, 8.5, Tone.QUIET, 1.4);
    static final Style FRAME_NAME = new Style(Face.SEMIBOLD, 8.5, Tone.INK, 1.4);

    private static final double MM_PER_POINT = 25.4 / 72;
    /** Height of a capital as a share of the size, of the typeface used. */
    private static final double CAPITAL = 0.66;

    /** A style for letters whose capitals have a height in millimetres. */
    static Style ofCapitals(double capitalMm, Tone tone) {
        return new Style(Face.REGULAR, capitalMm / CAPITAL / MM_PER_POINT, tone, 1.4);
    }

    public double sizeMm() {
        return points * MM_PER_POINT;
    }

    double capitalMm() {
        return CAPITAL * sizeMm();
    }

    double lineMm() {
        return leading * sizeMm();
    }

    /** From the top of a line to the foot of its letters; capitals stand in the middle of the line. */
    double baselineMm() {
        return (lineMm() + capitalMm()) / 2;
    }
}
