package org.hidewright.core.json;

/** Text that is not JSON: where, and what the parser says of it. */
public final class JsonTrouble extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Place place;

    JsonTrouble(Place place, String problem, Throwable cause) {
        super(problem, cause);
        this.place = place;
    }

    public Place place() {
        return place;
    }
}
