package org.hidewright.api.calculator;

/** The direction a shown value is rounded in. */
public enum Rounding {
    /** To the nearest step, where neither direction is the safe one. */
    NEAREST,
    /** Never shown larger than it is: a hole row that must end before the tip. */
    DOWN,
    /** Never shown smaller than it is: a length to cut. */
    UP
}
