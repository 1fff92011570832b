package org.hidewright.layout.engine;

import java.util.SplittableRandom;

/**
 * How often parts came apart on sheets that were as full as so: learnt while a search goes on, so that its time goes where there is
 * hope. A hide with bays is never as full as a panel, and nobody knows beforehand how full it may be.
 */
final class Fullness {
    private static final int CLASSES = 50;

    /** An attempt is made with so many times the share of those that succeeded before. */
    private static final double EAGER = 4;

    /** Now and then also where there was little hope. */
    private static final double LEAST = 0.05;

    private final int[] tried = new int[CLASSES];
    private final int[] succeeded = new int[CLASSES];

    /**
     * Whether an attempt is worth its time.
     *
     * @param full the area of the parts as a share of that of the sheet
     */
    boolean isWorthATry(double full, SplittableRandom random) {
        int at = at(full);
        double hope = (succeeded[at] + 1.0) / (tried[at] + 2.0);
        return random.nextDouble() < Math.max(LEAST, EAGER * hope);
    }

    /** Remembers what became of an attempt. */
    void remember(double full, boolean success) {
        int at = at(full);
        tried[at]++;
        succeeded[at] += success ? 1 : 0;
    }

    private static int at(double full) {
        return (int) Math.min(CLASSES - 1, full * CLASSES);
    }
}
