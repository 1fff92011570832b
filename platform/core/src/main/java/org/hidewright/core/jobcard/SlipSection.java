package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.item.ItemPicture;
import org.hidewright.core.wording.IdWords;
import org.hidewright.core.wording.LongText;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.AskedLine;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.work.WorkedSlip.State;

/** One slip on the job card: answers, what was typed, working, checks, sources. */
final class SlipSection {
    private static final int NOTE_LINES = 2;

    private final WorkedSlip slip;
    private final Wording wording;
    private final JobCard card;
    private final SlipWording words;

    SlipSection(WorkedSlip slip, Wording wording, JobCard card) {
        this.slip = slip;
        this.wording = wording;
        this.card = card;
        this.words = new SlipWording(slip, wording);
    }

    Section section() {
        List<Block> blocks = new ArrayList<>();
        if (!words.purpose().isEmpty()) {
            blocks.add(Paragraph.quiet(
                    slip.slip().title().isPresent()
                            ? wording.host("job-card.calculator", words.calculatorTitle(), words.purpose())
                            : words.purpose()));
        }
        if (slip.state() != State.WORKED) {
            blocks.add(Paragraph.of(wording.host(slip.stateKey())));
        }
        slip.answers().ifPresent(answers -> answers(blocks, answers));
        card.ranges(slip).ifPresent(ranges -> ranges(blocks, ranges));
        if (!slip.remarks().isEmpty()) {
            blocks.add(card.checks(slip.remarks()));
        }
        asked(blocks);
        if (!slip.steps().isEmpty()) {
            blocks.add(new SlipWorking(slip, wording).block());
        }
        sources(blocks);
        if (slip.state() == State.WORKED) {
            blocks.add(NoteSpace.of(wording.host("job-card.came-out"), NOTE_LINES));
        }
        return Section.of(slip.slip().id(), words.title(), blocks);
    }

    private List<Answer> declared() {
        return slip.installed().orElseThrow().calculator().declaration().answers();
    }

    private void answers(List<Block> blocks, Values answers) {
        for (Answer lead : JobCard.leads(slip)) {
            blocks.add(big(lead, answers.get(lead.key()).orElseThrow()));
        }
        for (Answer answer : declared()) {
            answers.get(answer.key())
                    .flatMap(this::picture)
                    .ifPresent(picture -> blocks.add(Figure.fitted(words.drawn(picture), words.label(answer))));
        }
        declared().stream()
                .flatMap(answer -> answers.get(answer.key()).stream())
                .filter(Item.class::isInstance)
                .map(item -> words.said((Item) item))
                .forEach(item -> {
                    blocks.addAll(new CutList(wording, words.lengths()).of(item));
                    blocks.addAll(new HoleList(wording, words.itemNames()).of(item));
                    blocks.addAll(new WorkSteps(item, words.itemNames(), wording).blocks());
                });
        Table.Builder table = Table.builder().column("").numbers("").column("");
        int rows = 0;
        for (Answer answer : declared()) {
            Object value = answers.get(answer.key()).orElse(null);
            if (value == null || answer.lead() || structured(answer)) {
                continue;
            }
            Shown shown = words.shown(answer, value);
            boolean phrase = answer.kind() == Kind.PHRASE;
            table.row(words.label(answer), phrase ? "" : shown.inline(), phrase ? shown.number() : shown.beside());
            rows++;
        }
        if (rows > 0) {
            blocks.add(table.build());
        }
        for (Answer answer : declared()) {
            answers.get(answer.key())
                    .flatMap(value -> AnswerTable.of(answer, value, words))
                    .ifPresent(found -> blocks.add(table(answer, found)));
        }
    }

