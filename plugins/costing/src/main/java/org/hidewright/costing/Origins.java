package org.hidewright.costing;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;

/** Where the formulas and habits of this bundle come from; their texts stand in the messages. */
final class Origins {
    /** Sums, shares and ratios: true by arithmetic. */
    static final Source ARITHMETIC = Source.of("money-arithmetic", Kind.DEFINITION);
    /** Margin on the price, markup on the cost, and the one from the other. */
    static final Source MARGIN_MARKUP = Source.of("margin-and-markup", Kind.DEFINITION);
    /** Fixed cost over what each piece leaves. */
    static final Source BREAK_EVEN = Source.of("break-even", Kind.PUBLISHED);
    /** T. P. Wright, Factors Affecting the Cost of Airplanes, Journal of the Aeronautical Sciences, 1936. */
    static final Source WRIGHT_1936 = Source.of("wright-1936", Kind.PUBLISHED);
    /** The same exponent for each single piece. */
    static final Source UNIT_CURVE = Source.of("unit-curve", Kind.FROM_MEMORY);
    /** Straight-line depreciation by hours of life. */
    static final Source MACHINE_HOUR = Source.of("machine-hour-rate", Kind.PUBLISHED);
    /** Pay and overhead over the hours that can be charged for. */
    static final Source HOUR_RATE = Source.of("hour-rate", Kind.COMMON_PRACTICE);
    /** Overhead, spoilage and packing on top of leather, work and machines. */
    static final Source COST_SHEET = Source.of("cost-sheet", Kind.COMMON_PRACTICE);
    /** Waste as a share of what is bought, or of what is in the piece. */
    static final Source WASTE = Source.of("waste-share", Kind.DEFINITION);
    /** Tax inside a price and on top of it. */
    static final Source TAX = Source.of("tax-fraction", Kind.PUBLISHED);
    /** Twice the cost for shops, three times the material. */
    static final Source MULTIPLES = Source.of("trade-multiples", Kind.COMMON_PRACTICE);

    /** Each thread lies one pitch on a face and one stack in a hole per stitch; as a lockstitch of type 301 does. */
    static final Source CONSUMPTION = Source.of("stitch-consumption", Kind.PUBLISHED);
    /** Four times the seam. */
    static final Source TIMES_HABIT = Source.of("thread-times-habit", Kind.COMMON_PRACTICE);
    /** Tails, backstitches, and no more than two metres on the arms. */
    static final Source SEWING_HABIT = Source.of("sewing-habit", Kind.COMMON_PRACTICE);
    /** How long cutting, sewing and setting take where nobody has timed them. */
    static final Source BENCH_TIMES = Source.of("bench-times", Kind.COMMON_PRACTICE);

    private Origins() {}
}
