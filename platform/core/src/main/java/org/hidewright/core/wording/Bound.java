package org.hidewright.core.wording;

import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Unit;

/**
 * A limit in a sentence. Where it must be rounded to be told in another unit, it is rounded to the side that is within, so that
 * what is told as the least can be typed.
 *
 * @param base the limit in the base unit of its dimension
 * @param inward up for the least, down for the most
 */
public record Bound(double base, Unit unit, Rounding inward) {
    /** A limit in the unit that suits it. */
    public static Bound of(Dimension dimension, double base, Rounding inward) {
        return new Bound(base, Wording.unit(dimension, base), inward);
    }
}
