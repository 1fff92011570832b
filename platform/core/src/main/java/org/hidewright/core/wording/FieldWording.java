package org.hidewright.core.wording;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;
import org.hidewright.core.wording.ValueText.Shown;

/**
 * Labels and values of questions, answers and columns in words.
 *
 * @param texts of whoever declared them; empty where nobody is there to say
 */
public record FieldWording(Optional<Texts> texts, Wording wording) {
    public String label(Field field) {
        return texts.map(known -> wording.label(known, field)).orElse(field.key());
    }

    /** An answer's or column's number with its unit apart; a text stands in the number's place. */
    public Shown shown(Answer answer, Object value) {
        if (value instanceof Quantity<?> quantity) {
            return wording.values().answer(answer, quantity.base());
        } else if (value instanceof Double number) {
            return wording.values().answer(answer, number);
        }
        return new Shown(text(answer, value), "", "");
    }

    /** A value in one piece. */
    public String text(Field field, Object value) {
        if (field instanceof Answer answer && (value instanceof Quantity || value instanceof Double)) {
            return shown(answer, value).inline();
        } else if (value instanceof Quantity<?> quantity) {
            return wording.values()
                    .of(quantity.base(), field.unit().orElse(Units.base(quantity.dimension())))
                    .inline();
        } else if (value instanceof Money money) {
            return wording.values().money(money).inline();
        } else if (value instanceof LocalDate day) {
            return wording.date(day);
        } else if (value instanceof Size size && field instanceof Answer answer) {
            return wording.values().answer(answer, size.width().mm()).number() + " × "
                    + wording.values().answer(answer, size.height().mm()).inline();
        } else if (value instanceof Size size) {
            return wording.size(size, field.unit().orElse(Units.MM));
        } else if (value instanceof Double number) {
            return wording.values().of(number, field.unit().orElse(Units.ONE)).inline();
        } else if (value instanceof Number number) {
            return wording.values().plain(number);
        } else if (value instanceof Boolean flag) {
            return wording.host(flag ? "value.yes" : "value.no");
        } else if (value instanceof Phrase phrase) {
            return texts.map(known -> wording.phrase(known, phrase)).orElse(phrase.key());
        } else if (value instanceof Item item) {
            return texts.map(known -> new ItemWords(known).said(item, wording)).orElse(item).parts().stream()
                    .map(Part::name)
                    .collect(Collectors.joining(", "));
        } else if (value instanceof Values group) {
            return inside(field, group);
        } else if (value instanceof Chosen chosen) {
            return variant((Question) field, chosen.variant());
        } else if (value instanceof List<?> items) {
            return items.isEmpty()
                    ? wording.host("value.none")
                    : field.kind() == Kind.ROWS
                            ? items.size() == 1 ? wording.host("value.row") : wording.host("value.rows", items.size())
                            : String.join(
                                    "; ",
                                    items.stream()
                                            .map(item -> text(field, item))
                                            .toList());
        }
        return field.itemKind() == Kind.CHOICE ? option(field, String.valueOf(value)) : String.valueOf(value);
    }

    private String inside(Field field, Values group) {
        List<? extends Field> fields =
                field instanceof Question question ? question.questions() : ((Answer) field).columns();
        return String.join(
                "; ",
                fields.stream()
                        .filter(inner -> group.get(inner.key()).isPresent())
                        .map(inner -> label(inner) + " "
                                + text(inner, group.get(inner.key()).orElseThrow()))
                        .toList());
    }

    /** The label of a variant. */
    public String variant(Question question, String key) {
        return question.variants().stream()
                .filter(variant -> variant.key().equals(key))
                .map(Variant::labelKey)
                .findFirst()
                .flatMap(labelKey -> texts.map(known -> wording.text(known, labelKey)))
                .orElse(key);
    }

    private String option(Field field, String key) {
        return field.options().stream()
                .filter(option -> option.key().equals(key))
                .map(Option::labelKey)
                .findFirst()
                .flatMap(labelKey -> texts.map(known -> wording.text(known, labelKey)))
                .orElse(key);
    }
}
