package org.hidewright.thickness;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;

/** The face of a piece to be weighed: its area, or the length and width of a strip. */
public sealed interface PieceShape {
    /** Area of the face. */
    Area faceArea();

    /** A piece whose area is known. */
    record Flat(
            @Asked(unit = "dm²", min = "0.0001 dm²", max = "100000 dm²", usual = "0.1-600 dm²", example = "10 dm²")
            Area area)
            implements PieceShape {
        @Override
        public Area faceArea() {
            return area;
        }
    }

    /** A strap or strip of one width. */
    record Strip(
            @Asked(unit = "mm", min = "0.1 mm", max = "100000 mm", usual = "50-3000 mm", example = "1100 mm")
            Length length,

            @Asked(unit = "mm", min = "0.1 mm", max = "10000 mm", usual = "8-100 mm", example = "38 mm")
            Length width)
            implements PieceShape {
        @Override
        public Area faceArea() {
            return Area.ofMm2(length.mm() * width.mm());
        }
    }
}
