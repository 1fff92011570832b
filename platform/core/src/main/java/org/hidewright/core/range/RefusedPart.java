package org.hidewright.core.range;

/**
 * A part of the range of one input in which there is no answer, all others staying nominal.
 *
 * @param input which input
 * @param from the part begins there
 * @param to and ends there
 * @param why what was told
 */
public record RefusedPart<R>(int input, double from, double to, R why) {}
