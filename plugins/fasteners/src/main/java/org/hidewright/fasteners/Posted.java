package org.hidewright.fasteners;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Length;

/**
 * What is answered for a fitting on one post, barrel or shank.
 *
 * @param post the one to take of those there are; empty where none suits or none was given
 * @param postTo empty where there is no longest, since what is over is clipped off
 */
public record Posted(
        @Answered(unit = "mm", step = "0.1 mm", by = "hole-exact", lead = true)
        Length hole,

        @Answered(unit = "mm", step = "0.1 mm", by = "post-habit", lead = true)
        Optional<Length> post,

        @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "post-least")
        Length postFrom,

        @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "post-most")
        Optional<Length> postTo,

        @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "post-clipped")
        Optional<Length> clippedOff,

        @Answered List<HoleRow> holes,
        @Answered List<PostRow> posts,
        @Answered List<TestHole> tests,
        @Answered Drawing testRow) {}
