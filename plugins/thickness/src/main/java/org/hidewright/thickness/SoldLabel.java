package org.hidewright.thickness;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Phrase;

/**
 * The label a thickness is sold under: a range one ounce wide, {@code 4-5 oz}, from {@code 0-1 oz} to
 * {@code 14-15 oz} (common practice).
 *
 * <p>A thickness on the border of two labels may be found under either, and is given both.
 */
final class SoldLabel {
    /** The heaviest label, in whole ounces at its upper end. */
    static final int HEAVIEST_OUNCES = 15;

    private static final String ONE = "sold-label";
    private static final String EITHER = "sold-label-either";
    private static final String ABOVE = "sold-label-above";
    private static final String USES = "sold-uses-";

    /** How near to a whole ounce counts as on the border; far below what any gauge shows, far above rounding. */
    private static final double BORDER_OUNCES = 1e-9;

    private final double ounces;

    private SoldLabel(double ounces) {
        this.ounces = ounces;
    }

    /** The label of a thickness in leather ounces, which must be above 0. */
    static SoldLabel of(double ounces) {
        return new SoldLabel(ounces);
    }

    private boolean above() {
        return ounces > HEAVIEST_OUNCES + BORDER_OUNCES;
    }

    private boolean betweenTwo() {
        double nearest = Math.rint(ounces);
        return nearest >= 1 && nearest < HEAVIEST_OUNCES && Math.abs(ounces - nearest) <= BORDER_OUNCES;
    }

    /** Lower end of the label, in whole ounces; on a border that of the lighter label. */
    int lowerOunces() {
        if (betweenTwo()) {
            return (int) Math.rint(ounces) - 1;
        }
        return Math.min((int) Math.floor(ounces), HEAVIEST_OUNCES - 1);
    }

    /** The label in words. */
    Phrase asSold() {
        if (above()) {
            return Phrase.of(ABOVE, HEAVIEST_OUNCES);
        }
        int low = lowerOunces();
        return betweenTwo() ? Phrase.of(EITHER, low, low + 1, low + 2) : Phrase.of(ONE, low, low + 1);
    }

    /** What leather under this label is usually made into. */
    Phrase usualUses() {
        return Phrase.of(USES + (above() ? HEAVIEST_OUNCES : lowerOunces()));
    }

    /** How far the nearest border between two labels is, in ounces; above the heaviest label, how far that is. */
    double toNearestBorderOunces() {
        double nearest = Math.min(Math.max(Math.rint(ounces), 1), HEAVIEST_OUNCES);
        return Math.abs(ounces - nearest);
    }

    /** Every phrase a label can be put in. */
    static List<String> phrases() {
        List<String> uses = IntStream.rangeClosed(0, HEAVIEST_OUNCES)
                .mapToObj(low -> USES + low)
                .toList();
        return Stream.concat(Stream.of(ONE, EITHER, ABOVE), uses.stream()).toList();
    }
}
