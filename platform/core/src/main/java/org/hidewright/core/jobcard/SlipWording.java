package org.hidewright.core.jobcard;

import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Quantity;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.FieldWording;
import org.hidewright.core.wording.ItemWords;
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

    /** The values of its questions and answers in words. */
    public FieldWording fields() {
        return new FieldWording(texts(), wording);
    }

    /** An item that the slip answers, in the words of the maker’s language. */
    public Item said(Item item) {
        return texts().map(texts -> new ItemWords(texts).said(item, wording)).orElse(item);
    }

    public String label(Field field) {
        return fields().label(field);
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
        return fields().shown(answer, value);
    }

    /** A value in one piece. */
    public String text(Field field, Object value) {
        return fields().text(field, value);
    }

    /** The label of a variant. */
    public String variant(Question question, String key) {
        return fields().variant(question, key);
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
