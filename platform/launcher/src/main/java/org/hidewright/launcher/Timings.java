package org.hidewright.launcher;

import java.io.PrintStream;
import java.time.Instant;

/**
 * When each step of a start was reached, for the start benchmark. Off unless the environment variable
 * {@code HIDEWRIGHT_TIMINGS} gives the moment the program was asked for, in nanoseconds since 1970.
 */
final class Timings {

    private final String begun = System.getenv("HIDEWRIGHT_TIMINGS");
    private final StringBuilder told = new StringBuilder();

    /** Notes that a step is done. */
    void reached(String step) {
        if (begun != null) {
            Instant now = Instant.now();
            long nanos = now.getEpochSecond() * 1_000_000_000L + now.getNano() - Long.parseLong(begun);
            told.append("timing\t")
                    .append(step)
                    .append('\t')
                    .append(nanos / 1000)
                    .append(" us\n");
        }
    }

    /** Prints the steps; not as they come, so that printing is in none of them. */
    void tell(PrintStream to) {
        if (begun != null) {
            to.print(told);
        }
    }
}
