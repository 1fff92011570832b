package org.hidewright.core.jobcard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Table;
import org.hidewright.core.project.Link;
import org.hidewright.core.wording.CautionsOnce;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.ValueText.Shown;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.core.workshop.CellWords;

/** Draws the job card of a worked project up as a document. */
final class JobCard {
    private final WorkedProject worked;
    private final Wording wording;

    JobCard(WorkedProject worked, Wording wording) {
        this.worked = worked;
        this.wording = wording;
    }

    /**
     * The document: first page the whole job, then a section for each slip, then what bundles add.
     *
     * @param date the day printed on every page
     */
    Document document(LocalDate date, List<Section> contributed) {
        Document.Builder document = Document.of(worked.project().name(), wording.host("job-card.title"))
                .dated(date, wording.date(date))
                .pageText(wording.host("job-card.page", "{0}", "{1}"))
                .language(wording.language());
        worked.project().about().ifPresent(document::meta);
        List<Section> slips = worked.slips().values().stream()
                .map(slip -> new SlipSection(slip, wording, this).section())
                .toList();
        document.section(overview(DecimalInches.inTablesOf(slips) || DecimalInches.inTablesOf(contributed)));
        List<Remark> general = worked.general();
        if (!general.isEmpty()) {
            document.section(Section.of("file", wording.host("job-card.file"), checks(general)));
        }
        return document.sections(slips).sections(contributed).build();
    }

    /**
     * What a maker must know in ten seconds: the leading answers of every slip, and what is not as it should be.
     *
     * @param decimalInches whether the pages after it have any
     */
    private Section overview(boolean decimalInches) {
        List<Block> blocks = new ArrayList<>();
        boolean ranged = worked.slips().values().stream()
                .anyMatch(slip -> leads(slip).stream()
                        .anyMatch(answer -> glance(slip, answer).isPresent()));
        Table.Builder table = Table.builder()
                .column(wording.host("job-card.slip"))
                .column(wording.host("job-card.answer"))
                .numbers(wording.host("job-card.value"));
        if (ranged) {
            table.column(wording.host("range.title"));
        }
        int rows = 0;
        for (WorkedSlip slip : worked.slips().values()) {
            SlipWording words = new SlipWording(slip, wording);
            if (slip.state() != State.WORKED) {
                row(table, ranged, words.title(), wording.host(slip.stateKey()), "–", "");
                rows++;
                continue;
            }
            String title = words.title();
            for (Answer answer : leads(slip)) {
                Shown shown = words.shown(
                        answer, slip.answers().orElseThrow().get(answer.key()).orElseThrow());
                String beside = shown.beside().isEmpty() ? "" : " (" + shown.beside() + ")";
                row(
                        table,
                        ranged,
                        title,
                        words.label(answer),
                        shown.inline() + beside,
                        glance(slip, answer).orElse(""));
                title = "";
                rows++;
            }
        }
        blocks.add(rows == 0 ? Paragraph.of(wording.host("job-card.no-slips")) : table.build());
        if (decimalInches) {
            blocks.add(Paragraph.quiet(wording.host("job-card.inches.help")));
        }
        if (!worked.leftOut().isEmpty()) {
            blocks.add(Paragraph.quiet(wording.host(
                    "job-card.left-out.help",
                    worked.leftOut().stream()
                            .map(slip -> new SlipWording(slip, wording).title())
                            .collect(Collectors.joining("; ")))));
        }
        List<Checks.Check> urgent = urgent();
        if (!urgent.isEmpty()) {
            blocks.add(Paragraph.of(wording.host("job-card.look-first", urgent.size())));
            blocks.add(Checks.of(urgent));
        }
        presetsTaken().ifPresent(blocks::add);
        return Section.of("overview", wording.host("job-card.overview"), blocks);
    }

