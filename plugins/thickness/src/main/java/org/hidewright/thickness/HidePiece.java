package org.hidewright.thickness;

import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Units;

/** What leather is bought as, with the area such a piece usually has (common practice; tanneries and breeds differ). */
public enum HidePiece {
    CATTLE_SIDE(18, 28),
    WHOLE_CATTLE_HIDE(45, 60),
    BEND(8, 12),
    DOUBLE_BUTT(16, 22),
    DOUBLE_SHOULDER(10, 16),
    BELLY(4, 8),
    CALF_SKIN(6, 14),
    GOAT_SKIN(3, 7),
    SHEEP_SKIN(4, 8),
    PIG_SKIN(8, 14),
    KANGAROO_SKIN(3, 8);

    private final Area least;
    private final Area most;

    HidePiece(double leastSquareFeet, double mostSquareFeet) {
        least = Area.of(leastSquareFeet, Units.FT2);
        most = Area.of(mostSquareFeet, Units.FT2);
    }

    Area least() {
        return least;
    }

    Area most() {
        return most;
    }

    boolean usuallyHas(Area area) {
        return area.compareTo(least) >= 0 && area.compareTo(most) <= 0;
    }
}
