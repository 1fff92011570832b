package org.hidewright.parts;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;

/** A hole or slot in a part, by its middle. */
public record DrawnOpening(
        @RowId String id,

        @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "90 mm")
        Optional<Length> x,

        @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "60 mm")
        Optional<Length> y,

        @Asked(unit = "mm", min = "0.3 mm", max = "1 m", usual = "0.8-60 mm", example = "4 mm")
        Length width,

        @Asked(unit = "mm", min = "0 mm", max = "5 m", usual = "0-100 mm", preset = "0 mm")
        Length length,

        @Asked(unit = "°", min = "-360 °", max = "360 °", preset = "0 °")
        Angle turned) {

    /** Where it is not said how far right or up, it is in the middle of the part. */
    Point middle(Curve part) {
        Box box = part.bounds();
        return Point.of(
                x.map(Length::mm).orElse((box.minX() + box.maxX()) / 2),
                y.map(Length::mm).orElse((box.minY() + box.maxY()) / 2));
    }

    /** A punched hole is as long as it is wide. */
    boolean isHole() {
        return length.mm() <= width.mm();
    }

    /** Of a slot: with round ends, its length with them. */
    Curve outline(Curve part) {
        double w = width.mm();
        Point middle = middle(part);
        Point corner = middle.plus(-length.mm() / 2, -w / 2);
        return Outlines.roundedRectangle(corner, length.mm(), w, w / 2).moved(Motion.turn(middle, turned.radians()));
    }
}
