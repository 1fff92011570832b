package org.hidewright.straps;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** What a bend goes round; it sets the inside radius. */
sealed interface Core {
    /** A round bar, rod or ring. */
    record RoundBar(
            @Asked(unit = "mm", min = "0.1 mm", max = "1 m", usual = "2-12 mm", example = "6 mm")
            Length diameter) implements Core {}

    /** A rectangular bar or ring: a 180 degree turn is two corners and the flat of its thickness between. */
    record FlatBar(
            @Asked(unit = "mm", min = "0.1 mm", max = "500 mm", example = "3 mm")
            Length barThickness,

            @Asked(unit = "mm", min = "0.1 mm", max = "500 mm", example = "10 mm")
            Length barWidth,

            @Asked(unit = "mm", min = "0 mm", max = "250 mm", example = "0.5 mm")
            Length cornerRadius)
            implements Core {}

    /** Layers of the strap itself; none where it is folded flat. */
    record OwnLayers(
            @Asked(min = "0", max = "20", preset = "0") int layers,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.5 mm")
            Optional<Length> layerThickness,

            @Asked(unit = "mm", min = "0 mm", max = "250 mm", example = "0.5 mm")
            Optional<Length> insideRadius)
            implements Core {}

    /** Another bend of this strap, which lies inside. */
    record AroundBend(@Asked(example = "fold") String bend) implements Core {}

    /** Something of a known radius. */
    record Radius(
            @Asked(unit = "mm", min = "0 mm", max = "1 m", example = "3 mm")
            Length insideRadius) implements Core {}
}
