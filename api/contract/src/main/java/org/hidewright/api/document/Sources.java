package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/** Where formulas and numbers come from. */
public final class Sources implements Block {
    private final List<Entry> entries;

    private Sources(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** A list of these, in their order. */
    public static Sources of(List<Entry> entries) {
        return new Sources(entries);
    }

    /** A list of these, in their order. */
    public static Sources of(Entry... entries) {
        return of(List.of(entries));
    }

    /** In the order they are printed. */
    public List<Entry> entries() {
        return entries;
    }

    /** One source. */
    public static final class Entry {
        private final String kind;
        private final String text;

        private Entry(String kind, String text) {
            this.kind = Objects.requireNonNull(kind, "kind");
            this.text = Objects.requireNonNull(text, "text");
        }

        /**
         * A source.
         *
         * @param kind what it is worth, in a word: definition, published, common practice, measured here
         */
        public static Entry of(String kind, String text) {
            return new Entry(kind, text);
        }

        /** What kind of source it is, in words. */
        public String kind() {
            return kind;
        }

        /** What the source is. */
        public String text() {
            return text;
        }
    }
}
