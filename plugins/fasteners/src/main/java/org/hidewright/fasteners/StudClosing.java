package org.hidewright.fasteners;

import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;

/** The end of a strap with the hole that goes over a stud, at true size: tip on the left, where the strap is held on the right. */
final class StudClosing {
    static final String TIP = "tip";
    static final String ANCHORED = "anchored-side";
    private static final double LETTER_MM = 3;
    /** From the edge to the line of a size, whose letters stand between. */
    private static final double BELOW_MM = 3 * LETTER_MM;

    private static final double LEAST_WIDTH_MM = 12;
    private static final double BEYOND_MM = 14;

    private StudClosing() {}

    static Drawing drawn(HoleRow closing, Length slit, Length endHole) {
        double radius = closing.wanted().mm() / 2;
        double tip = -closing.fromEdge().mm();
        double slitEnd = radius + slit.mm();
        double half = Math.max(LEAST_WIDTH_MM, 2 * closing.fromEdge().mm()) / 2;
        double end = slitEnd + BEYOND_MM;
        Drawing.Builder drawing = Drawing.builder()
                .line(Role.CUT, Point.of(tip, -half), Point.of(end, -half))
                .line(Role.CUT, Point.of(tip, half), Point.of(end, half))
                .line(Role.CUT, Point.of(tip, -half), Point.of(tip, half))
                .hole(Point.of(0, 0), closing.wanted().mm());
        if (slit.mm() > 0) {
            drawing.line(Role.INNER_CUT, Point.of(radius, 0), Point.of(slitEnd, 0))
                    .hole(Point.of(slitEnd, 0), endHole.mm())
                    // below the edge on paper of any scale; a size too long for its line stands before its start
                    .dimension(Point.of(slitEnd, -half), Point.of(radius, -half), BELOW_MM, slit, LETTER_MM);
        }
        return drawing.dimension(Point.of(tip, -half), Point.of(0, -half), -BELOW_MM, closing.fromEdge(), LETTER_MM)
                .label(Phrase.of(TIP), Point.of(tip, half + LETTER_MM), Anchor.BOTTOM, LETTER_MM)
                .label(Phrase.of(ANCHORED), Point.of(end, half + LETTER_MM), Anchor.BOTTOM, LETTER_MM)
                .build();
    }
}