    private void ranges(List<Block> blocks, RangeWords ranges) {
        if (!ranges.rows().isEmpty()) {
            Table.Builder table = Table.builder().caption(wording.host("range.title"));
            List<String> head = ranges.head();
            for (int i = 0; i < head.size(); i++) {
                table.column(head.get(i), i == 0 || i == head.size() - 1 ? Table.Align.START : Table.Align.END);
            }
            ranges.rows().forEach(row -> table.row(row.toArray(String[]::new)));
            blocks.add(table.build());
        }
        for (RangeTable moving : ranges.tables()) {
            Table.Builder table = Table.builder().caption(ranges.caption(moving));
            for (int i = 0; i < moving.head().size(); i++) {
                table.column(moving.head().get(i), i == 0 ? Table.Align.START : Table.Align.END);
            }
            moving.rows().forEach(row -> table.row(row.toArray(String[]::new)));
            blocks.add(table.build());
        }
        blocks.addAll(ranges.shares());
        ranges.sentences().forEach(sentence -> blocks.add(Paragraph.of(sentence)));
        List<Checks.Check> checks = card.rangeChecks(slip);
        if (!checks.isEmpty()) {
            blocks.add(Checks.of(checks));
        }
        blocks.add(Paragraph.quiet(ranges.how()));
    }

    private Optional<Drawing> picture(Object value) {
        if (value instanceof Item item) {
            return Optional.of(ItemPicture.of(words.said(item)).drawing());
        }
        return value instanceof Drawing drawing ? Optional.of(drawing) : Optional.empty();
    }

    private static boolean structured(Answer answer) {
        return switch (answer.kind()) {
            case DRAWING, ITEM, ROWS, GROUP -> true;
            default -> false;
        };
    }

    private Block big(Answer lead, Object value) {
        Shown shown = words.shown(lead, value);
        BigAnswer big = BigAnswer.of(words.label(lead), shown.number(), shown.unit());
        String beside = Stream.of(
                        shown.beside(),
                        card.glance(slip, lead)
                                .map(range -> wording.host("range.beside", range))
                                .orElse(""))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        return beside.isEmpty() ? big : big.because(beside);
    }

    private Table table(Answer answer, AnswerTable rows) {
        Table.Builder table = Table.builder().caption(words.label(answer));
        if (rows.named()) {
            table.column("");
        }
        rows.columns()
                .forEach(column -> table.column(
                        words.heading(column),
                        column.kind().dimension().isPresent() ? Table.Align.END : Table.Align.START));
        rows.rows().forEach(table::row);
        return table.build();
    }

    private void asked(List<Block> blocks) {
        List<AskedLine> lines = slip.asked();
        if (lines.isEmpty()) {
            return;
        }
        Table.Builder table = Table.builder()
                .column(wording.host("job-card.question"))
                .column(wording.host("job-card.taken"))
                .column(wording.host("job-card.from"));
        for (int i = 0; i < lines.size(); i++) {
            AskedLine line = lines.get(i);
            if (isSearchedFor(line)) {
                table.row(words.label(line.question()), found(lines, i), wording.host("origin.searched"));
            } else if (line.depth() == 0) {
                Collection<List<AskedLine>> rows = inside(lines, i);
                String label = words.label(line.question());
                boolean group = line.question().kind() == Kind.GROUP && !rows.isEmpty();
                if (!group) { // what stands in a group is told once, beside its label
                    table.row(label, taken(line), origin(line));
                }
                for (List<AskedLine> row : rows) {
                    table.row(
                            group ? label : IdWords.of(row.get(0).row()),
                            rowText(line, row),
                            line.preset() ? origin(line) : rowOrigin(row));
                }
            }
        }
        blocks.add(table.build());
    }

    /** The places of a layout and the like: the drawing shows them, and nobody reads a page of them. */
    private boolean isSearchedFor(AskedLine line) {
        return line.depth() == 0
                && slip.installed()
                        .flatMap(known -> known.calculator().search())
                        .filter(search ->
                                search.sought().key().equals(line.question().key()))
                        .isPresent();
    }

    /** How many rows were found. */
    private String found(List<AskedLine> lines, int holder) {
        long rows = inside(lines, holder).stream()
                .filter(row -> !row.get(0).row().isEmpty())
                .count();
        return rows == 1 ? wording.host("value.row") : wording.host("value.rows", rows);
    }

    /** What stands inside a question, row by row; a preset group was told with the question. */
    private static Collection<List<AskedLine>> inside(List<AskedLine> lines, int holder) {
        if (lines.get(holder).preset() && lines.get(holder).question().kind() == Kind.GROUP) {
            return List.of();
        }
        Map<String, List<AskedLine>> rows = new LinkedHashMap<>();
        for (int i = holder + 1; i < lines.size() && lines.get(i).depth() > 0; i++) {
            rows.computeIfAbsent(lines.get(i).row(), row -> new ArrayList<>()).add(lines.get(i));
        }
        return rows.values();
    }

