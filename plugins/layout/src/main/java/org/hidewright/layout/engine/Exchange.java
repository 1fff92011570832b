package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;

/** Lets two large parts that differ change places: a way out where parts do not come apart. After arXiv 2509.13329. */
final class Exchange {
    private static final double LARGE_SHARE = 0.75;
    private static final double ALIKE = 0.01;
    private static final int DRAWS = 100;

    private final Crowd crowd;
    private final SplittableRandom random;
    private final boolean[] large;

    Exchange(Crowd crowd, SplittableRandom random) {
        this.crowd = crowd;
        this.random = random;
        this.large = large(crowd.form);
    }

    void run() {
        for (int draw = 0; draw < DRAWS; draw++) {
            int one = random.nextInt(crowd.parts);
            int other = random.nextInt(crowd.parts);
            if (large[one] && large[other] && !alike(crowd.form[one], crowd.form[other])) {
                swap(one, other);
                return;
            }
        }
    }

    private void swap(int one, int other) {
        double oneX = middle(crowd.left[one], crowd.right[one]);
        double oneY = middle(crowd.low[one], crowd.high[one]);
        double otherX = middle(crowd.left[other], crowd.right[other]);
        double otherY = middle(crowd.low[other], crowd.high[other]);
        centre(one, otherX, otherY);
        centre(other, oneX, oneY);
        crowd.measureAll();
    }

    private void centre(int part, double toX, double toY) {
        Turned as = crowd.turned[part];
        crowd.put(part, as, toX - middle(as.minX, as.maxX), toY - middle(as.minY, as.maxY));
    }

    private static double middle(double from, double to) {
        return (from + to) / 2;
    }

    private static boolean alike(Form one, Form other) {
        return one == other || alike(one.hullArea, other.hullArea) && alike(one.diameter, other.diameter);
    }

    private static boolean alike(double one, double other) {
        return Math.abs(one - other) <= ALIKE * Math.max(one, other);
    }

    /** The largest parts that together have most of the area. */
    private static boolean[] large(Form[] form) {
        Integer[] order = new Integer[form.length];
        Arrays.setAll(order, index -> index);
        Arrays.sort(order, Comparator.comparingDouble((Integer part) -> -form[part].hullArea));
        double all = Arrays.stream(form).mapToDouble(each -> each.hullArea).sum();
        boolean[] large = new boolean[form.length];
        double sum = 0;
        for (Integer part : order) {
            large[part] = true;
            sum += form[part].hullArea;
            if (sum >= LARGE_SHARE * all) {
                break;
            }
        }
        return large;
    }
}
