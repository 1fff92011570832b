package org.hidewright.parts;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.PathData;
import org.hidewright.api.measure.Length;

/** The finished outline of a part; its lower left corner, or of a circle its middle, is at 0, 0. */
public sealed interface Shape permits Shape.Rectangle, Shape.Circle, Shape.Path {
    /** Upright, its corners sharp or rounded. */
    record Rectangle(
            @Asked(unit = "mm", min = "1 mm", max = "10 m", usual = "10 mm-1 m", example = "180 mm")
            Length width,

            @Asked(unit = "mm", min = "1 mm", max = "10 m", usual = "10 mm-1 m", example = "120 mm")
            Length height,

            @Asked(unit = "mm", min = "0 mm", max = "5 m", preset = "0 mm")
            Length cornerRadius)
            implements Shape {
        @Override
        public Curve outline() {
            return Outlines.roundedRectangle(Point.of(0, 0), width.mm(), height.mm(), cornerRadius.mm());
        }
    }

    record Circle(
            @Asked(unit = "mm", min = "1 mm", max = "5 m", usual = "10-600 mm", example = "60 mm")
            Length diameter) implements Shape {
        @Override
        public Curve outline() {
            return Outlines.circle(Point.of(0, 0), diameter.mm());
        }
    }

    /** Written as path data of SVG, in millimetres, y up. */
    record Path(@Asked(example = "M 0 0 H 180 V 120 H 0 Z") String data) implements Shape {
        @Override
        public Curve outline() throws PathData.Unreadable {
            return PathData.read(data);
        }
    }

    /**
     * The outline.
     *
     * @throws IllegalArgumentException if the corners of a rectangle have no room
     */
    Curve outline() throws PathData.Unreadable;
}
