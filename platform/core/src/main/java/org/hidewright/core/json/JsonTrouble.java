package org.hidewright.core.json;

/** Text that is not JSON: where, and what the parser says of it. */
public final class JsonTrouble extends Exception {
    private static final long serialVersionUID = 1L;

    /** What kind of trouble it is. */
    public enum Kind {
        /** There is no value at all. */
        EMPTY,
        /** A value is followed by more. */
        MORE_AFTER_END,
        /** Anything else; the message says what the parser found. */
        SYNTAX
    }

    private final transient Place place;
    private final Kind kind;

    JsonTrouble(Place place, Kind kind, String problem, Throwable cause) {
        super(problem, cause);
        this.place = place;
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }

    public Place place() {
        return place;
    }
}
