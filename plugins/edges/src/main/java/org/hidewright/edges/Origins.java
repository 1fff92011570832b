package org.hidewright.edges;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;

/** Where the numbers and rules of this bundle come from; their texts stand in the messages. */
final class Origins {
    /** Products and sums. */
    static final Source ARITHMETIC = Source.of("edges-arithmetic", Kind.DEFINITION);
    /** A third of the thickness, at most 1.5 mm, none on thin leather. */
    static final Source BEVEL_HABIT = Source.of("bevel-habit", Kind.COMMON_PRACTICE);
    /** Mean grain sizes of P grades. */
    static final Source ISO_6344 = Source.of("iso-6344", Kind.PUBLISHED);
    /** The next grade has half the grain at the least. */
    static final Source HALF_THE_GRAIN = Source.of("half-the-grain", Kind.COMMON_PRACTICE);
    /** Which edges before the seam and which after it, and the order of steps on each. */
    static final Source EDGE_ORDER = Source.of("edge-order", Kind.COMMON_PRACTICE);
    /** Which tannage packs under the slicker. */
    static final Source BURNISHING_HABIT = Source.of("burnishing-habit", Kind.COMMON_PRACTICE);
    /** How long dyes, paints and cements are left. */
    static final Source DRYING_HABIT = Source.of("drying-habit", Kind.COMMON_PRACTICE);
    /** Minutes for a metre of edge or a square metre of face. */
    static final Source BENCH_PACE = Source.of("bench-pace", Kind.COMMON_PRACTICE);
    /** What a coat takes where no label says it. */
    static final Source COVERAGE = Source.of("coverage", Kind.FROM_MEMORY);

    private Origins() {}
}
