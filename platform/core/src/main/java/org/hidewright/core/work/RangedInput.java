package org.hidewright.core.work;

import org.hidewright.api.measure.Typed;

/**
 * Something typed as a range.
 *
 * @param slip the slip it was typed on
 * @param path of its question, and of the item or side within it
 * @param typed what was typed
 */
public record RangedInput(String slip, String path, Typed typed) {}
