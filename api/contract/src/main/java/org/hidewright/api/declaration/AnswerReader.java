package org.hidewright.api.declaration;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.item.ItemFact;
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
        return answers(record, owner, new Nesting());
    }

    private static List<Answer> answers(Class<?> record, String owner, Nesting nesting) {
        nesting.into(record);
        List<Answer> answers = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            if (!ComponentType.isRowId(component)) {
                answers.add(answer(record, owner, component, nesting));
            }
        }
        Keys.checkDistinct(record, "answers", answers.stream().map(Answer::key).toList());
        nesting.outOf(record);
        return answers;
    }

    private static Answer answer(Class<?> record, String owner, RecordComponent component, Nesting nesting) {
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
        if (answered.keepUnit() && answered.unit().isEmpty()) {
            throw new InvalidDeclaration(record, component.getName(), "there is no unit to keep; give it one");
        }
        if (answered.asFile() && type.kind() != Kind.DRAWING) {
            throw new InvalidDeclaration(record, component.getName(), "only a drawing is written as a file");
        }
        if (!answered.stock().isEmpty()) {
            if (type.kind() != Kind.ROWS) {
                throw new InvalidDeclaration(record, component.getName(), "only rows are put away into a table");
            }
            Keys.checkId(record, answered.stock());
        }
        String where = InvalidDeclaration.where(record, component.getName());
        double step = answered.step().isEmpty() ? 0 : step(where, type.itemKind(), answered.step(), unit);
        return new Answer(
                key,
                owner + "." + key,
                type.kind(),
                type.kind() == Kind.LIST ? type.itemKind() : type.kind(),
                unit,
                type.options(),
                answered.keepUnit(),
                step,
                answered.round(),
                answered.by(),
                answered.lead(),
                answered.stock(),
                answered.asFile(),
                columns(type, nesting));
    }

    private static List<Answer> columns(ComponentType type, Nesting nesting) {
        return switch (type.itemKind()) {
            case GROUP -> answers(type.type(), Keys.of(type.type()), nesting);
            case ITEM -> ofItem();
            default -> List.of();
        };
    }

    /** What links can take from an item. */
    static List<Answer> ofItem() {
        return answers(ItemFact.class, Keys.of(ItemFact.class));
    }

    /** A step as it is written, in base units. */
    static double step(String where, Kind itemKind, String text, Unit unit) {
        Kind stepped = itemKind == Kind.SIZE ? Kind.LENGTH : itemKind;
        Dimension dimension =
                stepped.dimension().orElseThrow(() -> new InvalidDeclaration(where, stepped + " has no step"));
        if (stepped == Kind.MONEY) {
            throw new InvalidDeclaration(where, "money is shown in the coins of its currency");
        }
        double step = QuestionReader.typed(where, text, dimension, unit).range().nominal();
        if (step <= 0) {
            throw new InvalidDeclaration(where, "a step is above nothing, not " + text);
        }
        return step;
    }
}
