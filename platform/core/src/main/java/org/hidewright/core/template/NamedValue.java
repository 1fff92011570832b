package org.hidewright.core.template;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.expression.Expression;
import org.hidewright.core.expression.ExpressionTrouble;
import org.hidewright.core.expression.Sort;
import org.hidewright.core.expression.Worth;

/** A name that a template gives to what it works out or asks, for the expressions after it. */
sealed interface NamedValue {
    /** Adds what it is worth to the names before it, and to what is told what is said of it. */
    void add(Map<String, Worth> names, Told told) throws ExpressionTrouble, Refusal;

    /**
     * What is told while values are worked out.
     *
     * @param sources what those stand on that were taken from another calculator, by their names
     */
    record Told(List<Notice> notices, Working working, Map<String, Source> sources) {
        Told(Working working) {
            this(new ArrayList<>(), working, new HashMap<>());
        }
    }

    /**
     * Worked out by an expression.
     *
     * @param source what it stands on, as its author says
     */
    record Worked(String name, Expression expression, Source source) implements NamedValue {
        @Override
        public void add(Map<String, Worth> names, Told told) throws ExpressionTrouble {
            names.put(name, expression.worth(names));
            if (Explained.isWorth(expression)) {
                new Explained(this).tell(names, told.working());
            }
        }
    }

    /**
     * Answered by another calculator: {@code name.answer} for each answer that is taken.
     *
     * @param answers what is taken, and what the text says of its sort
     */
    record Answered(String name, Asking asking, Map<String, Sort> answers) implements NamedValue {
        @Override
        public void add(Map<String, Worth> names, Told told) throws ExpressionTrouble, Refusal {
            Optional<TakenOver> working = asking.whom().map(whom -> new TakenOver(whom, told.working()));
            Outcome<Values> outcome =
                    asking.outcome(names, working.map(Working.class::cast).orElse(Working.NONE));
            for (Notice notice : outcome.notices()) {
                // its place is a question of the calculator that was asked, which nobody sees here
                Notice here = notice.kind().with(notice.args().toArray());
                if (notice.kind().severity() == NoticeKind.Severity.STOP) {
                    throw new Refusal(here);
                }
                told.notices().add(here);
            }
            Map<String, Worth> given = Worths.of(outcome.answers().orElseThrow());
            for (Map.Entry<String, Sort> answer : answers.entrySet()) {
                Worth worth = given.get(answer.getKey());
                if (worth == null || !worth.sort().equals(answer.getValue())) {
                    throw new Refusal(TemplateNotices.TEMPLATE_NO_SUCH_ANSWER.with(
                            asking.calculator(),
                            answer.getValue().words(),
                            answer.getKey(),
                            String.join(", ", given.keySet())));
                }
                String key = key(answer.getKey());
                names.put(key, worth);
                working.ifPresent(taken -> {
                    taken.taken(answer.getKey(), key, worth);
                    taken.source(answer.getKey())
                            .ifPresent(source -> told.sources().put(key, source));
                });
            }
        }

        /** Whether it is this name that it gives a worth to. */
        boolean gives(String key) {
            return answers.keySet().stream().map(this::key).anyMatch(key::equals);
        }

        String key(String answer) {
            return name + "." + answer;
        }
    }
}
