package org.hidewright.api.declaration;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Unit;

/** Reads the declaration of answers off an annotated record. */
final class AnswerReader {
    private AnswerReader() {}

    /**
     * The answers of a record.
     *
     * @param owner the first part of their label keys
     */
    static List<Answer> answers(Class<?> record, String owner) {
        List<Answer> answers = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            if (!ComponentType.isRowId(component)) {
                answers.add(answer(record, owner, component));
            }
        }
        return answers;
    }

    private static Answer answer(Class<?> record, String owner, RecordComponent component) {
        Answered answered = component.getAnnotation(Answered.class);
        if (answered == null) {
            throw new InvalidDeclaration(record, component.getName(), "annotate it with @Answered");
        }
        ComponentType type = ComponentType.of(record, component);
        if (type.itemKind() == Kind.VARIANTS) {
            throw new InvalidDeclaration(record, component.getName(), "answers have no variants; use a record");
        }
        String key = Keys.of(component.getName());
        Unit unit = type.unit(record, component, answered.unit());
        double step = answered.step().isEmpty()
                ? 0
                : QuestionReader.typed(
                                record,
                                component,
                                answered.step(),
                                unit == null ? Dimension.NUMBER : unit.dimension(),
                                unit)
                        .range()
                        .nominal();
        return new Answer(
                key,
                owner + "." + key,
                type.kind(),
                type.kind() == Kind.LIST ? type.itemKind() : type.kind(),
                unit,
                type.options(),
                step,
                answered.round(),
                answered.by(),
                answered.lead(),
                type.itemKind() == Kind.GROUP ? answers(type.type(), Keys.of(type.type())) : List.of());
    }
}
