package org.hidewright.core.work;

import org.hidewright.api.measure.Range;

/** Which value is worked with where a range was typed. */
@FunctionalInterface
interface RangePick {
    /** The nominal value of each. */
    RangePick NOMINAL = (path, range) -> range.nominal();

    /**
     * The value to work with.
     *
     * @param path of the question, and of the item or side within it
     */
    double value(String path, Range range);
}
