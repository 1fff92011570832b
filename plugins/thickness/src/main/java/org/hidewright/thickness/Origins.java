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

    /** Eight to twelve thicknesses of lap. */
    static final Source SCARF_SLOPE = Source.of("scarf-slope-habit", Kind.COMMON_PRACTICE);
    /** Areas that hides, sides and skins usually have. */
    static final Source HIDE_SIZES = Source.of("hide-sizes", Kind.COMMON_PRACTICE);
    /** ISO 2418: bend, shoulder and belly differ. */
    static final Source ISO_2418 = Source.of("iso-2418", Kind.PUBLISHED);
    /** NIST Statistical Reference Datasets: mean, and standard deviation with n - 1. */
    static final Source NIST_STRD = Source.of("nist-strd", Kind.PUBLISHED);
    /** JCGM 100, 4.2.3: standard uncertainty of a mean. */
    static final Source JCGM_100 = Source.of("jcgm-100", Kind.FROM_MEMORY);
    /** Standard acceleration of free fall and the pound-force. */
    static final Source STANDARD_GRAVITY = Source.of("standard-gravity", Kind.DEFINITION);
    /** What benches find of tannages and edges. */
    static final Source BENCH_HABIT = Source.of("bench-habit", Kind.COMMON_PRACTICE);
    /** Roberts and Etherington, dictionary of bookbinding terms, 1982. */
    static final Source BINDERS_DICTIONARY = Source.of("binders-dictionary", Kind.PUBLISHED);
    /** Cockerell, Bookbinding and the Care of Books, 1901. */
    static final Source BINDING_HANDBOOK = Source.of("binding-handbook", Kind.PUBLISHED);
    /** American Institute for Conservation, on wet skin and leather. */
    static final Source WET_LEATHER = Source.of("wet-leather", Kind.PUBLISHED);
    /** Commission Regulation (EU) 301/2014: chromium(VI) in leather. */
    static final Source CHROME_REACH = Source.of("chrome-reach", Kind.PUBLISHED);

    private Origins() {}
}
