package org.hidewright.costing;

import org.hidewright.api.measure.Area;

/** What a share of waste is a share of; the two differ, and people mean both. */
public enum WasteOf {
    /** Of the leather that is bought: what lies on the floor over what was on the table. */
    BOUGHT {
        @Override
        Area bought(Area net, double waste) {
            return net.times(1 / (1 - waste));
        }
    },
    /** Of the leather in the piece: what lies on the floor over what is in the piece. */
    USED {
        @Override
        Area bought(Area net, double waste) {
            return net.times(1 + waste);
        }
    };

    /** The leather that is taken for what is in the pieces. */
    abstract Area bought(Area net, double waste);
}
