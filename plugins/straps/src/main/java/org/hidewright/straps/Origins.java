package org.hidewright.straps;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;
import org.hidewright.api.calculator.Working;
import org.hidewright.straps.geometry.NeutralLine;

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

    /** What is taken off a panel before the first strip, between strips and for a join. */
    static final Source STRIP_HABITS = Source.of("strip-habits", Kind.COMMON_PRACTICE);
    /** From a stitch row to the edge. */
    static final Source STITCH_MARGIN = Source.of("stitch-margin", Kind.COMMON_PRACTICE);

    private Origins() {}

    /** Credits an answer to the habit if the neutral line is one of its start values; typed otherwise it is the maker’s. */
    static void creditNeutralLine(Working working, String answer, double k) {
        if (NeutralLine.isStartValue(k)) {
            working.source(answer, NEUTRAL_HABIT);
        }
    }

    /** Credits an answer to a habit of the trade as long as what was asked keeps within it. */
    static void creditHabit(Working working, String answer, Source habit, boolean kept) {
        if (kept) {
            working.source(answer, habit);
        }
    }
}
