package org.hidewright.documents;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers of drawing files: with a point, to a millionth, without needless noughts, alike in every language. */
public final class PlainDecimal {
    private static final int PLACES = 6;

    private PlainDecimal() {}

    public static String of(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number)
                .setScale(PLACES, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
