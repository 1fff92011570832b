package org.hidewright.straps;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;

/** Where the numbers and rules of this bundle come from; their texts stand in the messages. */
final class Origins {
    /** True by plane geometry or by counting. */
    static final Source GEOMETRY = Source.of("plane-geometry", Kind.DEFINITION);
    /** The general bend-allowance, setback and deduction formulas. */
    static final Source BEND_FORMULAS = Source.of("bend-formulas", Kind.PUBLISHED);
    /** Length round two pulleys, open and crossed. */
    static final Source TWO_PULLEYS = Source.of("two-pulleys", Kind.PUBLISHED);
    /** Where the neutral line starts from when nothing was measured. */
    static final Source NEUTRAL_HABIT = Source.of("neutral-line-habit", Kind.COMMON_PRACTICE);
    /** A strip of this leather, folded and measured here. */
    static final Source NEUTRAL_MEASURED = Source.of("neutral-line-measured", Kind.MEASURED_HERE);
    /** Fold no tighter than a quarter of the thickness. */
    static final Source TIGHT_FOLD = Source.of("tight-fold", Kind.COMMON_PRACTICE);
    /** Strap half a millimetre to a millimetre under its hardware. */
    static final Source HARDWARE_EASE = Source.of("hardware-ease", Kind.COMMON_PRACTICE);
    /** One thickness between a hole or stitch and a fold; two to three diameters to the edge. */
    static final Source EDGE_HABIT = Source.of("edge-habit", Kind.COMMON_PRACTICE);

    static final Source BELT_HABITS = Source.of("belt-habits", Kind.COMMON_PRACTICE);
    static final Source KEEPER_HABITS = Source.of("keeper-habits", Kind.COMMON_PRACTICE);
    /** Straps are cut along the backbone. */
    static final Source CUT_ALONG_BACKBONE = Source.of("cut-along-backbone", Kind.COMMON_PRACTICE);
    /** A bought strap or buckle rarely carries a rating; leather never does by itself. */
    static final Source LOAD_HABIT = Source.of("load-habit", Kind.COMMON_PRACTICE);

    private Origins() {}
}
