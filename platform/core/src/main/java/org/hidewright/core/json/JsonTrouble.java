package org.hidewright.core.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import org.hidewright.api.calculator.Phrase;

/**
 * Text that is not JSON: where, and what is wrong there. The message is for who writes programs, the words are for who
 * wrote the text.
 */
public final class JsonTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    /** What kind of trouble it is. */
    public enum Kind {
        /** There is no value at all. */
        EMPTY,
        /** A value is followed by more. */
        MORE_AFTER_END,
        /** Anything else; the words say what. */
        SYNTAX
    }

    private final transient Place place;
    private final Kind kind;
    private final transient Phrase words;

    JsonTrouble(Place place, Kind kind, Phrase words, JsonProcessingException cause) {
        super(cause == null ? words.key() : cause.getOriginalMessage(), cause);
        this.place = place;
        this.kind = kind;
        this.words = words;
    }

    public Kind kind() {
        return kind;
    }

    /** What is wrong, with a text of the host. */
    public Phrase words() {
        return words;
    }

    public Place place() {
        return place;
    }
}
