package org.hidewright.costing;

/** Whether the price a customer is told holds the tax. */
public enum TaxShown {
    /** The tax is inside, as in shops of many countries. */
    INSIDE,
    /** The tax comes on top. */
    ON_TOP
}
