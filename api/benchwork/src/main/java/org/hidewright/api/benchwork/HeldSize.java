package org.hidewright.api.benchwork;

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
                from = "held-thing.width")
        Length width,

        @Asked(
                unit = "mm",
                min = "3 mm",
                max = "1 m",
                usual = "40-300 mm",
                example = "120 mm",
                from = "held-thing.height")
        Length height,

        @Asked(
                unit = "mm",
                min = "0.1 mm",
                max = "300 mm",
                usual = "1-40 mm",
                example = "12 mm",
                from = "held-thing.thickness")
        Length thickness) {}
