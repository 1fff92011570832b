package org.hidewright.api.benchwork;

/** When two edges count as flush with each other. */
final class Flush {
    /** A hundredth of what a knife can follow. */
    static final double MM = 1e-3;

    private Flush() {}
}
