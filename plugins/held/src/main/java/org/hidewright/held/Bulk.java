package org.hidewright.held;

/**
 * How large a thing is.
 *
 * @param width millimetres, as is the rest
 * @param round whether its width and height are one diameter
 */
record Bulk(double width, double height, double thickness, boolean round) {}
