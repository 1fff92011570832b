package org.hidewright.core.expression;

import org.hidewright.api.measure.Dimension;

/** What an expression gives. */
public sealed interface Worth {
    /** So many millimetres, grams and seconds, to the powers of the measure. */
    record Amount(Measure measure, double number) implements Worth {
        @Override
        public Sort sort() {
            return measure;
        }

        /** In the base unit of a dimension of this measure. */
        public double inBase(Dimension dimension) {
            return number / Measure.perBase(dimension);
        }
    }

    /** Yes or no. */
    record Truth(boolean yes) implements Worth {
        @Override
        public Sort sort() {
            return Sort.Plain.TRUTH;
        }
    }

    /** A word. */
    record Word(String text) implements Worth {
        @Override
        public Sort sort() {
            return Sort.Plain.WORD;
        }
    }

    Sort sort();

    static Amount number(double number) {
        return new Amount(Measure.NUMBER, number);
    }
}
