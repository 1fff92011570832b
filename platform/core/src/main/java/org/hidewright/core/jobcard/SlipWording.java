package org.hidewright.core.jobcard;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Quantity;
import org.hidewright.core.item.ItemFacts;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.FieldWording;
import org.hidewright.core.wording.IdWords;
import org.hidewright.core.wording.ItemNames;
import org.hidewright.core.wording.ItemWords;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;

/** The labels, values and sources of one slip in words. */
public final class SlipWording {
    private static final String LENGTH = "item-fact.length";

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

    /** What the things of an item that the slip answers are called; without its calculator, as the item says them. */
    public ItemNames itemNames() {
        return new ItemNames(new ItemWords(texts().orElse((key, language) -> Optional.empty())), wording);
    }

    /** Whether a row of this id was typed on the slip, so that the maker knows it by that. */
    boolean isTypedRow(String id) {
        return slip.asked().stream().anyMatch(line -> line.row().equals(id));
    }

    /**
     * What a row of an answer is called: of an item the name of the thing, else the words of the id that was typed for it;
     * what a calculator has called so for itself goes by the words that stand in the row, or by the count that it begins with.
     */
    String rowName(String answer, String id) {
        Optional<Object> value = slip.answers().flatMap(answers -> answers.get(answer));
        if (value.filter(Item.class::isInstance).isPresent()) {
            return ItemFacts.name((Item) value.get(), id, itemNames()).orElse(id);
        }
        String told = isTypedRow(id) ? "" : wordsOf(answer, id, value);
        return told.isEmpty() ? countOf(answer, id, value).orElseGet(() -> IdWords.of(id)) : told;
    }

    /** Of a table whose rows begin with a count, each with another: the count behind what it counts. */
    private Optional<String> countOf(String key, String id, Optional<Object> value) {
        Optional<Answer> first = slip.installed()
                .flatMap(known -> known.calculator().declaration().answer(key))
                .flatMap(answer -> answer.columns().stream().findFirst())
                .filter(column -> column.kind() == Kind.COUNT && !isTypedRow(id));
        if (first.isEmpty()) {
            return Optional.empty(); // what has no columns has no rows either
        }
        Answer column = first.get();
        List<Values> rows = value.map(ItemFacts::rowsOf).orElse(List.of());
        boolean each =
                rows.stream().map(row -> row.get(column.key())).distinct().count() == rows.size();
        return rows.stream()
                .filter(row -> each && row.rowId().equals(id))
                .flatMap(row -> row.get(column.key()).stream())
                .map(count -> label(column) + " " + text(column, count))
                .findFirst();
    }

    private String wordsOf(String key, String id, Optional<Object> value) {
        return slip
                .installed()
                .flatMap(known -> known.calculator().declaration().answer(key))
                .stream()
                .flatMap(answer -> answer.columns().stream())
                .filter(column -> AnswerTable.WORDS.contains(column.kind()))
                .flatMap(column -> value.map(ItemFacts::rowsOf).orElse(List.of()).stream()
                        .filter(row -> row.rowId().equals(id))
                        .flatMap(row -> row.get(column.key()).stream())
                        .map(cell -> text(column, cell)))
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining(", "));
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

    /** What stands over a column; of an item the length has parts among its rows, of which it is the way round. */
    public String heading(Answer column) {
        return column.labelKey().equals(LENGTH) ? wording.host("item-fact.length-or-round") : label(column);
    }

    /** The label of the column a link names inside a table of answers; a part’s length is the way round it. */
    String columnLabel(Link link) {
        boolean round = link.column().equals("length")
                && slip.answers()
                        .flatMap(answers -> answers.get(link.answer()))
                        .filter(Item.class::isInstance)
                        .flatMap(item -> ((Item) item).part(link.row()))
                        .isPresent();
        if (round) {
            return wording.host("item-fact.round");
        }
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
        DrawnLengths lengths = DrawnLengths.shown(slip, wording);
        Drawing worded = drawing.worded(words -> words instanceof Phrase phrase
                ? texts().map(texts -> wording.phrase(texts, phrase)).orElse(phrase.key())
                : drawn((Quantity<?>) words, lengths));
        return Drawing.of(worded.shapes().stream().map(this::called).toList());
    }

    /** The id of a row that was typed is read beside a drawing as it is in the tables. */
    private Shape called(Shape shape) {
        return shape instanceof Label label && isTypedRow(label.text())
                ? Label.of(IdWords.of(label.text()), label.at(), label.anchor(), label.height())
                        .turned(label.turn())
                : shape;
    }

    /** Lengths of what is cut, each as its answer of the same length is shown unless that is coarser than a knife goes. */
    Function<Length, String> lengths() {
        DrawnLengths lengths = DrawnLengths.cut(slip, wording);
        return length -> drawn(length, lengths);
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
