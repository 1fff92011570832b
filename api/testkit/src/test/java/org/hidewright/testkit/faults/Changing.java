package org.hidewright.testkit.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;

/** Faults of answers that change though nothing that is asked does. */
public final class Changing {
    private Changing() {}

    /** It counts how often it is asked. */
    @Calculates("counting")
    public static final class Counting implements Calculator<Strip.Asks, Strip.Takes> {
        private static int asked;

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            asked++;
            return Outcome.of(Strip.takes(asked));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It answers with a list that it keeps and adds to. */
    @Calculates("growing")
    public static final class Growing implements Calculator<Strip.Asks, Strip.Takes> {
        private static final List<String> KEPT = new ArrayList<>();

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            KEPT.add("a strip");
            return Outcome.of(new Strip.Takes(Area.ZERO, 1, KEPT));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It remembers what it was asked first. */
    @Calculates("first")
    public static final class First implements Calculator<Strip.Asks, Strip.Takes> {
        private static double first;

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            if (first == 0) {
                first = asks.width().mm();
            }
            return Outcome.of(Strip.takes(first));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It throws dice. */
    @Calculates("chancy")
    public static final class Chancy implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks.width().mm() * Math.random()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It looks at the clock. */
    @Calculates("clocked")
    public static final class Clocked implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(System.nanoTime()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It writes numbers as the computer does. */
    @Calculates("local")
    public static final class Local implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(1, String.format("%.1f", asks.width().mm())));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It takes the language of the computer once and for all. */
    @Calculates("local-at-start")
    public static final class LocalAtStart implements Calculator<Strip.Asks, Strip.Takes> {
        private static final String LANGUAGE = Locale.getDefault().getLanguage();

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(1, LANGUAGE));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It takes the day of the computer. */
    @Calculates("zoned")
    public static final class Zoned implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(1, ZoneId.systemDefault().getId()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It answers for the thread it is on. */
    @Calculates("threaded")
    public static final class Threaded implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(1, Thread.currentThread().getName()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It counts on each thread. */
    @Calculates("on-thread")
    public static final class OnThread implements Calculator<Strip.Asks, Strip.Takes> {
        private static final ThreadLocal<Integer> ASKED = ThreadLocal.withInitial(() -> 0);

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            ASKED.set(ASKED.get() + 1);
            return Outcome.of(Strip.takes(ASKED.get()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It keeps what it is asked in a field while it works. */
    @Calculates("shared")
    public static final class Shared implements Calculator<Strip.Asks, Strip.Takes> {
        private volatile Strip.Asks now;

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            now = asks;
            for (int i = 0; i < 50_000; i++) {
                Thread.onSpinWait();
            }
            return Outcome.of(Strip.takes(now, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** What it asks for help looks at the clock. */
    @Calculates("helped")
    public static final class Helped implements Calculator<Strip.Asks, Strip.Takes> {
        private static final class Helper {
            static long seconds() {
                return LocalDate.now(ZoneId.of("UTC")).toEpochDay();
            }
        }

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(Helper.seconds() > 0 ? asks.width().mm() : 0));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It looks for a file. */
    @Calculates("reading")
    public static final class Reading implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(Files.exists(Path.of("hide")) ? 1 : 2));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It starts chance where the clock is. */
    @Calculates("dicing")
    public static final class Dicing implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(new Random().nextInt(1) + asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It works on threads of its own. */
    @Calculates("crowded")
    public static final class Crowded implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(IntStream.range(0, 9).parallel().sum()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }
}
