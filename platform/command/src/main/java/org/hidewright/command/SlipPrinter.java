package org.hidewright.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.document.Working;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.jobcard.AnswerTable;
import org.hidewright.core.jobcard.RangeChecks;
import org.hidewright.core.jobcard.RangeTable;
import org.hidewright.core.jobcard.RangeWords;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.jobcard.SlipWorking;
import org.hidewright.core.wording.LongText;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.WorkshopNotices;

/** A worked slip as text for a terminal. */
final class SlipPrinter {
    private final WorkedProject worked;
    private final WorkedSlip slip;
    private final Session session;
    private final boolean working;
    private final SlipWording words;
    private final PrintStream out;

    /**
     * Prints a slip.
     *
     * @param working whether with the formulas and the numbers put into them
     */
    SlipPrinter(WorkedProject worked, WorkedSlip slip, boolean working, Session session) {
        this.worked = worked;
        this.slip = slip;
        this.working = working;
        this.session = session;
        this.words = new SlipWording(slip, session.wording());
        this.out = session.out();
    }

    void print() {
        out.println(words.title());
        slip.answers().ifPresent(this::answers);
        RangeWords.of(worked, slip, session.wording()).ifPresent(this::ranges);
        tell(remark -> !remark.stops());
        presets();
        if (working) {
            working();
        }
        sources();
        tell(Remark::stops); // last, so that nothing stands between it and whoever typed
    }

    private void tell(Predicate<Remark> which) {
        slip.remarks().stream()
                .filter(which)
                .forEach(remark -> session.tell(out, remark.atPlace(null).onSlip("")));
    }

    /** What the maker did not type and the calculator was given all the same, and who says so. */
    private void presets() {
        if (slip.questions().isEmpty()) {
            return;
        }
        List<List<String>> stocked = TakenLines.of(
                slip,
                words,
                line -> line.cell()
                        .map(cell -> line.text().isEmpty() ? cell : cell + ": " + LongText.cutNumbers(line.text())));
        if (!stocked.isEmpty()) {
            out.println();
            out.println(session.texts().text("work.stocked"));
            new TextTable(stocked).print(out);
            worked.general().stream()
                    .filter(remark -> remark.key().equals("notice." + WorkshopNotices.WORKSHOP_FROM_BUNDLE.key()))
                    .forEach(remark -> session.tell(out, remark));
        }
        String preset = session.texts().text("work.preset");
        List<List<String>> lines =
                TakenLines.of(slip, words, line -> line.preset() ? Optional.of(preset) : Optional.empty());
        if (!lines.isEmpty()) {
            Installed by = slip.installed().orElseThrow();
            out.println();
            out.println(session.texts().text("work.presets", by.id(), by.bundle()));
            new TextTable(lines).print(out);
            out.println();
        }
    }

    private void working() {
        if (slip.steps().isEmpty()) {
            return;
        }
        out.println(session.texts().text("work.lines"));
        for (Working.Line line :
                new SlipWorking(slip, session.wording()).block().lines()) {
            if (!line.what().isEmpty()) {
                out.println("  " + line.what() + ":  " + line.formula());
            }
            String numbers = line.numbers().isEmpty() ? "" : line.numbers() + " = ";
            if (!(numbers + line.result()).isEmpty()) {
                out.println("      = " + numbers + line.result());
            }
        }
        out.println();
    }

    private void answers(Values answers) {
        List<Answer> declared =
                slip.installed().orElseThrow().calculator().declaration().answers();
        List<List<String>> lines = new ArrayList<>();
        for (Answer answer : declared) {
            answers.get(answer.key()).filter(value -> !table(answer)).ifPresent(value -> {
                Shown shown = words.shown(answer, value);
                String beside = shown.beside().isEmpty() ? "" : "  (" + shown.beside() + ")";
                lines.add(List.of(words.label(answer), shown.inline() + beside));
            });
        }
        new TextTable(lines).print(out);
        for (Answer answer : declared) {
            answers.get(answer.key())
                    .flatMap(value -> AnswerTable.of(answer, value, words))
                    .ifPresent(rows -> rows(answer, rows));
        }
    }

    private void ranges(RangeWords ranges) {
        out.println();
        out.println(session.wording().host("range.title"));
        List<List<String>> lines = new ArrayList<>(List.of(ranges.head()));
        lines.addAll(ranges.rows());
        if (!ranges.rows().isEmpty()) {
            new TextTable(lines).print(out);
        }
        for (RangeTable table : ranges.tables()) {
            out.println();
            out.println(ranges.caption(table));
            List<List<String>> moving = new ArrayList<>(List.of(table.head()));
            moving.addAll(table.rows());
            new TextTable(moving).print(out);
        }
        ranges.sentences().forEach(out::println);
        RangeChecks.of(worked, slip, session.wording()).forEach(check -> session.tell(out, check, ""));
        out.println(ranges.how());
        out.println();
    }

    private static boolean table(Answer answer) {
        return switch (answer.kind()) {
            case ROWS, GROUP, ITEM, DRAWING -> true;
            default -> false;
        };
    }

    private void rows(Answer answer, AnswerTable rows) {
        out.println();
        out.println(words.label(answer));
        List<List<String>> lines = new ArrayList<>();
        List<String> head = new ArrayList<>(rows.named() ? List.of("") : List.of());
        rows.columns().forEach(column -> head.add(words.heading(column)));
        lines.add(head);
        lines.addAll(rows.rows());
        new TextTable(lines).print(out);
    }

    private void sources() {
        Set<Source> sources = new LinkedHashSet<>();
        if (working) {
            slip.steps().forEach(step -> sources.add(step.formula().source()));
        }
        slip.answers()
                .ifPresent(answers -> slip.installed()
                        .orElseThrow()
                        .calculator()
                        .declaration()
                        .answers()
                        .forEach(answer -> slip.source(answer).ifPresent(sources::add)));
        for (Source source : sources) {
            out.println(words.sourceKind(source) + ": " + words.sourceText(source));
        }
    }
}
