package org.hidewright.core.find;

/**
 * Where something that was found leads.
 *
 * @param calculator id of the calculator it is, is asked by, or is worked out by
 * @param slip id of the slip it stands on; empty where it stands on none
 * @param question what is asked: a key, or on a slip the place of its answer; empty for the whole
 */
public record Goal(String calculator, String slip, String question) {
    /** A calculator, or what it asks. */
    public static Goal calculator(String id, String question) {
        return new Goal(id, "", question);
    }
}
