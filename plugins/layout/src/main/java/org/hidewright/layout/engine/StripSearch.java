package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The search for a short strip: shorten the strip, let the parts overlap, separate them, and so on; where that fails,
 * take two large parts in exchange and try again. Towards the end the steps become fine. After arXiv 2509.13329, but
 * that the steps begin wide: where one fails the strip gives way by half of it, and what the parts have become goes on from there.
 *
 * <p>Several searches, each with its own crowd, may share an incumbent: what one finds the others go on from.
 */
final class StripSearch implements Runnable {
    private static final double EXPLORING = 0.8;
    private static final double WIDEST = 0.04;
    private static final double NARROWEST = 0.001;
    private static final double FIRST_SQUEEZE = 5e-4;
    private static final double LAST_SQUEEZE = 1e-5;
    private static final double POOL_SPREAD = 0.25;

    private final Crowd crowd;
    private final Rectangle strip;
    private final SplittableRandom random;
    private final Halt halt;
    private final Seeker seeker;
    private final Incumbent incumbent;
    private final Places best;
    private final Exchange exchange;
    private double length;
    private double target;
    private double phaseEnd;

    StripSearch(Crowd crowd, Rectangle strip, SplittableRandom random, Halt halt, Incumbent incumbent) {
        this.crowd = crowd;
        this.strip = strip;
        this.random = random;
        this.halt = halt;
        this.incumbent = incumbent;
        this.seeker = new Seeker(crowd, random);
        this.best = new Places(crowd.parts);
        this.exchange = new Exchange(crowd, random);
    }

    long tries() {
        return seeker.tries();
    }

    @Override
    public void run() {
        strip.length(Double.MAX_VALUE);
        length = new FirstFill(crowd, random).run();
        strip.length(length);
        crowd.keep(best);
        incumbent.offer(length, crowd);
        explore();
        compress();
    }

    private boolean over() {
        return halt.spent(seeker.tries()) >= phaseEnd || incumbent.length() <= target;
    }

    private boolean spent() {
        return halt.spent(seeker.tries()) >= phaseEnd;
    }

    private void explore() {
        phaseEnd = EXPLORING;
        Separation separation = new Separation(crowd, seeker, random, this::over);
        List<Try> pool = new ArrayList<>();
        double first = WIDEST;
        while (!spent()) {
            adopt();
            double step = first;
            target = length * (1 - step);
            if (pool.isEmpty()) {
                crowd.restore(best);
                resize(length, random.nextDouble() * length);
            } else {
                int index =
                        (int) Math.min(pool.size() - 1, Math.abs(random.nextGaussian(0, POOL_SPREAD)) * pool.size());
                strip.length(target);
                crowd.restore(pool.get(index).places());
                exchange.run();
            }
            crowd.levelWeights();
            double left = separate(separation, step);
            while (left > 0 && step > NARROWEST && !over()) {
                step = Math.max(NARROWEST, step / 2);
                double was = target;
                target = length * (1 - step);
                resize(was, random.nextDouble() * was);
                left = separate(separation, step);
            }
            if (left == 0) {
                success();
                pool.clear();
                first = Math.min(WIDEST, 2 * step);
            } else if (incumbent.length() < length) {
                pool.clear();
            } else {
                first = NARROWEST;
                pool.add(new Try(left, crowd.places()));
                pool.sort(Comparator.comparingDouble(Try::left));
            }
        }
    }

    /** Wide steps are given up soon: what they have moved is of use to the narrower ones. */
    private static double separate(Separation separation, double step) {
        boolean wide = step > NARROWEST;
        return separation.run(wide ? 1 : 3, wide ? 50 : 200);
    }

    private void compress() {
        phaseEnd = 1;
        Separation separation = new Separation(crowd, seeker, random, this::over);
        while (!spent()) {
            adopt();
            double through = (halt.spent(seeker.tries()) - EXPLORING) / (1 - EXPLORING);
            double step = FIRST_SQUEEZE * Math.pow(LAST_SQUEEZE / FIRST_SQUEEZE, through);
            target = length * (1 - step);
            crowd.restore(best);
            resize(length, random.nextDouble() * length);
            crowd.levelWeights();
            if (separation.run(5, 100) == 0) {
                success();
            }
        }
    }

    private void adopt() {
        if (incumbent.length() < length) {
            length = incumbent.take(best);
        }
    }

    private void success() {
        length = Math.min(target, used());
        crowd.keep(best);
        incumbent.offer(length, crowd);
    }

    private double used() {
        double right = 0;
        for (double partRight : crowd.right) {
            right = Math.max(right, partRight);
        }
        return right;
    }

    /** Makes the strip as long as the target: what lies right of the cut moves along. */
    private void resize(double from, double cut) {
        strip.length(target);
        for (int part = 0; part < crowd.parts; part++) {
            if (crowd.x[part] > cut) {
                crowd.put(part, crowd.turned[part], crowd.x[part] + target - from, crowd.y[part]);
            }
        }
        crowd.measureAll();
    }

    private record Try(double left, Places places) {}
}
