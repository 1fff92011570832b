package org.hidewright.costing;

import java.util.stream.IntStream;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Formula;

/** How the hands-on time of a piece falls when several are made one after another. */
public sealed interface Learning permits Learning.Steady, Learning.CumulativeAverage, Learning.EachPiece {
    Formula STEADY = Formula.of("time-steady", "T = n · t", Origins.ARITHMETIC);
    Formula CUMULATIVE = Formula.of("time-cumulative-average", "T = n · t · n^(lg(q) / lg(2))", Origins.WRIGHT_1936);
    Formula EACH = Formula.of("time-each-piece", "T = t · Σ(k = 1 … n) k^(lg(q) / lg(2))", Origins.UNIT_CURVE);

    /** Every piece takes as long as the first. */
    record Steady() implements Learning {
        @Override
        public double pieces(int count) {
            return count;
        }

        @Override
        public Formula formula() {
            return STEADY;
        }
    }

    /** With each doubling the average over all pieces falls to a share of what it was (Wright). */
    record CumulativeAverage(
            @Asked(unit = "%", min = "50 %", max = "100 %", usual = "75-95 %", example = "85 %")
            double rate) implements Learning {
        @Override
        public double pieces(int count) {
            return count == 0 ? 0 : count * Math.pow(count, Learning.exponent(rate));
        }

        @Override
        public Formula formula() {
            return CUMULATIVE;
        }
    }

    /** With each doubling the time of the piece itself falls to a share of what it was. */
    record EachPiece(
            @Asked(unit = "%", min = "50 %", max = "100 %", usual = "75-95 %", example = "85 %")
            double rate) implements Learning {
        @Override
        public double pieces(int count) {
            double exponent = Learning.exponent(rate);
            return IntStream.rangeClosed(1, count)
                    .mapToDouble(piece -> Math.pow(piece, exponent))
                    .sum();
        }

        @Override
        public Formula formula() {
            return EACH;
        }
    }

    private static double exponent(double rate) {
        return Math.log(rate) / Math.log(2);
    }

    /** How many times the first piece’s time this many pieces take together. */
    double pieces(int count);

    /** By which formula. */
    Formula formula();
}
