package org.hidewright.layout;

/** What is wrong with a place on a hide. */
public enum Damage {
    /** There is no leather. */
    HOLE,
    /** Cut, thin or loose: it would not hold. */
    WEAK,
    /** A scar, a brand, a bite: seen, but sound. */
    MARKED;

    /** As the search and the check count it: what asks for more may not lie there. */
    int quality() {
        return switch (this) {
            case HOLE -> Integer.MIN_VALUE;
            case WEAK -> Leather.ANY.ordinal();
            case MARKED -> Leather.SOUND.ordinal();
        };
    }
}
