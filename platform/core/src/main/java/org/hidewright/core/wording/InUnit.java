package org.hidewright.core.wording;

import org.hidewright.api.measure.Unit;

/**
 * A number in a sentence that is read in a unit, as one asked for in per cent; a quantity finds a unit for itself.
 *
 * @param base the number in the base unit of its dimension
 */
public record InUnit(double base, Unit unit) {}
