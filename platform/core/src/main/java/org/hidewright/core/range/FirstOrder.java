package org.hidewright.core.range;

import java.util.Arrays;

/**
 * The law of propagation of uncertainty, JCGM 100:2008, 5.1.2: what the standard uncertainties of inputs make of one answer.
 *
 * @param standardUncertainty combined, 0 or more
 * @param shares of each input in its square, 0 to 1 and together 1; all 0 where the uncertainty is
 */
public record FirstOrder(double standardUncertainty, double[] shares) {
    /** Coverage factor for about 95 % where several inputs count (JCGM 100, 6.3.3). */
    public static final double SEVERAL = 2;

    /** Coverage factor for 95 % of an even spread, 0.95 √3, where one input outweighs all others (EA-4/02, S9; from memory). */
    public static final double ONE = 0.95 * Math.sqrt(3);

    /** An input with at least this share outweighs all others. */
    private static final double OUTWEIGHS = 0.9;

    public FirstOrder {
        shares = shares.clone();
    }

    @Override
    public double[] shares() {
        return shares.clone();
    }

    /** How many standard uncertainties to either side hold about 95 %. */
    public double coverage() {
        return Arrays.stream(shares).anyMatch(share -> share >= OUTWEIGHS) ? ONE : SEVERAL;
    }

    /** Of inputs that know nothing of each other. */
    static FirstOrder of(double[] contributions) {
        double square = 0;
        for (double contribution : contributions) {
            square += contribution * contribution;
        }
        double[] shares = new double[contributions.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = square > 0 ? contributions[i] * contributions[i] / square : 0;
        }
        return new FirstOrder(Math.sqrt(square), shares);
    }

    /**
     * What one input contributes: half the change of the answer between one standard uncertainty below and one above,
     * which stands for sensitivity times uncertainty (JCGM 100, 5.1.3, note 2).
     */
    static double contribution(double below, double above) {
        return (above - below) / 2;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FirstOrder that
                && standardUncertainty == that.standardUncertainty
                && Arrays.equals(shares, that.shares);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(standardUncertainty) + Arrays.hashCode(shares);
    }

    @Override
    public String toString() {
        return standardUncertainty + " from " + Arrays.toString(shares);
    }
}
