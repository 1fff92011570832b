package org.hidewright.layout;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;

/** Where the formulas and habits of this bundle come from; their texts stand in the messages. */
final class Origins {
    /** Areas and shares: true by arithmetic. */
    static final Source ARITHMETIC = Source.of("layout-arithmetic", Kind.DEFINITION);
    /** Along the backbone, a gap for the knife, a rim that is not used. */
    static final Source CUTTING_HABIT = Source.of("cutting-habit", Kind.COMMON_PRACTICE);

    private Origins() {}
}
