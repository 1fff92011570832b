package org.hidewright.core.template;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.core.expression.Worth;

/**
 * The working of a calculator that a template asks, handed on to whoever reads that of the template. Formulas and sources stand under
 * the id of the calculator, {@code bend:allowance}, since another that is asked may call one of its own the same.
 */
final class TakenOver implements Working {
    private static final String FROM = ":";
    private static final String FORMULA = "formula.";
    private static final String SOURCE = "source.";
    private static final String ANSWER = "answer.";

    private final DeclaredCalculator whom;
    private final Working to;
    private final Map<String, Source> others = new HashMap<>();

    TakenOver(DeclaredCalculator whom, Working to) {
        this.whom = whom;
        this.to = to;
    }

    @Override
    public void step(Formula formula, Object result, Object... symbolsAndValues) {
        to.step(
                Formula.of(own(formula.key()), formula.symbols(), own(formula.source())),
                result,
                symbolsAndValues.clone());
    }

    @Override
    public void source(String answer, Source source) {
        others.put(answer, own(source));
    }

    /** What an answer stands on; empty where its calculator does not say. */
    Optional<Source> source(String answer) {
        return Optional.ofNullable(others.get(answer))
                .or(() -> whom.declaration()
                        .answer(answer)
                        .flatMap(whom.declaration()::sourceOf)
                        .map(this::own));
    }

    /** Takes down that an answer was taken, and under which name. */
    void taken(String answer, String name, Worth worth) {
        if (worth instanceof Worth.Amount) {
            String symbols = Explained.symbol(name) + " = " + Explained.symbol(answer);
            source(answer)
                    .ifPresent(
                            source -> to.step(Formula.of(own(ANSWER + answer), symbols, source), Worths.shown(worth)));
        }
    }

    private Source own(Source source) {
        return Source.of(own(source.key()), source.kind());
    }

    private String own(String key) {
        return whom.declaration().id() + FROM + key;
    }

    /** The text of a key that a step or source was handed on with, by who was asked: the name of a formula with whose it is. */
    static Optional<String> text(DeclaredCalculator whom, String key, Locale language) {
        String start = whom.declaration().id() + FROM;
        if (key.startsWith(SOURCE + start)) {
            return whom.texts().find(SOURCE + key.substring((SOURCE + start).length()), language);
        }
        return key.startsWith(FORMULA + start)
                ? formula(whom, key.substring((FORMULA + start).length()), language)
                : Optional.empty();
    }

    private static Optional<String> formula(DeclaredCalculator whom, String key, Locale language) {
        String named = Optional.of(key)
                .filter(start -> start.startsWith(ANSWER))
                .flatMap(answer -> whom.declaration().answer(answer.substring(ANSWER.length())))
                .map(Answer::labelKey)
                .orElse(FORMULA + key);
        return whom.texts()
                .find(whom.declaration().titleKey(), language)
                .flatMap(title -> whom.texts().find(named, language).map(name -> title + ": " + name));
    }
}
