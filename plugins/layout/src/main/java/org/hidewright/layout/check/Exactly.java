package org.hidewright.layout.check;

import java.math.BigDecimal;

/**
 * Signs that are right whatever the numbers: by floating point where that is certain, else by exact arithmetic (a
 * filter after Shewchuk, Adaptive Precision Floating-Point Arithmetic, 1997; the exact stage is plain decimals, which hold
 * every double, since it is rarely reached).
 */
final class Exactly {
    /** (3 + 16 u) u with u = 2^-53, Shewchuk's bound for the sign of the turn. */
    private static final double CERTAIN = (3 + 16 * 0x1p-53) * 0x1p-53;

    private Exactly() {}

    /**
     * On which side of the line from a to b the point c lies.
     *
     * @return 1 on the left, -1 on the right, 0 on the line
     */
    static int side(double ax, double ay, double bx, double by, double cx, double cy) {
        double left = (ax - cx) * (by - cy);
        double right = (ay - cy) * (bx - cx);
        double turn = left - right;
        double bound = CERTAIN * (Math.abs(left) + Math.abs(right));
        if (turn > bound || -turn > bound) {
            return turn > 0 ? 1 : -1;
        }
        return side(
                new BigDecimal(ax),
                new BigDecimal(ay),
                new BigDecimal(bx),
                new BigDecimal(by),
                new BigDecimal(cx),
                new BigDecimal(cy));
    }

    static int side(BigDecimal ax, BigDecimal ay, BigDecimal bx, BigDecimal by, BigDecimal cx, BigDecimal cy) {
        BigDecimal left = ax.subtract(cx).multiply(by.subtract(cy));
        BigDecimal right = ay.subtract(cy).multiply(bx.subtract(cx));
        return left.compareTo(right);
    }
}
