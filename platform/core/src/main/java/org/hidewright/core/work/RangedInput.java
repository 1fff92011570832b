package org.hidewright.core.work;

import org.hidewright.api.measure.Typed;

/**
 * Something typed as a range, on a slip or in a cell of the workshop.
 *
 * @param slip the slip it was typed on; empty for the workshop
 * @param path of its question, and of the item or side within it; in the workshop its cell
 * @param typed what was typed
 */
public record RangedInput(String slip, String path, Typed typed) {}
