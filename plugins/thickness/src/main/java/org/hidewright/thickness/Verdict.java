package org.hidewright.thickness;

/** Whether a leather takes a use, best first. */
public enum Verdict {
    DOES,
    TEST_FIRST,
    WILL_NOT
}
