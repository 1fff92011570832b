package org.hidewright.core.expression;

import org.hidewright.api.calculator.Phrase;

/** What sort of thing an expression gives. */
public sealed interface Sort permits Measure, Sort.Plain {
    /** What is no amount. */
    enum Plain implements Sort {
        /** Yes or no. */
        TRUTH("sort-truth"),
        /** One of the words of a choice. */
        WORD("sort-word");

        private final String key;

        Plain(String key) {
            this.key = key;
        }

        @Override
        public Phrase words() {
            return Phrase.of(key);
        }
    }

    /** In words, with an article. */
    Phrase words();
}
