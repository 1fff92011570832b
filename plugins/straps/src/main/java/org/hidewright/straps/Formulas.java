package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.calculator.Formula;

/** The formulas that more than one calculator of this bundle works by. */
final class Formulas {
    static final Formula ALLOWANCE = Formula.of("bend-allowance", "L = θ · (r + k · t)", Origins.BEND_FORMULAS);
    static final Formula NEUTRAL_GRAIN_OUTSIDE =
            Formula.of("neutral-line-grain-outside", "k = 0.6", Origins.NEUTRAL_HABIT);
    static final Formula NEUTRAL_FLESH_OUTSIDE =
            Formula.of("neutral-line-flesh-outside", "k = 0.4", Origins.NEUTRAL_HABIT);
    static final Formula NEUTRAL_CASED = Formula.of("neutral-line-cased", "k = 0.5", Origins.NEUTRAL_HABIT);
    static final Formula NEUTRAL_GROOVED =
            Formula.of("neutral-line-grooved", "k = 1 - w / (2 · t)", Origins.NEUTRAL_HABIT);

    /** Where the neutral line of a fold is taken to lie, by its preparation, and the flat length of the fold. */
    static final List<Formula> FOLDS =
            List.of(NEUTRAL_GRAIN_OUTSIDE, NEUTRAL_FLESH_OUTSIDE, NEUTRAL_CASED, NEUTRAL_GROOVED, ALLOWANCE);

    private Formulas() {}
}
