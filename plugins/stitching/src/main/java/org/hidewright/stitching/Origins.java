package org.hidewright.stitching;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;

/** Where the numbers and rules of this bundle come from; their texts stand in the messages. */
final class Origins {
    /** True by plane geometry or by counting. */
    static final Source GEOMETRY = Source.of("stitch-geometry", Kind.DEFINITION);
    /** Each thread lies one pitch on a face and one stack in a hole per stitch; as a lockstitch of type 301 does. */
    static final Source CONSUMPTION = Source.of("stitch-consumption", Kind.PUBLISHED);
    /** Three and a half to four times the seam. */
    static final Source TIMES_HABIT = Source.of("thread-times-habit", Kind.COMMON_PRACTICE);
    /** Tails, backstitches, and no more than two metres on the arms. */
    static final Source SEWING_HABIT = Source.of("sewing-habit", Kind.COMMON_PRACTICE);
    /** Irons go through about six millimetres; from there an awl. */
    static final Source PIERCING_HABIT = Source.of("piercing-habit", Kind.COMMON_PRACTICE);
    /** Counts of yarns. */
    static final Source YARN_COUNTS = Source.of("yarn-counts", Kind.PUBLISHED);
    /** Density of fibres. */
    static final Source FIBRES = Source.of("fibre-density", Kind.PUBLISHED);
    /** How much of a thread’s round is fibre. */
    static final Source PACKING = Source.of("thread-packing", Kind.FROM_MEMORY);
    /** Thread no thicker than a share of the needle’s blade; the needle’s number is a hundred times its blade. */
    static final Source NEEDLES = Source.of("needle-sizes", Kind.PUBLISHED);
    /** Eye a little wider than the thread. */
    static final Source EYES = Source.of("needle-eyes", Kind.COMMON_PRACTICE);
    /** Thread by the pitch. */
    static final Source PITCH_HABIT = Source.of("thread-pitch-habit", Kind.COMMON_PRACTICE);

    private Origins() {}
}
