package org.hidewright.core.proof;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.trials.Measures;

/** Drawn answers with so many digits as somebody types, so that what is told of them can be asked again. */
final class Typable {
    private static final MathContext DIGITS = new MathContext(3);
    /** Where limits are nearer to each other than that. */
    private static final MathContext MORE = new MathContext(8);

    private Typable() {}

    static Values of(List<Question> questions, Values drawn) {
        Map<String, Object> typed = new LinkedHashMap<>();
        for (Question question : questions) {
            drawn.get(question.key()).ifPresent(value -> typed.put(question.key(), of(question, value)));
        }
        return Values.of(typed);
    }

    /** Ends that are declared stay as they are. */
    private static Object of(Question question, Object value) {
        OptionalDouble number = Measures.number(value);
        if (number.isEmpty() || isEnd(question, number.getAsDouble())) {
            return value;
        }
        double rounded = round(number.getAsDouble(), DIGITS);
        boolean inside = rounded >= question.min().orElse(rounded)
                && rounded <= question.max().orElse(rounded)
                && question.usual()
                        .filter(usual -> usual.contains(number.getAsDouble()))
                        .map(usual -> usual.contains(rounded))
                        .orElse(true);
        return Measures.of(question.itemKind(), inside ? rounded : round(number.getAsDouble(), MORE), value);
    }

    private static double round(double number, MathContext digits) {
        return new BigDecimal(number).round(digits).doubleValue();
    }

    private static boolean isEnd(Question question, double number) {
        return question.usual()
                        .filter(usual -> number == usual.low() || number == usual.high())
                        .isPresent()
                || number == question.min().orElse(Double.NaN)
                || number == question.max().orElse(Double.NaN);
    }
}
