package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;

/**
 * The lengths among a slip’s answers, so that a drawing says of the same length what the tables say. An answer that is rounded further
 * than a knife goes by is left out: what is cut has to be as large as the pattern is drawn, or holes stand off their middle.
 */
final class DrawnLengths {
    private static final double SAME_MM = 1e-6;
    private static final double KNIFE_MM = 0.1;

    private record Told(Answer answer, double mm) {}

    private final List<Told> told = new ArrayList<>();
    private final Wording wording;

    DrawnLengths(WorkedSlip slip, Wording wording) {
        this.wording = wording;
        slip.answers()
                .ifPresent(answers -> slip.installed()
                        .ifPresent(known -> add(known.calculator().declaration().answers(), answers)));
    }

    private void add(List<Answer> declared, Values values) {
        for (Answer answer : declared) {
            values.get(answer.key()).ifPresent(value -> add(answer, value));
        }
    }

    private void add(Answer answer, Object value) {
        boolean drawable = answer.step().orElse(Double.MAX_VALUE) <= KNIFE_MM
                && answer.unit().equals(Optional.of(Units.MM));
        if (value instanceof Length length && drawable && !answer.keepUnit()) {
            told.add(new Told(answer, length.mm()));
        } else if (value instanceof Values group) {
            add(answer.columns(), group);
        } else if (value instanceof List<?> items) {
            items.forEach(item -> add(answer, item));
        }
    }

    /** The length as the answer of the same length is shown; empty where the slip has no such answer. */
    Optional<Shown> shown(Length drawn) {
        return told.stream()
                .filter(one -> Math.abs(one.mm() - drawn.mm()) < SAME_MM)
                .findFirst()
                .map(one -> wording.values().answer(one.answer(), one.mm()));
    }
}
