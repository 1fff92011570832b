package org.hidewright.core.range;

/**
 * A part in which there is no answer.
 *
 * @param part where
 * @param why what was told
 */
public record RefusedPart<R>(Part part, R why) {}
