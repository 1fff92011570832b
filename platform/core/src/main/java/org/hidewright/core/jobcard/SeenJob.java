package org.hidewright.core.jobcard;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.document.JobView;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.core.item.ItemFacts;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/** A worked project as those see it who add sections to its job card: in words, ready to print. */
final class SeenJob {
    private final WorkedProject worked;
    private final Wording wording;
    private final JobCard card;

    SeenJob(WorkedProject worked, Wording wording, JobCard card) {
        this.worked = worked;
        this.wording = wording;
        this.card = card;
    }

    JobView view() {
        return view(worked.slips().values());
    }

    /** As if these were all of its slips. */
    JobView view(Collection<WorkedSlip> slips) {
        return JobView.of(
                worked.project().name(),
                wording.language(),
                slips.stream().map(this::slip).toList());
    }

    private JobView.Slip slip(WorkedSlip slip) {
        SlipWording words = new SlipWording(slip, wording);
        JobView.Slip.Builder view =
                JobView.Slip.of(slip.slip().id(), slip.slip().calculator(), words.title(), state(slip.state()));
        slip.remarks().forEach(remark -> view.notice(card.check(remark)));
        slip.answers().ifPresent(answers -> {
            Declaration declaration =
                    slip.installed().orElseThrow().calculator().declaration();
            slip.questions()
                    .ifPresent(
                            given -> seen(words, declaration.questions(), given).forEach(view::question));
            seen(words, declaration.answers(), answers).forEach(view::answer);
        });
        return view.build();
    }

    private static Map<String, JobView.Answer> seen(SlipWording words, List<? extends Field> fields, Values values) {
        Map<String, JobView.Answer> seen = new LinkedHashMap<>();
        for (Field field : fields) {
            if (field.kind() != Kind.DRAWING && field.kind() != Kind.GROUP) {
                values.get(field.key()).ifPresent(value -> seen.put(field.key(), seen(words, field, value)));
            }
        }
        return seen;
    }

    private static JobView.Answer seen(SlipWording words, Field field, Object value) {
        String label = words.label(field);
        if (field.kind() == Kind.ROWS || field.kind() == Kind.ITEM) {
            List<?> rows = value instanceof Item item ? ItemFacts.rows(item) : (List<?>) value;
            return JobView.Answer.rows(
                    label,
                    value instanceof Item ? "" : words.text(field, value),
                    rows.stream().map(row -> row(words, field, row)).toList());
        } else if (field instanceof Answer answer) {
            Shown shown = words.shown(answer, value);
            return one(label, shown.number(), shown.unit(), value);
        }
        return one(label, words.text(field, value), "", value);
    }

    private static JobView.Answer one(String label, String shown, String unit, Object value) {
        if (value instanceof Quantity<?> quantity) {
            return JobView.Answer.number(label, shown, unit, quantity.base());
        } else if (value instanceof Money money) {
            return JobView.Answer.number(label, shown, unit, money.amount().doubleValue());
        } else if (value instanceof Number number) {
            return JobView.Answer.number(label, shown, unit, number.doubleValue());
        }
        return JobView.Answer.text(label, shown);
    }

    private static JobView.Row row(SlipWording words, Field field, Object row) {
        Values values = row instanceof Chosen chosen ? chosen.values() : (Values) row;
        return JobView.Row.of(values.rowId(), seen(words, columns(field, row), values));
    }

    private static List<? extends Field> columns(Field field, Object row) {
        if (field instanceof Answer answer) {
            return answer.columns();
        }
        Question question = (Question) field;
        return row instanceof Chosen chosen
                ? question.variants().stream()
                        .filter(variant -> variant.key().equals(chosen.variant()))
                        .flatMap(variant -> variant.questions().stream())
                        .toList()
                : question.questions();
    }

    private static JobView.State state(WorkedSlip.State state) {
        return switch (state) {
            case WORKED -> JobView.State.WORKED;
            case WAITING -> JobView.State.WAITING;
            case DORMANT -> JobView.State.DORMANT;
            case REFUSED, BROKEN -> JobView.State.REFUSED;
        };
    }
}
