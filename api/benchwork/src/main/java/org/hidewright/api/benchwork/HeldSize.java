package org.hidewright.api.benchwork;

import java.util.stream.DoubleStream;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** How large the thing is that a piece is to hold: a group of questions that brings its own texts. */
public record HeldSize(
        @Asked(
                unit = "mm",
                min = "3 mm",
                max = "1 m",
                usual = "30-300 mm",
                example = "80 mm",
                from = "held-thing.width",
                picture = "thing#width")
        Length width,

        @Asked(
                unit = "mm",
                min = "3 mm",
                max = "1 m",
                usual = "40-300 mm",
                example = "120 mm",
                from = "held-thing.height",
                picture = "thing#height")
        Length height,

        @Asked(
                unit = "mm",
                min = "0.1 mm",
                max = "300 mm",
                usual = "1-40 mm",
                example = "12 mm",
                from = "held-thing.thickness",
                picture = "thing#thickness")
        Length thickness) {
    /** Diameter of the cylinder that small parts are measured by, ISO 8124-1; from memory. */
    private static final double SMALL_PART_MM = 31.7;

    /**
     * Whether it may be swallowed: whichever way it is turned, it goes into the cylinder for small parts, or into one twice as
     * deep as that is wide.
     */
    public boolean isSmallPart() {
        double[] sides = DoubleStream.of(width.mm(), height.mm(), thickness.mm())
                .sorted()
                .toArray();
        return sides[1] < SMALL_PART_MM && sides[2] < 2 * SMALL_PART_MM;
    }
}
