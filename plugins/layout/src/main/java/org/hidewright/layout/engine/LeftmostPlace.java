package org.hidewright.layout.engine;

import java.util.SplittableRandom;

/** Finds a part a place that is free, as far to the left as places drawn at random and bettered allow. */
final class LeftmostPlace {
    private static final double LEAST_STEP = 1e-3;

    private final Crowd crowd;
    private final SplittableRandom random;
    private final Turned[] scratch;
    private long tries;

    LeftmostPlace(Crowd crowd, SplittableRandom random) {
        this.crowd = crowd;
        this.random = random;
        this.scratch = Scratch.of(crowd.form);
    }

    long tries() {
        return tries;
    }

    /**
     * Lays the part there; leaves it where it is when no place was found.
     *
     * @param limit how far to the right it may reach
     * @return whether a place was found
     */
    boolean settle(int part, double limit, int draws) {
        Form form = crowd.form[part];
        Ground ground = crowd.ground;
        double right = Math.min(limit, ground.maxX());
        boolean found = false;
        double angle = 0;
        double x = 0;
        double y = 0;
        for (int draw = 0; draw < draws; draw++) {
            Turned as = Scratch.at(form, scratch[part], form.turning.any(random));
            double fromX = ground.minX() - as.minX;
            double fromY = ground.minY() - as.minY;
            double roomX = right - as.maxX - fromX;
            double roomY = ground.maxY() - as.maxY - fromY;
            if (roomX <= 0 || roomY < 0) {
                continue;
            }
            double tx = fromX + random.nextDouble() * roomX;
            double ty = fromY + random.nextDouble() * roomY;
            if (!free(part, as, tx, ty)) {
                continue;
            }
            double step = form.least / 4;
            while (step > LEAST_STEP * form.least) {
                if (free(part, as, tx - step, ty)) {
                    tx -= step;
                } else if (free(part, as, tx, ty - step)) {
                    ty -= step;
                } else {
                    step /= 2;
                }
            }
            if (as.maxX + tx < right) {
                found = true;
                angle = as.angle;
                x = tx;
                y = ty;
                right = as.maxX + tx;
            }
        }
        if (found) {
            crowd.lay(part, angle, x, y);
        }
        return found;
    }

    private boolean free(int part, Turned as, double tx, double ty) {
        tries++;
        return crowd.cost(part, as, tx, ty, Double.MIN_VALUE) == 0;
    }
}
