package org.hidewright.costing;

import java.util.Locale;

/** What a line of a cost sheet stands for. */
public enum CostKind {
    LEATHER,
    HARDWARE,
    THREAD,
    LIQUIDS,
    MACHINES,
    WORK,
    ONCE_ONLY,
    OVERHEAD,
    SPOILAGE,
    PACKING;

    /** Its key, and the beginning of the ids of its lines. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The id of the line for a row; of the one line where there are no rows. */
    String line(String row) {
        return row.isEmpty() ? key() : key() + "-" + row;
    }
}
