package org.hidewright.core.range;

/**
 * Where a choice or a count becomes another one as one input moves and all others stay nominal.
 *
 * @param input which input
 * @param at its value there
 * @param from the choice below
 * @param to the choice above
 */
public record Switch(int input, double at, Object from, Object to) {}
