package org.hidewright.fasteners;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** The leather a fitting holds together, pressed as it will be. */
public sealed interface Stack permits Stack.Measured, Stack.Between {
    /** One thickness, typed as a range where it is one. */
    record Measured(
            @Asked(unit = "mm", min = "0.3 mm", max = "60 mm", usual = "1-12 mm", example = "4 mm", picture = "layers")
            Length thickness)
            implements Stack {
        @Override
        public Length thinnest() {
            return thickness;
        }

        @Override
        public Length thickest() {
            return thickness;
        }
    }

    /** From the thinnest to the thickest place, where one post has to suit both. */
    record Between(
            @Asked(
                    unit = "mm",
                    min = "0.3 mm",
                    max = "60 mm",
                    usual = "1-12 mm",
                    example = "3.6 mm",
                    picture = "layers-uneven#thinnest")
            Length thinnest,

            @Asked(
                    unit = "mm",
                    min = "0.3 mm",
                    max = "60 mm",
                    usual = "1-12 mm",
                    example = "4.4 mm",
                    picture = "layers-uneven#thickest")
            Length thickest)
            implements Stack {}

    Length thinnest();

    Length thickest();
}
