package org.hidewright.layout.engine;

import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Moves overlapping parts, one after another, until none overlaps or it is given up: guided local search after arXiv
 * 2509.13329.
 */
final class Separation {
    /** An attempt that lowers the least sum of overlaps by less is one without success. */
    private static final double SUBSTANTIAL = 0.98;

    private final Crowd crowd;
    private final Seeker seeker;
    private final SplittableRandom random;
    private final BooleanSupplier stop;
    private final int[] order;
    private final Places best;

    Separation(Crowd crowd, Seeker seeker, SplittableRandom random, BooleanSupplier stop) {
        this.crowd = crowd;
        this.seeker = seeker;
        this.random = random;
        this.stop = stop;
        this.order = new int[crowd.parts];
        this.best = new Places(crowd.parts);
    }

    /**
     * @param strikes so many attempts without success and it is given up
     * @param stall so many rounds without a substantial gain end an attempt
     * @return the sum of overlaps that is left, nought on success; the crowd lies so
     */
    double run(int strikes, int stall) {
        double least = crowd.total();
        crowd.keep(best);
        seeker.begin();
        int struck = 0;
        while (struck < strikes && least > 0) {
            double before = least;
            int stalled = 0;
            while (stalled < stall && least > 0) {
                round();
                double total = crowd.total();
                if (total < least) {
                    stalled = total < SUBSTANTIAL * least ? 0 : stalled + 1;
                    least = total;
                    crowd.keep(best);
                } else {
                    stalled++;
                }
                crowd.reweigh();
                if (stop.getAsBoolean()) {
                    crowd.restore(best);
                    return least;
                }
            }
            struck = least < SUBSTANTIAL * before ? 0 : struck + 1;
            crowd.restore(best);
        }
        return least;
    }

    private void round() {
        int troubled = 0;
        for (int part = 0; part < crowd.parts; part++) {
            if (crowd.troubled(part)) {
                order[troubled++] = part;
            }
        }
        for (int index = troubled - 1; index > 0; index--) {
            int with = random.nextInt(index + 1);
            int swap = order[index];
            order[index] = order[with];
            order[with] = swap;
        }
        for (int index = 0; index < troubled; index++) {
            if (crowd.troubled(order[index])) {
                seeker.improve(order[index]);
            }
        }
    }
}
