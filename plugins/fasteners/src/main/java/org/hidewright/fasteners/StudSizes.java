package org.hidewright.fasteners;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** A stud as measured; a row of hardware can be taken for it. */
public record StudSizes(
        @Asked(unit = "mm", min = "0.5 mm", max = "20 mm", usual = "2-5 mm", example = "3 mm", picture = "stud#post")
        Length postDiameter,

        @Asked(
                unit = "mm",
                min = "1 mm",
                max = "60 mm",
                usual = "3-10 mm",
                example = "4 mm",
                picture = "stud#post-length")
        Optional<Length> postLength,

        @Asked(unit = "mm", min = "1 mm", max = "60 mm", usual = "5-12 mm", example = "6 mm", picture = "stud#head")
        Length headDiameter,

        @Asked(unit = "mm", min = "1 mm", max = "30 mm", usual = "2.5-6 mm", example = "3.5 mm", picture = "stud#neck")
        Length neckDiameter,

        @Asked(
                unit = "mm",
                min = "0.5 mm",
                max = "30 mm",
                usual = "2-5 mm",
                example = "3 mm",
                picture = "stud#neck-height")
        Length neckHeight) {
    List<Length> lengths() {
        return postLength.stream().toList();
    }
}
