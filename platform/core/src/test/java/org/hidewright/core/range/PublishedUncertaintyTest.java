package org.hidewright.core.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hidewright.api.measure.Range;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of JCGM 100:2008 (annex H) and JCGM 101:2008 (clause 9), their figures from memory. An input of standard
 * uncertainty u is a range of half-width u √3, as a range is taken to be even all over.
 */
class PublishedUncertaintyTest {
    private static final double SQRT_3 = Math.sqrt(3);

    private static Range input(double estimate, double standardUncertainty) {
        return Range.plusMinus(estimate, standardUncertainty * SQRT_3);
    }

    private static Map<String, Spread> study(List<Range> inputs, Function<double[], Map<String, Object>> model) {
        return RangeStudy.<String>of(inputs, values -> new Trial.Answered<>(model.apply(values)))
                .orElseThrow()
                .spreads();
    }

    private static Spread one(List<Range> inputs, ToDoubleFunction<double[]> model) {
        return study(inputs, values -> Map.of("y", model.applyAsDouble(values))).get("y");
    }

    /** H.1: length of an end gauge in nm, l = lS + d - lS (δα θ + αS δθ); u = 32 nm, by 25, 9.7, 2.9 and 16.6 nm. */
    @Test
    void endGaugeCalibration() {
        double standard = 50_000_623;
        List<Range> inputs = List.of(
                input(standard, 25),
                input(215, 9.7),
                input(0, 0.58e-6),
                input(-0.1, 0.41),
                input(11.5e-6, 1.2e-6),
                input(0, 0.029));
        Spread length = one(inputs, x -> x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]));
        assertEquals(50_000_838, length.nominal(), 0.5);
        double u = length.firstOrder().standardUncertainty();
        assertEquals(32, u, 0.5);
        double[] parts = length.firstOrder().shares();
        assertEquals(25, u * Math.sqrt(parts[0]), 0.05);
        assertEquals(9.7, u * Math.sqrt(parts[1]), 0.05);
        assertEquals(2.9, u * Math.sqrt(parts[2]), 0.05);
        assertEquals(0, parts[3], 1e-12);
        assertEquals(0, parts[4], 1e-12);
        assertEquals(16.6, u * Math.sqrt(parts[5]), 0.1);
        assertTrue(length.firstOrderHolds());
    }

    /**
     * H.2: resistance, reactance and impedance from five readings each of voltage, current and phase, which hang together:
     * R = 127.732 with u 0.071, X = 219.847 with 0.295, Z = 254.260 with 0.236 Ω. What they share is a shared input: three
     * inputs that know nothing of each other, each reading’s mean built from them by the root of the covariances.
     */
    @Test
    void simultaneousResistanceAndReactance() {
        double[][] readings = {
            {5.007, 4.994, 5.005, 4.990, 4.999},
            {0.019663, 0.019639, 0.019640, 0.019685, 0.019678},
            {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
        };
        double[] mean = new double[3];
        for (int i = 0; i < 3; i++) {
            for (double reading : readings[i]) {
                mean[i] += reading / 5;
            }
        }
        double[][] covariance = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 5; k++) {
                    covariance[i][j] += (readings[i][k] - mean[i]) * (readings[j][k] - mean[j]) / 20;
                }
            }
        }
        assertEquals(0.0032, Math.sqrt(covariance[0][0]), 0.00005);
        assertEquals(-0.36, covariance[0][1] / Math.sqrt(covariance[0][0] * covariance[1][1]), 0.005);
        double[][] root = cholesky(covariance);
        Map<String, Spread> spreads = study(List.of(input(0, 1), input(0, 1), input(0, 1)), z -> {
            double[] x = new double[3];
            for (int i = 0; i < 3; i++) {
                x[i] = mean[i] + root[i][0] * z[0] + root[i][1] * z[1] + root[i][2] * z[2];
            }
            double impedance = x[0] / x[1];
            return Map.of("R", impedance * Math.cos(x[2]), "X", impedance * Math.sin(x[2]), "Z", impedance);
        });
        assertEquals(127.732, spreads.get("R").nominal(), 0.0005);
        assertEquals(0.071, spreads.get("R").firstOrder().standardUncertainty(), 0.0005);
        assertEquals(219.847, spreads.get("X").nominal(), 0.0005);
        assertEquals(0.295, spreads.get("X").firstOrder().standardUncertainty(), 0.0006);
        assertEquals(254.260, spreads.get("Z").nominal(), 0.0005);
        assertEquals(0.236, spreads.get("Z").firstOrder().standardUncertainty(), 0.0006);
    }

    private static double[][] cholesky(double[][] matrix) {
        double[][] root = new double[matrix.length][matrix.length];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                root[i][j] = i == j ? Math.sqrt(sum) : sum / root[j][j];
            }
        }
        return root;
    }

    /** JCGM 101, 9.2.3: the sum of four rectangular inputs of standard uncertainty 1 has 2.0; to first order 95 % is ±3.92. */
    @Test
    void additiveModel() {
        Spread sum = one(List.of(input(0, 1), input(0, 1), input(0, 1), input(0, 1)), x -> x[0] + x[1] + x[2] + x[3]);
        assertEquals(0, sum.nominal());
        assertEquals(2, sum.firstOrder().standardUncertainty(), 1e-12);
        assertEquals(0.25, sum.firstOrder().shares()[2], 1e-12);
        assertEquals(4 * SQRT_3, sum.high(), 1e-12, "the corner where all are greatest");
        assertEquals(-4 * SQRT_3, sum.low(), 1e-12);
        assertEquals(2, sum.sampleDeviation(), 0.2);
        assertTrue(sum.firstOrderHolds());
    }

    /** JCGM 101, 9.2.4: one input of ten times the uncertainty of the other three outweighs them: u = 10.1. */
    @Test
    void oneInputThatOutweighsTheOthers() {
        Spread sum = one(List.of(input(0, 1), input(0, 1), input(0, 1), input(0, 10)), x -> x[0] + x[1] + x[2] + x[3]);
        assertEquals(10.1, sum.firstOrder().standardUncertainty(), 0.05);
        assertEquals(100.0 / 103, sum.firstOrder().shares()[3], 1e-12);
        // 95 % of an even spread lies within 0.95 of its half-width
        assertEquals(0.95 * SQRT_3 * Math.sqrt(103), sum.intervalHigh(), 1e-9);
    }

    /**
     * JCGM 101, 9.3: calibration of a weight in air; the deviation is 1.2340 mg, to first order with u = 0.0539 mg where a
     * Monte Carlo calculation finds 0.0754 mg, as the product of two inputs is left out.
     */
    @Test
    void massCalibrationIsMoreThanFirstOrderTells() {
        Spread deviation = one(
                List.of(
                        input(100_000, 0.050),
                        input(1.234, 0.020),
                        Range.between(1.10, 1.30),
                        Range.between(7_000, 9_000),
                        Range.between(7_950, 8_050)),
                x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000);
        assertEquals(1.2340, deviation.nominal(), 0.00005);
        assertEquals(0.0539, deviation.firstOrder().standardUncertainty(), 0.00005);
        assertEquals(0.0754, deviation.sampleDeviation(), 0.006);
        assertFalse(deviation.firstOrderHolds());
    }

    /** JCGM 101, 9.4: comparison loss X1² + X2² with u = 0.005; at 0 the first order is 0 although the answer moves. */
    @Test
    void comparisonLossNearZero() {
        ToDoubleFunction<double[]> loss = x -> x[0] * x[0] + x[1] * x[1];
        Spread atZero = one(List.of(input(0, 0.005), input(0, 0.005)), loss);
        assertEquals(0, atZero.nominal());
        assertEquals(0, atZero.firstOrder().standardUncertainty(), 1e-18);
        assertEquals(50e-6, atZero.sampleMean(), 5e-6);
        assertFalse(atZero.firstOrderHolds());
        assertTrue(atZero.moves());
        Spread near = one(List.of(input(0.010, 0.005), input(0, 0.005)), loss);
        assertEquals(100e-6, near.firstOrder().standardUncertainty(), 1e-9);
        assertEquals(150e-6, near.sampleMean(), 15e-6);
        assertFalse(near.firstOrderHolds());
        Spread far = one(List.of(input(0.050, 0.005), input(0, 0.005)), loss);
        assertEquals(500e-6, far.firstOrder().standardUncertainty(), 1e-9);
        assertTrue(far.firstOrderHolds());
    }

    @Test
    void ofAStraightFormulaEndsAndUncertaintyAreExact() {
        List<Range> inputs = new ArrayList<>(List.of(Range.between(2, 3), Range.plusMinus(31, 0.5)));
        ToDoubleFunction<double[]> length = x -> Math.PI * (4 + 0.6 * x[0]) + 2 * x[1];
        Spread spread = one(inputs, length);
        // π 0.6 u(t) and 2 u(l), in quadrature
        double u = Math.hypot(Math.PI * 0.6 * 0.5 / SQRT_3, 2 * 0.5 / SQRT_3);
        assertEquals(u, spread.firstOrder().standardUncertainty(), 1e-12);
        assertEquals(Math.PI * (4 + 0.6 * 2) + 61, spread.low(), 1e-12);
        assertEquals(Math.PI * (4 + 0.6 * 3) + 63, spread.high(), 1e-12);
        // the share of twice the length is 0.53 of the whole, so two standard uncertainties
        assertEquals(spread.nominal() + 2 * u, spread.intervalHigh(), 1e-12);
        assertEquals(spread.nominal() - 2 * u, spread.intervalLow(), 1e-12);
    }
}
