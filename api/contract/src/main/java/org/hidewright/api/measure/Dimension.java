package org.hidewright.api.measure;

/** What a value measures; two values can be linked or compared only within one dimension. */
public enum Dimension {
    /** Base unit: millimetre. */
    LENGTH,
    /** Base unit: radian. */
    ANGLE,
    /** Base unit: square millimetre. */
    AREA,
    /** Base unit: gram. */
    MASS,
    /** Base unit: gram per cubic centimetre. */
    DENSITY,
    /** Base unit: millilitre. */
    VOLUME,
    /** Base unit: second. */
    DURATION,
    /** Base unit: one of its currency; currencies are not converted into each other. */
    MONEY,
    /** A plain number: a count, a share, a factor. */
    NUMBER
}