    private String rowText(AskedLine holder, List<AskedLine> row) {
        List<String> parts = new ArrayList<>();
        holder.value()
                .filter(value -> value instanceof List<?>)
                .flatMap(value -> ((List<?>) value)
                        .stream()
                                .filter(item -> item instanceof Chosen chosen
                                        && chosen.values()
                                                .rowId()
                                                .equals(row.get(0).row()))
                                .findFirst())
                .ifPresent(item -> parts.add(words.variant(holder.question(), ((Chosen) item).variant())));
        row.stream()
                .filter(line -> holder.preset() || !line.preset())
                .filter(line -> line.question().kind() != Kind.GROUP) // its lines follow
                .forEach(line -> parts.add(labelled(line)));
        return String.join("; ", parts);
    }

    private String labelled(AskedLine line) {
        String link = line.link().isPresent() || line.cell().isPresent() ? " (" + origin(line) + ")" : "";
        return words.label(line.question()) + " " + (line.typed() ? typedAs(line) : taken(line)) + link;
    }

    /** What was typed inside a row, and how it was understood where that reads otherwise. */
    private String typedAs(AskedLine line) {
        String taken = taken(line);
        return line.text().isEmpty() || line.text().strip().equalsIgnoreCase(taken.replace('\u00A0', ' '))
                ? taken
                : wording.host("job-card.typed-as", LongText.cut(line.text()), taken);
    }

    /** Whether a row was typed, and which of its values nobody typed. */
    private String rowOrigin(List<AskedLine> row) {
        List<String> presets =
                row.stream().filter(AskedLine::preset).map(this::labelled).toList();
        if (slip.slip().isExample(row.get(0).path().question())) {
            return wording.host("origin.example");
        }
        String typed = row.stream().anyMatch(AskedLine::typed) ? wording.host("origin.typed-row") : "";
        String preset = presets.isEmpty() ? "" : wording.host("origin.preset-row", String.join(", ", presets));
        return typed.isEmpty() || preset.isEmpty() ? typed + preset : typed + "; " + preset;
    }

    /** The value worked with, or that would have been; of a range its limits too, as they were understood. */
    private String taken(AskedLine line) {
        if (line.link().isPresent()
                && line.value().filter(Item.class::isInstance).isPresent()) {
            return card.words(line.link().get())
                    .text(line.question(), line.value().get()); // its own bundle names its parts
        }
        Unit unit = line.question().unit().orElse(Units.ONE);
        String value = line.value()
                .map(given -> words.text(line.question(), given))
                .map(text -> line.question().itemKind() == Kind.TEXT ? LongText.cut(text) : text)
                .or(() -> line.typedRange()
                        .map(range -> wording.values().of(range.nominal(), unit).inline()))
                .orElse("–");
        return line.typedRange()
                .filter(range -> !range.isExact())
                .map(range -> wording.host(
                        "job-card.midpoint-of",
                        value,
                        wording.values().of(range.low(), unit).number(),
                        wording.values().of(range.high(), unit).inline()))
                .orElse(value);
    }

    private String origin(AskedLine line) {
        if (line.link().isPresent()) {
            return wording.host("origin.linked", card.linkText(line.link().get()));
        }
        if (line.cell().isPresent()) {
            String cell = card.cellText(line.cell().get());
            return line.text().isEmpty()
                    ? wording.host("origin.workshop-row", cell)
                    : wording.host("origin.workshop", cell, LongText.cut(line.text()));
        }
        if (line.preset()) {
            return wording.host("origin.preset");
        }
        if (slip.slip().isExample(line.path().question())) {
            return wording.host("origin.example");
        }
        return line.text().isEmpty()
                ? wording.host("origin.typed-row")
                : wording.host("origin.typed", LongText.cut(line.text()));
    }

    private void sources(List<Block> blocks) {
        Set<Source> used = SlipSources.of(slip);
        if (!used.isEmpty()) {
            blocks.add(Sources.of(used.stream()
                    .map(source -> Sources.Entry.of(words.sourceKind(source), words.sourceText(source)))
                    .toList()));
        }
    }
}
