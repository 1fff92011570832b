package org.hidewright.core.range;

/**
 * A part of the range of one input, all others staying nominal.
 *
 * @param input which input
 * @param from the part begins there
 * @param to and ends there
 */
public record Part(int input, double from, double to) {}
