package org.hidewright.fasteners;

import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Source.Kind;

/** Where the numbers and rules of this bundle come from; their texts stand in the messages. */
final class Origins {
    /** True by plane geometry or by counting. */
    static final Source GEOMETRY = Source.of("fastener-geometry", Kind.DEFINITION);
    /** Clearance holes for bolts and screws, fine and medium series. */
    static final Source ISO_273 = Source.of("iso-273", Kind.PUBLISHED);
    /** Leather closes round a shank: firm leather takes the fine hole, softer leather the exact one or less. */
    static final Source HOLE_HABIT = Source.of("hole-habit", Kind.COMMON_PRACTICE);
    /** How far a post, barrel or shank stands out of the stack before it is set. */
    static final Source POST_HABIT = Source.of("post-habit", Kind.COMMON_PRACTICE);
    /** What a tubular shank needs to roll over, as a share of its diameter. */
    static final Source ROLL_OVER = Source.of("roll-over", Kind.FROM_MEMORY);
    /** Two to three diameters from a hole’s centre to the edge, never under 6 mm where it is pulled. */
    static final Source EDGE_HABIT = Source.of("fastener-edge-habit", Kind.COMMON_PRACTICE);
    /** No closer than three diameters from centre to centre; a rule for metal, the least for leather. */
    static final Source RIVET_PITCH = Source.of("rivet-pitch", Kind.PUBLISHED);
    /** The closing hole of a stud, its slit and what ends it. */
    static final Source STUD_HABIT = Source.of("stud-habit", Kind.COMMON_PRACTICE);
    /** The slot for the prong of a buckle. */
    static final Source SLOT_HABIT = Source.of("prong-slot-habit", Kind.COMMON_PRACTICE);
    /** How a magnetic closure is held by its bent prongs. */
    static final Source MAGNET_HABIT = Source.of("magnet-habit", Kind.COMMON_PRACTICE);
    /** A ring and the leather turned round it. */
    static final Source RING_HABIT = Source.of("ring-habit", Kind.COMMON_PRACTICE);

    private Origins() {}
}
