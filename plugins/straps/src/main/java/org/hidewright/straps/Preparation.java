package org.hidewright.straps;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** What is done to a fold before it is folded. */
sealed interface Preparation {
    /** Folded dry and as it is. */
    record None() implements Preparation {}

    /** Dampened before folding, or soft by itself. */
    record Cased() implements Preparation {}

    /** Thinned from the flesh side over the whole fold, with a ramp on either side. */
    record Skived(
            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.2 mm")
            Length thicknessLeft,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "0-40 mm", example = "10 mm")
            Length ramp)
            implements Preparation {}

    /** A groove cut along the fold into its inside face. */
    record Grooved(
            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1 mm")
            Length web) implements Preparation {}
}
