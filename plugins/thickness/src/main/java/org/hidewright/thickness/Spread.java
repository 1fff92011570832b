package org.hidewright.thickness;

import java.util.List;
import org.hidewright.api.measure.Length;

/**
 * Mean and spread of readings, in one pass that loses no digits where readings lie close together (Welford, 1962:
 * {@code mₖ = mₖ₋₁ + (x - mₖ₋₁)/k}, {@code Qₖ = Qₖ₋₁ + (x - mₖ₋₁)(x - mₖ)}).
 *
 * <p>The standard deviation divides by {@code n - 1}; with one reading there is none and it is not a number.
 */
final class Spread {
    private int count;
    private double mean;
    private double squares;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;

    /** Readings in millimetres, at least one. */
    static Spread of(List<Length> readings) {
        return ofNumbers(readings.stream().mapToDouble(Length::mm).toArray());
    }

    /** Plain numbers, at least one. */
    static Spread ofNumbers(double... readings) {
        Spread spread = new Spread();
        for (double reading : readings) {
            spread.take(reading);
        }
        return spread;
    }

    private void take(double reading) {
        count++;
        double before = reading - mean;
        mean += before / count;
        squares += before * (reading - mean);
        least = Math.min(least, reading);
        greatest = Math.max(greatest, reading);
    }

    int count() {
        return count;
    }

    double mean() {
        return mean;
    }

    double least() {
        return least;
    }

    double greatest() {
        return greatest;
    }

    /** Sum of the squares of the distances from the mean. */
    double squares() {
        return squares;
    }

    /** {@code s = √(Q / (n - 1))}. */
    double standardDeviation() {
        return Math.sqrt(squares / (count - 1));
    }

    /** {@code u = s / √n}. */
    double standardUncertainty() {
        return standardDeviation() / Math.sqrt(count);
    }
}
