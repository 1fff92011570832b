package org.hidewright.command;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hidewright.core.search.SearchBudget;
import picocli.CommandLine.ParseResult;

/**
 * What the search of each slip may spend, as it was typed.
 *
 * @param tries empty where it is time that is spent
 */
record SearchSpending(Optional<Long> tries, long seconds, int threads, long seed) {
    static final String SECONDS = "--seconds";
    static final String TRIES = "--tries";
    static final String SEED = "--seed";
    static final String THREADS = "--threads";
    private static final String USUAL_SECONDS = "60";
    private static final long LONGEST = TimeUnit.DAYS.toSeconds(7);
    private static final long MOST_TRIES = Long.MAX_VALUE / 2;
    private static final int MOST_THREADS = 256;

    static SearchSpending of(ParseResult arguments, Session session) throws BadArgument {
        if (arguments.hasMatchedOption(SECONDS) && arguments.hasMatchedOption(TRIES)) {
            throw new BadArgument(session.texts().text("search.seconds-or-tries"));
        }
        if (arguments.hasMatchedOption(THREADS) && arguments.hasMatchedOption(TRIES)) {
            throw new BadArgument(session.texts().text("search.tries-one-thread"));
        }
        String tries = arguments.matchedOptionValue(TRIES, "");
        String threads = String.valueOf(Runtime.getRuntime().availableProcessors());
        return new SearchSpending(
                tries.isEmpty() ? Optional.empty() : Optional.of(number(TRIES, tries, MOST_TRIES, session)),
                number(SECONDS, arguments.matchedOptionValue(SECONDS, USUAL_SECONDS), LONGEST, session),
                (int) number(THREADS, arguments.matchedOptionValue(THREADS, threads), MOST_THREADS, session),
                number(SEED, arguments.matchedOptionValue(SEED, "1"), MOST_TRIES, session));
    }

    private static long number(String option, String typed, long most, Session session) throws BadArgument {
        if (typed.matches("\\d{1,18}")) {
            long number = Long.parseLong(typed);
            if (number >= 1 && number <= most) {
                return number;
            }
        }
        throw new BadArgument(session.texts().text("search.no-number", option, typed, most));
    }

    /** A budget that is spent from now on. */
    SearchBudget budget() {
        return tries.map(most -> SearchBudget.ofTries(most, seed))
                .orElseGet(() -> SearchBudget.ofTime(Duration.ofSeconds(seconds), System::nanoTime, threads, seed));
    }
}
