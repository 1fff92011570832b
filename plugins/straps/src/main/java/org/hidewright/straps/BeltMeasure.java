package org.hidewright.straps;

/** From where a belt’s size is measured to the hole it is worn in. */
enum BeltMeasure {
    /** The outside of the fold at the buckle bar. */
    FOLD,
    /** The outer end of the buckle frame. */
    FRAME_END,
    /** The bar the prong turns on. */
    BAR
}
