package org.hidewright.core.range;

/**
 * What becomes of one measured or counted answer.
 *
 * @param nominal with every input at its nominal value
 * @param firstOrder its uncertainty to first order
 * @param low the least met anywhere tried; never a promise that nothing less can be
 * @param high the most met
 * @param sampleDeviation standard deviation over the sample
 * @param sampleMean mean over the sample
 */
public record Spread(
        double nominal, FirstOrder firstOrder, double low, double high, double sampleDeviation, double sampleMean) {
    /** Five times what the sample of {@link RangeStudy#SAMPLE} is out by itself; our own limit. */
    private static final double TELLING = 0.2;

    /** Below this share of the answer a spread is what is lost in arithmetic. */
    private static final double NOTHING = 1e-12;

    /** Whether the answer moves at all. */
    public boolean moves() {
        return high - low > NOTHING * Math.max(Math.abs(low), Math.abs(high));
    }

    /** Lower end of the first-order interval. */
    public double intervalLow() {
        return nominal - firstOrder.coverage() * firstOrder.standardUncertainty();
    }

    /** Upper end of the first-order interval. */
    public double intervalHigh() {
        return nominal + firstOrder.coverage() * firstOrder.standardUncertainty();
    }

    /**
     * Whether the first order tells what the sample does: its deviation, and a middle near the nominal value. Where it does
     * not, the answer bends too much within the range, and only what was met is to be trusted.
     */
    public boolean firstOrderHolds() {
        double uncertainty = firstOrder.standardUncertainty();
        double larger = Math.max(uncertainty, sampleDeviation);
        return Math.abs(uncertainty - sampleDeviation) <= TELLING * larger
                && Math.abs(sampleMean - nominal) <= TELLING * larger + NOTHING * Math.abs(nominal);
    }
}
