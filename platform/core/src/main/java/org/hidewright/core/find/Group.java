package org.hidewright.core.find;

/** What can be found; things of one sort are shown together. */
public enum Group {
    /** A slip of the project. */
    SLIP,
    /** What is asked on a slip of the project. */
    SLIP_QUESTION,
    /** What is told on a slip of the project. */
    NOTICE,
    /** A calculator that makes a piece. */
    TEMPLATE,
    /** Any other calculator. */
    CALCULATOR,
    /** What a calculator asks. */
    QUESTION
}
