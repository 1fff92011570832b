package org.hidewright.straps;

import org.hidewright.api.calculator.Formula;

/** The formulas that more than one calculator of this bundle works by. */
final class Formulas {
    static final Formula ALLOWANCE = Formula.of("bend-allowance", "L = θ · (r + k · t)", Origins.BEND_FORMULAS);
    static final Formula NEUTRAL_DRY =
            Formula.of("neutral-line-dry", "k = 0.6 grain outside, 0.4 flesh outside", Origins.NEUTRAL_HABIT);
    static final Formula NEUTRAL_CASED = Formula.of("neutral-line-cased", "k = 0.5", Origins.NEUTRAL_HABIT);
    static final Formula NEUTRAL_GROOVED =
            Formula.of("neutral-line-grooved", "k = 1 - w / (2 · t)", Origins.NEUTRAL_HABIT);

    private Formulas() {}
}
