package org.hidewright.thickness;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;

/** Where the numbers and rules of this bundle come from; their texts stand in the messages. */
final class Origins {
    /** International yard and pound agreement, 1959. */
    static final Source INCH_1959 = Source.of("inch-1959", Kind.DEFINITION);
    /** ASTM D1814-70, scope 1.2: ounce and iron. */
    static final Source ASTM_D1814 = Source.of("astm-d1814", Kind.PUBLISHED);
    /** 0.4 mm to the ounce, on labels. */
    static final Source TRADE_LABEL = Source.of("trade-label", Kind.COMMON_PRACTICE);
    /** Labels one ounce wide and what they are used for. */
    static final Source SOLD_RANGES = Source.of("sold-ranges", Kind.COMMON_PRACTICE);
    /** Right triangle, sum, quotient: true by geometry or arithmetic. */
    static final Source GEOMETRY = Source.of("geometry", Kind.DEFINITION);
    static final Source ARITHMETIC = Source.of("arithmetic", Kind.DEFINITION);
    /** ISO 2420:2017, apparent density. */
    static final Source ISO_2420 = Source.of("iso-2420", Kind.PUBLISHED);
    /** ISO 2589:2016, 4.1: dead-weight gauge. */
    static final Source ISO_2589 = Source.of("iso-2589", Kind.PUBLISHED);

    private Origins() {}
}
