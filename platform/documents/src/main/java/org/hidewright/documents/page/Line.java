package org.hidewright.documents.page;

import java.util.Arrays;
import java.util.List;

/**
 * How a line is inked.
 *
 * @param widthMm its weight
 * @param round whether its ends are round; a dash of no length is then a dot
 * @param dashes lengths of dash and gap in turn; empty for an unbroken line
 */
public record Line(double widthMm, Tone tone, boolean round, List<Double> dashes) {
    static final Line HAIR = solid(0.12, Tone.HAIRLINE);
    static final Line RULE = solid(0.3, Tone.INK);
    static final Line BOX = solid(0.4, Tone.INK);

    static Line solid(double widthMm, Tone tone) {
        return new Line(widthMm, tone, false, List.of());
    }

    static Line dashed(double widthMm, Double... dashes) {
        return new Line(widthMm, Tone.INK, false, Arrays.asList(dashes));
    }

    static Line dotted(double widthMm, double gapMm) {
        return new Line(widthMm, Tone.INK, true, List.of(0.0, gapMm));
    }
}
