package org.hidewright.core.template;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.expression.ExpressionTrouble;
import org.hidewright.core.expression.Worth;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.work.TypedValues;

/**
 * What a template asks another calculator.
 *
 * @param calculator its id
 * @param questions what it is asked, as a slip would answer it
 * @param others finds it
 */
record Asking(String calculator, Sketch.Group questions, Function<String, Optional<DeclaredCalculator>> others) {
    Optional<DeclaredCalculator> whom() {
        return others.apply(calculator);
    }

    private Notice badly(List<TypedValues.Said> said) {
        String words = said.stream().map(TypedValues.Said::toString).collect(Collectors.joining(" "));
        Notice badly = TemplateNotices.TEMPLATE_ASKS_BADLY.with(calculator, words);
        return badly.kind().at(said.get(0).at(), badly.args().toArray());
    }

    /** What it answers, or its refusal, or why it cannot be asked. */
    Outcome<Values> outcome(Map<String, Worth> names, Working working) throws ExpressionTrouble {
        Optional<DeclaredCalculator> whom = whom();
        if (whom.isEmpty()) {
            return Outcome.refuse(TemplateNotices.TEMPLATE_NOBODY_TO_ASK.with(calculator));
        }
        Sketch.Rows rows = new Sketch.Rows();
        Object asked = questions.drawn(names, rows);
        if (rows.wereTooMany()) {
            return Outcome.refuse(TemplateNotices.TEMPLATE_TOO_MANY.with(Sketch.Rows.MOST));
        }
        TypedValues typed = TypedValues.read(whom.get().declaration(), JsonOut.line(asked));
        return typed.values().isPresent()
                ? whom.get().work(typed.values().get(), working)
                : Outcome.refuse(badly(typed.said()));
    }
}
