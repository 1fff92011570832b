package org.hidewright.core.catalogue;

/**
 * A bundle that is here and would bring a calculator which nobody brings now.
 *
 * @param bundle its symbolic name
 * @param why what keeps it away
 */
public record Away(String bundle, Why why) {
    /** What keeps a bundle away. */
    public enum Why {
        /** It is turned off. */
        OFF,
        /** It did not start. */
        FAILED,
        /** It was copied in, and waits for the word of the maker. */
        WAITING
    }
}
