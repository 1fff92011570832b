package org.hidewright.edges;

/** What is laid on in coats, how long it waits before the next and after the last; common practice, the label knows better. */
public enum Coat {
    WATER_DYE(Liquid.DYE, Wait.hours(0.5, 2), Wait.hours(4, 24)),
    SPIRIT_DYE(Liquid.DYE, Wait.hours(0.1, 0.5), Wait.hours(12, 24)),
    /** Nothing shorter is known between its coats than after them. */
    OIL_DYE(Liquid.DYE, Wait.hours(12, 48), Wait.hours(12, 48)),
    EDGE_PAINT(Liquid.EDGE_PAINT, Wait.hours(1, 4), Wait.hours(12, 24)),
    TOP_COAT(Liquid.SEALER, Wait.hours(0.5, 2), Wait.hours(24, 72)),
    /** Both sides of a turn: till it is dull, and pressed before it no longer takes. */
    SOLVENT_CEMENT(Liquid.GLUE, Wait.minutes(5, 20), Wait.minutes(5, 20));

    private final Liquid liquid;
    private final Wait between;
    private final Wait last;

    Coat(Liquid liquid, Wait between, Wait last) {
        this.liquid = liquid;
        this.between = between;
        this.last = last;
    }

    /** What it comes out of a bottle as. */
    Liquid liquid() {
        return liquid;
    }

    Wait between() {
        return between;
    }

    Wait last() {
        return last;
    }
}
