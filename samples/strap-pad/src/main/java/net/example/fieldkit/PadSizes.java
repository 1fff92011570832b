package net.example.fieldkit;

import org.hidewright.api.measure.Length;

/**
 * The sizes of a pad that are not asked.
 *
 * @param corner radius of the outline’s corners
 * @param slotLength across the pad
 * @param slotWidth along the pad
 * @param between the slots, below 0 where they run into each other
 * @param rim length of the seam all round
 */
record PadSizes(Length corner, Length slotLength, Length slotWidth, Length between, Length rim) {
    /** So that a strap slides through a slot: common practice. */
    private static final Length ROOM = Length.ofMm(1);

    static PadSizes of(StrapPad.Pad asked) {
        Length shorter = asked.length().compareTo(asked.width()) < 0 ? asked.length() : asked.width();
        // A look, not a measure: a third of the width.
        Length corner = shorter.times(1.0 / 3);
        double inner = corner.minus(asked.margin()).mm();
        double straight =
                asked.length().plus(asked.width()).mm() - 4 * asked.margin().mm();
        Length slotWidth = asked.slide().strapAtMost().plus(ROOM);
        return new PadSizes(
                corner,
                asked.slide().insideWidth().plus(ROOM),
                slotWidth,
                asked.length().minus(asked.beyondSlot().plus(slotWidth).times(2)),
                Length.ofMm(2 * straight - (8 - 2 * Math.PI) * inner));
    }
}
