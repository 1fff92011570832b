package org.hidewright.api.document;

/** How much a check weighs, heaviest first. */
public enum Severity {
    /** Do not cut. */
    STOP,
    /** Likely wrong: look again before cutting. */
    CHECK,
    /** Someone could be hurt, or leather spoiled. */
    CAUTION,
    /** Good to know. */
    NOTE
}
