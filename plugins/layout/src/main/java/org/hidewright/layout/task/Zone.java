package org.hidewright.layout.task;

/**
 * A place on a sheet that some pieces may not lie on: a scar, a weak place, a region of the hide.
 *
 * @param kind what kind of place it is, from 0 to {@link #MOST}; pieces name the kinds they avoid
 */
public record Zone(Outline outline, int kind) {
    /** The greatest number of a kind. */
    public static final int MOST = 62;

    public Zone {
        if (kind < 0 || kind > MOST) {
            throw new IllegalArgumentException("A kind of zone is a number from 0 to " + MOST + ", not " + kind + ".");
        }
    }

    /** Whether what avoids certain kinds may not lie here. */
    public boolean bars(long avoids) {
        return (avoids & 1L << kind) != 0;
    }
}
