package org.hidewright.core.template;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Volume;
import org.hidewright.core.expression.Measure;
import org.hidewright.core.expression.Sort;
import org.hidewright.core.expression.Worth;

/** Values of questions and answers as expressions know them, and back. */
final class Worths {
    private Worths() {}

    /** What a question or answer of this kind is to an expression. */
    static Sort sort(Field field) {
        return switch (field.kind()) {
            case FLAG -> Sort.Plain.TRUTH;
            case CHOICE, TEXT -> Sort.Plain.WORD;
            default -> Measure.of(field.kind().dimension().orElseThrow()).orElseThrow();
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
                    : quantity(dimension, amount.inBase(dimension));
        }
        return worth instanceof Worth.Truth truth ? (Object) truth.yes() : ((Worth.Word) worth).text();
    }

    /** A worth as it is put into a sentence: with its unit, in the maker's own. */
    static Object shown(Worth worth) {
        if (worth instanceof Worth.Amount amount) {
            return amount.measure()
                    .dimension()
                    .map(dimension -> quantity(dimension, amount.inBase(dimension)))
                    .orElse(amount.number());
        }
        return worth instanceof Worth.Truth truth
                ? Phrase.of(truth.yes() ? "template-yes" : "template-no")
                : ((Worth.Word) worth).text();
    }

    private static Object quantity(Dimension dimension, double base) {
        return switch (dimension) {
            case LENGTH -> Length.ofMm(base);
            case ANGLE -> Angle.ofRadians(base);
            case AREA -> Area.ofMm2(base);
            case MASS -> Mass.ofGrams(base);
            case DENSITY -> Density.ofGramsPerCm3(base);
            case VOLUME -> Volume.ofMl(base);
            case DURATION -> Duration.ofSeconds(base);
            default -> base;
        };
    }
}
