package org.hidewright.core.template;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Quantity;
import org.hidewright.core.expression.Measure;
import org.hidewright.core.expression.Sort;
import org.hidewright.core.expression.Worth;
import org.hidewright.core.work.Quantities;

/** Values of questions and answers as expressions know them, and back. */
final class Worths {
    private Worths() {}

    /** What a question is to an expression; of a choice, which words it can be. */
    static Sort sort(Question question) {
        return question.kind() == Kind.CHOICE
                ? new Sort.OneOf(question.options().stream().map(Option::key).collect(Collectors.toSet()))
                : sort(question.kind());
    }

    /** What an answer of this kind is to an expression. */
    static Sort sort(Kind kind) {
        return switch (kind) {
            case FLAG -> Sort.Plain.TRUTH;
            case CHOICE, TEXT -> Sort.Plain.WORD;
            default -> Measure.of(kind.dimension().orElseThrow()).orElseThrow();
        };
    }

    static Map<String, Worth> of(Values values) {
        Map<String, Worth> worths = new LinkedHashMap<>();
        values.entries().forEach((key, value) -> worths.put(key, of(value)));
        return worths;
    }

    private static Worth of(Object value) {
        if (value instanceof Quantity<?> quantity) {
            Dimension dimension = quantity.dimension();
            return new Worth.Amount(Measure.of(dimension).orElseThrow(), quantity.base() * Measure.perBase(dimension));
        } else if (value instanceof Number number) {
            return Worth.number(number.doubleValue());
        } else if (value instanceof Boolean yes) {
            return new Worth.Truth(yes);
        }
        return new Worth.Word(String.valueOf(value));
    }

    /** The value of an answer of the sort its kind asks for. */
    static Object value(Answer answer, Worth worth) {
        if (worth instanceof Worth.Amount amount) {
            Dimension dimension = answer.kind().dimension().orElseThrow();
            return answer.kind() == Kind.COUNT
                    ? (Object) (int) Math.rint(amount.number())
                    : Quantities.of(dimension, amount.inBase(dimension));
        }
        return worth instanceof Worth.Truth truth ? (Object) truth.yes() : ((Worth.Word) worth).text();
    }

    /** A worth as it is put into a sentence: with its unit, in the maker's own. */
    static Object shown(Worth worth) {
        if (worth instanceof Worth.Amount amount) {
            return amount.measure()
                    .dimension()
                    .map(dimension -> Quantities.of(dimension, amount.inBase(dimension)))
                    .orElse(amount.number());
        }
        return worth instanceof Worth.Truth truth
                ? Phrase.of(truth.yes() ? "template-yes" : "template-no")
                : ((Worth.Word) worth).text();
    }
}
