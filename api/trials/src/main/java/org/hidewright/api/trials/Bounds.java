package org.hidewright.api.trials;

import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;

/**
 * Between which numbers a question is answered in a trial.
 *
 * @param low in base units
 * @param high in base units
 */
public record Bounds(double low, double high) {
    /** Where no usual limits are declared, what is near the example is usual. */
    private static final double NEAR = 0.2;
    /** Money has no upper limit, since currencies differ; what a trial takes for one. */
    private static final double MANY = 100;

    /** Usual limits, or near the example where there are none. */
    static Bounds usual(Question question, double example) {
        return question.usual()
                .map(range -> new Bounds(range.low(), range.high()))
                .orElseGet(() -> around(question, example, NEAR));
    }

    /** As far as a share of a number up and down, inside the hard limits. */
    public static Bounds around(Question question, double number, double share) {
        double reach = Math.abs(number) * share;
        return new Bounds(
                Math.max(number - reach, question.min().orElse(Double.NEGATIVE_INFINITY)),
                Math.min(number + reach, question.max().orElse(Double.POSITIVE_INFINITY)));
    }

    /** The hard limits. */
    static Bounds hard(Question question, double example) {
        double reach = MANY * Math.max(1, Math.abs(example));
        return new Bounds(question.min().orElse(-reach), question.max().orElse(reach));
    }

    /** A value between, at a share of the way; what is counted, to the whole number inside. */
    public Object at(Question question, double share, Object like) {
        Kind kind = question.itemKind();
        double between = low + (high - low) * share;
        if (kind == Kind.COUNT) {
            double least = Math.ceil(low);
            return Measures.of(kind, Math.max(least, Math.min(Math.floor(high), Math.rint(between))), like);
        }
        return Measures.of(kind, between, like);
    }
}
