package org.hidewright.fasteners;

import org.hidewright.api.measure.Length;

/** How leather feels in the hand, and with it how far it closes round a shank. */
public enum Temper {
    SOFT(0.3),
    MEDIUM(0.15),
    FIRM(0);

    private final double closesMm;

    Temper(double closesMm) {
        this.closesMm = closesMm;
    }

    /** How much narrower than the shank a hole may be and still let it through. */
    Length closes() {
        return Length.ofMm(closesMm);
    }
}
