package org.hidewright.edges;

/** Whether an edge can be rubbed to a shine. */
public enum BurnishingVerdict {
    DOES,
    TEST_FIRST,
    WILL_NOT
}
