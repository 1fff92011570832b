package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Which sheets parts may be laid on while a layout on fewer or cheaper ones is sought. */
final class OpenSheets {
    /** Beyond this share of its area a sheet is not even tried, unless parts may touch. */
    private static final double FULLEST = 0.98;

    private static final int DRAWS = 20;

    private final double[] areas;
    private final double[] costs;
    private final SplittableRandom random;
    /** The sheets, the cheapest for its area first. */
    private final int[] byPrice;

    private final double fullest;
    private boolean[] closed;

    /**
     * @param areas of the sheets, what can be cut from
     * @param costs of the sheets
     * @param touching whether parts may lie edge to edge
     */
    OpenSheets(double[] areas, double[] costs, boolean touching, SplittableRandom random) {
        this.fullest = touching ? 1 : FULLEST;
        this.areas = areas;
        this.costs = costs;
        this.random = random;
        this.closed = new boolean[areas.length];
        this.byPrice = IntStream.range(0, areas.length)
                .boxed()
                .sorted(Comparator.comparingDouble(sheet -> costs[sheet] / areas[sheet]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** How much parts may cover of a sheet at most, in area. */
    double most(int sheet) {
        return areas[sheet] * fullest;
    }

    boolean isClosed(int sheet) {
        return closed[sheet];
    }

    /** Those that are open, the cheapest for its area first. */
    int[] open() {
        return Arrays.stream(byPrice).filter(sheet -> !closed[sheet]).toArray();
    }

    /** An open sheet drawn by chance; of two drawn the one with more room. */
    int roomier(Stack[] stacks) {
        int[] open = open();
        int one = open[random.nextInt(open.length)];
        int other = open[random.nextInt(open.length)];
        return areas[one] - stacks[one].area() >= areas[other] - stacks[other].area() ? one : other;
    }

    /** Closes those on which nothing lies, and no others. */
    void onlyThoseInUse(Stack[] stacks) {
        for (int sheet = 0; sheet < stacks.length; sheet++) {
            closed[sheet] = stacks[sheet].parts().isEmpty();
        }
    }

    /**
     * Closes the sheet that saves most for the area of parts it carries, as far as the others may hold all parts, and opens what is
     * cheaper in its place.
     *
     * @return whether there is one
     */
    boolean closeTheDearest(Stack[] stacks) {
        int least = -1;
        for (int sheet = 0; sheet < stacks.length; sheet++) {
            if (mayClose(sheet, stacks)
                    && (least < 0 || costs[sheet] * stacks[least].area() > costs[least] * stacks[sheet].area())) {
                least = sheet;
            }
        }
        if (least >= 0) {
            close(least);
        }
        return least >= 0;
    }

    /**
     * Closes a sheet drawn by chance in place of the dearest one, now and then after another one was taken for one that was not used
     * and costs no more.
     *
     * @return whether one was found
     */
    boolean closeAnother(Stack[] stacks) {
        boolean[] before = closed.clone();
        if (random.nextBoolean()) {
            takeAnother();
        }
        for (int draw = 0; draw < DRAWS; draw++) {
            int sheet = random.nextInt(stacks.length);
            if (mayClose(sheet, stacks)) {
                close(sheet);
                return true;
            }
        }
        closed = before;
        return false;
    }

    private void takeAnother() {
        for (int draw = 0; draw < DRAWS; draw++) {
            int given = random.nextInt(closed.length);
            int taken = random.nextInt(closed.length);
            if (!closed[given] && closed[taken] && costs[taken] <= costs[given]) {
                closed[given] = true;
                closed[taken] = false;
                return;
            }
        }
    }

    private boolean mayClose(int sheet, Stack[] stacks) {
        double open = 0;
        double laid = 0;
        for (int each = 0; each < stacks.length; each++) {
            open += closed[each] ? 0 : areas[each];
            laid += stacks[each].area();
        }
        return !closed[sheet] && laid <= fullest * (open - areas[sheet] + cheaper(sheet));
    }

    private void close(int sheet) {
        closed[sheet] = true;
        double cost = 0;
        for (int each : byPrice) {
            if (closed[each] && cost + costs[each] < costs[sheet]) {
                cost += costs[each];
                closed[each] = false;
            }
        }
    }

    /** The area of sheets not used that together cost less than this one. */
    private double cheaper(int than) {
        double cost = 0;
        double area = 0;
        for (int sheet : byPrice) {
            if (closed[sheet] && cost + costs[sheet] < costs[than]) {
                cost += costs[sheet];
                area += areas[sheet];
            }
        }
        return area;
    }
}
