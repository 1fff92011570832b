package org.hidewright.layout;

/** What a place on a hide is that not every part may lie on. */
public enum Damage {
    /** There is no leather. */
    HOLE,
    /** Cut, thin or loose: it would not hold. */
    WEAK,
    /** A scar, a brand, a bite: seen, but sound. */
    MARKED,
    /** Nothing is wrong with it: the belly, the neck, by whose name rules can forbid it to a part. */
    REGION
}
