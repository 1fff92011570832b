package org.hidewright.testkit;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.TypedText;
import org.hidewright.api.measure.Units;

/**
 * Whether a calculation is quick enough to be worked while a maker types. It is held against reading typed lengths in the same
 * run, by the work of the processor and not by the clock on the wall, so that a slow or busy computer does not matter.
 */
final class Pace {
    /** A host asks about a hundred times for one range; with this it shows the range within seconds. */
    static final int MOST_READINGS = 10_000;

    private static final int READINGS = 2_000;
    private static final int TIMES = 7;
    private static final int ASKED = 4;
    private static final ThreadMXBean PROCESSOR = ManagementFactory.getThreadMXBean();

    private Pace() {}

    static List<String> wrong(Trials trials) {
        try {
            double reading = trials.bench().work(() -> least(Pace::read)) / (double) READINGS;
            double calculation = 0;
            for (Values asked : trials.someAsked(ASKED)) {
                calculation = Math.max(
                        calculation, trials.bench().work(() -> least(() -> Bench.now(trials.calculator(), asked))));
            }
            long readings = Math.round(calculation / reading);
            return readings <= MOST_READINGS
                    ? List.of()
                    : List.of(trials.id() + ": one answer takes as long as reading " + readings
                            + " typed lengths, and more than "
                            + MOST_READINGS
                            + " keeps a maker waiting who types. Look for work that is done again and again,"
                            + " or for steps that are finer than leather.");
        } catch (TimeoutException e) {
            return List.of(trials.id() + ": " + TIMES + " answers take longer than " + Bench.WAITS_S
                    + " seconds. A maker who types would wait; look for work that is done again and again.");
        }
    }

    /** The least of some times is what the work takes; the others were disturbed, or not yet compiled. */
    private static long least(Runnable work) {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < TIMES; i++) {
            long before = PROCESSOR.getCurrentThreadCpuTime();
            work.run();
            least = Math.min(least, PROCESSOR.getCurrentThreadCpuTime() - before);
        }
        return least;
    }

    private static void read() {
        double sum = 0;
        for (int i = 0; i < READINGS; i++) {
            sum += TypedText.quantity(i + ".5 mm", Dimension.LENGTH, Optional.of(Units.MM))
                    .understood()
                    .orElseThrow()
                    .range()
                    .nominal();
        }
        if (!(sum > 0)) { // so that nothing of it can be left out
            throw new IllegalStateException("lengths are read wrong");
        }
    }
}
