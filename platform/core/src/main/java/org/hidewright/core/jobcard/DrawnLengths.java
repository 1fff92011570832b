package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;

/** The lengths among a slip’s answers, so that a drawing says of the same length what the tables say. */
final class DrawnLengths {
    private static final double SAME_MM = 1e-6;
    /** As finely as a knife goes: a pattern that is drawn to it is not listed coarser, or holes stand off their middle. */
    private static final double KNIFE_MM = 0.1;

    private record Told(Answer answer, double mm) {}

    private final List<Told> told = new ArrayList<>();
    private final Wording wording;
    private final double coarsest;

    private DrawnLengths(WorkedSlip slip, Wording wording, double coarsest) {
        this.wording = wording;
        this.coarsest = coarsest;
        slip.answers()
                .ifPresent(answers -> slip.installed()
                        .ifPresent(known -> add(known.calculator().declaration().answers(), answers)));
    }

    /** Of what a drawing shows: each as the slip tells it, however far it is rounded. */
    static DrawnLengths shown(WorkedSlip slip, Wording wording) {
        return new DrawnLengths(slip, wording, Double.MAX_VALUE);
    }

    /** Of what is cut by a pattern. */
    static DrawnLengths cut(WorkedSlip slip, Wording wording) {
        return new DrawnLengths(slip, wording, KNIFE_MM);
    }

    private void add(List<Answer> declared, Values values) {
        for (Answer answer : declared) {
            values.get(answer.key()).ifPresent(value -> add(answer, value));
        }
    }

    private void add(Answer answer, Object value) {
        boolean drawable = answer.step().isPresent()
                && answer.step().getAsDouble() <= coarsest
                && answer.unit().equals(Optional.of(Units.MM));
        if (value instanceof Length length && drawable && !answer.keepUnit()) {
            told.add(new Told(answer, length.mm()));
        } else if (value instanceof Values group) {
            add(answer.columns(), group);
        } else if (value instanceof List<?> items) {
            items.forEach(item -> add(answer, item));
        }
    }

    /**
     * As the answer of the same length is shown; empty where the slip has none. Of several the most rounded that a knife follows, or
     * a hole would be told by a coarser length that is as long by chance.
     */
    Optional<Shown> shown(Length drawn) {
        return told.stream()
                .filter(one -> Math.abs(one.mm() - drawn.mm()) < SAME_MM)
                .max(Comparator.comparingDouble(
                        one -> preference(one.answer().step().orElseThrow())))
                .map(one -> wording.values().answer(one.answer(), one.mm()));
    }

    private static double preference(double step) {
        return step <= KNIFE_MM ? step : -step;
    }
}
