package org.hidewright.api.measure;

import java.util.List;
import java.util.Optional;

/** Ends a reading at the first trouble; it never leaves this package. */
final class Unclear extends Exception {
    private static final long serialVersionUID = 1;

    private final Trouble trouble;
    private final int start;
    private final String suggestion;
    private final String[] args;

    /**
     * Describes the trouble.
     *
     * @param start place in the text, counted from 0; one past the end is taken as the last place
     * @param suggestion the whole text put right, or null
     */
    Unclear(Trouble trouble, int start, String suggestion, String... args) {
        super(trouble.key(), null, false, false);
        if (args.length != trouble.places()) {
            throw new IllegalArgumentException(trouble + " takes " + trouble.places() + " arguments");
        }
        this.trouble = trouble;
        this.start = start;
        this.suggestion = suggestion;
        this.args = args;
    }

    Optional<String> suggestion() {
        return Optional.ofNullable(suggestion);
    }

    <T> Unreadable<T> in(String text, Optional<String> checkedSuggestion) {
        int column = Math.max(1, Math.min(start + 1, text.length()));
        return Unreadable.of(trouble.key(), List.of(args), column, checkedSuggestion);
    }
}
