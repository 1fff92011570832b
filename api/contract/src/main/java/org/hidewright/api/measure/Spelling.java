package org.hidewright.api.measure;

/** How a quantity was typed; an echo or an editor repeats the same way of writing. */
public enum Spelling {
    /** One number: {@code 8 oz}. */
    EXACT,
    /** Two limits: {@code 2-3 oz}. */
    FROM_TO,
    /** A nominal value with the distance to its limits: {@code 31 ± 0.5 mm}. */
    PLUS_MINUS
}
