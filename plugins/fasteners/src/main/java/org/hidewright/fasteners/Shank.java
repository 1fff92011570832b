package org.hidewright.fasteners;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** The post, barrel or shank of a fitting as measured; a row of hardware can be taken for it. */
public record Shank(
        @Asked(unit = "mm", min = "0.5 mm", max = "20 mm", usual = "2-6 mm", example = "3 mm", picture = "rivet#post")
        Length postDiameter,

        @Asked(
                unit = "mm",
                min = "1 mm",
                max = "60 mm",
                usual = "3-15 mm",
                example = "7 mm",
                picture = "rivet#post-length")
        Optional<Length> postLength,

        @Asked(unit = "mm", min = "1 mm", max = "60 mm", usual = "5-16 mm", example = "9 mm", picture = "rivet#head")
        Optional<Length> headDiameter,

        @Asked(example = "rivet setter") Optional<String> setter) {
    Length head() {
        return headDiameter.orElse(postDiameter);
    }

    /** The lengths to choose from: those that can be had, and its own. */
    List<Length> lengths(Optional<List<Length>> others) {
        return Stream.concat(postLength.stream(), others.stream().flatMap(List::stream))
                .distinct()
                .toList();
    }
}
