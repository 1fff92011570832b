package org.hidewright.thickness;

import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;

/** Bevels seen from the side, with the leather lying on the bench; beyond the bevel it is broken off. */
final class BevelPicture {
    /** How much of the full thickness is shown, in thicknesses. */
    private static final double SHOWN = 3;

    private static final double OFFSET_MM = 6;
    private static final double LETTER_MM = 2.4;

    private BevelPicture() {}

    /** A skived edge, to the left, with its flesh side up. */
    static Drawing skive(Length thickness, Length target, Length width) {
        double t = thickness.mm();
        double e = target.mm();
        double w = width.mm();
        double end = w + SHOWN * t;
        Drawing.Builder drawing = Drawing.builder();
        drawing.add(brokenAt(
                end, Path.from(Point.of(end, 0)).lineTo(0, 0).lineTo(0, e).lineTo(w, t), t));
        drawing.line(Role.GRAIN, Point.of(0, 0), Point.of(end, 0));
        drawing.line(Role.FLESH, Point.of(w, t), Point.of(end, t));
        drawing.line(Role.MARK, Point.of(0, t), Point.of(w, t));
        drawing.dimension(Point.of(0, t), Point.of(w, t), OFFSET_MM, width, LETTER_MM);
        drawing.dimension(Point.of(end, 0), Point.of(end, t), -OFFSET_MM, thickness, LETTER_MM);
        if (e > 0) {
            drawing.dimension(Point.of(0, 0), Point.of(0, e), OFFSET_MM, target, LETTER_MM);
        }
        return drawing.build();
    }

    /**
     * Two bevelled ends lapped with a glue line between them, the thinner to the left.
     *
     * @param angleRad between bevel and face
     */
    static Drawing scarf(Length thinner, Length thicker, Length lap, Length glueLine, double angleRad) {
        double t = thinner.mm();
        double u = thicker.mm();
        double length = lap.mm();
        double apart = glueLine.mm() / Math.sin(angleRad);
        double start = -SHOWN * t;
        double end = length + apart + SHOWN * u;
        Drawing.Builder drawing = Drawing.builder();
        drawing.add(
                brokenAt(start, Path.from(Point.of(start, 0)).lineTo(length, 0).lineTo(0, t), t));
        drawing.add(brokenAt(
                end,
                Path.from(Point.of(end, 0))
                        .lineTo(length + apart, 0)
                        .lineTo(apart, t)
                        .lineTo(apart, u),
                u));
        drawing.dimension(Point.of(0, 0), Point.of(length, 0), -OFFSET_MM, lap, LETTER_MM);
        drawing.dimension(Point.of(start, 0), Point.of(start, t), OFFSET_MM, thinner, LETTER_MM);
        drawing.dimension(Point.of(end, 0), Point.of(end, u), -OFFSET_MM, thicker, LETTER_MM);
        return drawing.build();
    }

    /** Closes a piece begun at the foot of its broken end: along its upper face, and down in a wave. */
    private static Path brokenAt(double end, Path.Builder outline, double thickness) {
        outline.lineTo(end, thickness);
        double swing = thickness / 3;
        Point top = outline.pen();
        outline.cubicTo(top.plus(swing, -thickness / 3), top.plus(-swing, -2 * thickness / 3), Point.of(end, 0));
        return outline.closed(Role.SECTION);
    }
}
