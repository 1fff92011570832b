package org.hidewright.costing;

import java.util.Arrays;
import java.util.List;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;

/** The units that stand on the labels in a shop, both systems beside each other, since shops abroad write the other one. */
enum SoldBy {
    AREA(Units.FT2, Units.DM2),
    LENGTH(Units.M, Units.YARD),
    VOLUME(Units.ML, Units.FLUID_OUNCE);

    /** A shop does not measure finer. */
    private static final double TENTHS = 10;
    /** Sums of what is typed in another unit end in noise that must not buy a tenth more. */
    private static final double NOISE = 1e-9;

    private final Unit first;
    private final Unit second;

    SoldBy(Unit first, Unit second) {
        this.first = first;
        this.second = second;
    }

    /** What is on a label, to tenths. */
    Phrase label(Quantity<?> quantity) {
        return Phrase.of(key(), nearest(first, quantity), nearest(second, quantity));
    }

    /** What is needed, up to the next tenth. */
    Phrase atLeast(Quantity<?> quantity) {
        return Phrase.of(key(), up(first, quantity), up(second, quantity));
    }

    private static double nearest(Unit unit, Quantity<?> quantity) {
        return Math.round(unit.fromBase(quantity.base()) * TENTHS) / TENTHS;
    }

    private static double up(Unit unit, Quantity<?> quantity) {
        return Math.ceil(unit.fromBase(quantity.base()) * TENTHS - NOISE) / TENTHS;
    }

    private String key() {
        return switch (this) {
            case AREA -> "sold-by-area";
            case LENGTH -> "sold-by-length";
            case VOLUME -> "sold-by-volume";
        };
    }

    static List<String> phrases() {
        return Arrays.stream(values()).map(SoldBy::key).toList();
    }
}
