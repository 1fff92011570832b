package org.hidewright.api.benchwork;

import java.util.Objects;

/** Thrown where something does not go where it is wanted: a line at its margin, a window, a hole. */
public final class NoRoom extends Exception {
    private static final long serialVersionUID = 1;

    private final String part;
    private final String what;

    /**
     * @param part id of the part
     * @param what id of the line, hole or window that has no room on it
     */
    public NoRoom(String part, String what) {
        super("no room for " + what + " on " + part);
        this.part = Objects.requireNonNull(part, "part");
        this.what = Objects.requireNonNull(what, "what");
    }

    /** Id of the part. */
    public String part() {
        return part;
    }

    /** Id of what has no room on it. */
    public String what() {
        return what;
    }
}
