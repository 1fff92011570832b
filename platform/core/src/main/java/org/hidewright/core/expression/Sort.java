package org.hidewright.core.expression;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import org.hidewright.api.calculator.Phrase;

/** What sort of thing an expression gives. */
public sealed interface Sort permits Measure, Sort.Plain, Sort.OneOf {
    /** What is no amount. */
    enum Plain implements Sort {
        /** Yes or no. */
        TRUTH("sort-truth"),
        /** A word, nobody knows which. */
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

    /** One of the words of a choice. */
    record OneOf(Set<String> options) implements Sort {
        public OneOf {
            options = Collections.unmodifiableSet(new TreeSet<>(options));
        }

        @Override
        public boolean fits(Sort wanted) {
            return wanted == Plain.WORD || wanted instanceof OneOf;
        }

        @Override
        public Phrase words() {
            return Plain.WORD.words();
        }
    }

    /** Whether it can stand where another is wanted: any word stands for a word. */
    default boolean fits(Sort wanted) {
        return equals(wanted);
    }

    /** In words, with an article. */
    Phrase words();
}
