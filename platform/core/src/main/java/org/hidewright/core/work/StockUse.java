package org.hidewright.core.work;

import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.StockLink;

/**
 * What a slip took from the workshop when it was read.
 *
 * @param link where from
 * @param seen the row or rows that lay there, or that there were none
 */
record StockUse(StockLink link, Object seen) {
    static StockUse of(StockLink link, Shelf shelf) {
        return new StockUse(link, shelf.seen(link));
    }

    /** Whether the same lies there now. */
    boolean holdsFor(Shelf shelf) {
        return seen.equals(shelf.seen(link));
    }
}