    /** What nobody chose, slip by slip; it stands on the first page since leather is cut by it all the same. */
    private Optional<Table> presetsTaken() {
        Table.Builder table = Table.builder()
                .caption(wording.host("job-card.presets"))
                .column(wording.host("job-card.slip"))
                .column(wording.host("job-card.presets.taken"));
        int rows = 0;
        for (WorkedSlip slip : worked.slips().values()) {
            List<String> presets = new PresetsTaken(slip, wording).lines();
            if (slip.state() == State.WORKED && !presets.isEmpty()) {
                table.row(new SlipWording(slip, wording).title(), String.join("; ", presets));
                rows++;
            }
        }
        return rows == 0 ? Optional.empty() : Optional.of(table.build());
    }

    private static void row(
            Table.Builder table, boolean ranged, String title, String label, String value, String overRanges) {
        if (ranged) {
            table.row(title, label, value, overRanges);
        } else {
            table.row(title, label, value);
        }
    }

    /** What stops the work first; what is so in part of a range after what is so at its middle. */
    private List<Checks.Check> urgent() {
        CautionsOnce once = new CautionsOnce(wording); // each slip says it again in its place
        List<Checks.Check> urgent = new ArrayList<>();
        worked.remarks().stream()
                .filter(remark -> remark.severity() != NoticeKind.Severity.NOTE)
                .filter(once)
                .forEach(remark -> urgent.add(check(remark)));
        for (WorkedSlip slip : worked.slips().values()) {
            String title = new SlipWording(slip, wording).title() + ": ";
            RangeChecks.own(worked, slip, wording).stream()
                    .filter(check -> once.test(check.about()))
                    .forEach(check -> urgent.add(check(check, title)));
        }
        urgent.sort(Comparator.comparing(Checks.Check::severity));
        return urgent;
    }

    /** The answers of a slip that are shown largest and first; empty unless it is worked. */
    static List<Answer> leads(WorkedSlip slip) {
        return slip.installed().stream()
                .flatMap(installed -> installed.calculator().declaration().answers().stream())
                .filter(Answer::lead)
                .filter(answer -> answer.columns().isEmpty() && answer.kind() != Kind.DRAWING)
                .filter(answer -> slip.answers()
                        .flatMap(values -> values.get(answer.key()))
                        .isPresent())
                .toList();
    }

    /** What the ranges a slip hangs on make of its answers; empty where it hangs on none. */
    Optional<RangeWords> ranges(WorkedSlip slip) {
        return RangeWords.of(worked, slip, wording);
    }

    /** What a single answer of a slip comes to over the ranges; empty where it does not move. */
    Optional<String> glance(WorkedSlip slip, Answer answer) {
        return ranges(slip).flatMap(words -> words.glance(answer));
    }

    List<Checks.Check> rangeChecks(WorkedSlip slip) {
        return RangeChecks.of(worked, slip, wording).stream()
                .map(check -> check(check, ""))
                .toList();
    }

    private Checks.Check check(RangeCheck check, String where) {
        return Checks.Check.of(
                Severity.valueOf(check.severity().name()),
                severity(check.severity()),
                where + check.what(),
                check.why(),
                check.next());
    }

    private String severity(NoticeKind.Severity severity) {
        return wording.host("severity." + severity.name().toLowerCase(Locale.ROOT));
    }

    Checks checks(List<Remark> remarks) {
        return Checks.of(remarks.stream().map(this::check).toList());
    }

    Checks.Check check(Remark remark) {
        String place = remark.slip().isEmpty() ? "" : place(remark);
        String where = place.isEmpty() ? "" : place + ": ";
        return Checks.Check.of(
                Severity.valueOf(remark.severity().name()),
                severity(remark.severity()),
                where + wording.what(remark),
                wording.why(remark),
                wording.next(remark));
    }

    /** The words of the slip that a followed link comes from. */
    SlipWording words(Link link) {
        return new SlipWording(worked.slips().get(link.slip()), wording);
    }

    String cellText(String cell) {
        return CellWords.of(cell, worked.shelf()).in(wording);
    }

    String linkText(Link link) {
        return LinkText.of(link, worked, wording);
    }

    private String place(Remark remark) {
        WorkedSlip slip = worked.slips().get(remark.slip());
        String title = slip == null ? remark.slip() : new SlipWording(slip, wording).title();
        String question = slip == null ? remark.question() : new QuestionPlace(slip, wording).words(remark.question());
        return question.isEmpty() ? title : title + ", " + question;
    }
}
