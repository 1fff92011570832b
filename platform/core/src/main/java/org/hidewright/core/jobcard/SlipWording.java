package org.hidewright.core.jobcard;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Units;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;

/** The labels, values and sources of one slip in words. */
public final class SlipWording {
    private final WorkedSlip slip;
    private final Wording wording;

    public SlipWording(WorkedSlip slip, Wording wording) {
        this.slip = slip;
        this.wording = wording;
    }

    private Optional<Texts> texts() {
        return slip.installed().map(installed -> installed.calculator().texts());
    }

    /** The maker's title, else the calculator's with the slip's id, so that two of a kind can be told apart. */
    public String title() {
        return slip.slip().title().orElseGet(this::ownName);
    }

    private String ownName() {
        String id = slip.slip().id();
        return id.isEmpty() || id.equals(slip.slip().calculator())
                ? calculatorTitle()
                : wording.host("job-card.untitled", calculatorTitle(), id);
    }

    public String calculatorTitle() {
        return slip.installed()
                .map(known -> wording.text(
                        known.calculator().texts(),
                        known.calculator().declaration().titleKey()))
                .orElse(slip.slip().calculator());
    }

    public String purpose() {
        return slip.installed()
                .map(known -> wording.text(
                        known.calculator().texts(),
                        known.calculator().declaration().purposeKey()))
                .orElse("");
    }

    public String label(Field field) {
        return texts().map(texts -> wording.label(texts, field)).orElse(field.key());
    }

    /** The label of a question or answer of the slip by its key; empty for keys inside tables. */
    Optional<String> labelOf(boolean answer, String key) {
        return slip.installed()
                .map(known -> known.calculator().declaration())
                .flatMap(declaration -> (answer
                        ? declaration.answer(key).map(this::label)
                        : declaration.question(key).map(this::label)));
    }

    /** The label of the column a link names inside a table of answers. */
    String columnLabel(Link link) {
        return slip
                .installed()
                .flatMap(known -> known.calculator().declaration().answer(link.answer()))
                .stream()
                .flatMap(answer -> answer.columns().stream())
                .filter(column -> column.key().equals(link.column()))
                .map(this::label)
                .findFirst()
                .orElse(link.column());
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
            return texts().map(texts -> wording.phrase(texts, phrase)).orElse(phrase.key());
        } else if (value instanceof Item item) {
            return item.parts().stream().map(Part::name).collect(Collectors.joining(", "));
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

    /** A drawing in words: its phrases, and its quantities as the slip's answers show them. */
    public Drawing drawn(Drawing drawing) {
        DrawnLengths lengths = new DrawnLengths(slip, wording);
        return drawing.worded(words -> words instanceof Phrase phrase
                ? texts().map(texts -> wording.phrase(texts, phrase)).orElse(phrase.key())
                : drawn((Quantity<?>) words, lengths));
    }

    private String drawn(Quantity<?> quantity, DrawnLengths lengths) {
        return Optional.of(quantity)
                .filter(Length.class::isInstance)
                .flatMap(length -> lengths.shown((Length) length))
                .map(Shown::inline)
                .orElseGet(() -> wording.drawn(quantity));
    }

    private String option(Field field, String key) {
        return field.options().stream()
                .filter(option -> option.key().equals(key))
                .map(Option::labelKey)
                .findFirst()
                .flatMap(labelKey -> texts().map(texts -> wording.text(texts, labelKey)))
                .orElse(key);
    }

    /** The label of a variant. */
    public String variant(Question question, String key) {
        return question.variants().stream()
                .filter(variant -> variant.key().equals(key))
                .map(Variant::labelKey)
                .findFirst()
                .flatMap(labelKey -> texts().map(texts -> wording.text(texts, labelKey)))
                .orElse(key);
    }

    public String formulaName(String key) {
        return texts().map(texts -> wording.text(texts, "formula." + key)).orElse(key);
    }

    public String sourceText(Source source) {
        return texts().map(texts -> wording.text(texts, "source." + source.key()))
                .orElse(source.key());
    }

    public String sourceKind(Source source) {
        return wording.host(
                "source-kind." + source.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
