package org.hidewright.edges;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.JobView.Row;
import org.hidewright.api.document.JobView.Slip;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.SectionContributor;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.osgi.service.component.annotations.Component;

/** The finishing schedule, apart from the job card: it lies beside the work, and its steps are ticked. */
@Component(service = SectionContributor.class)
public final class FinishingPaper implements SectionContributor {
    private static final Texts TEXTS = Texts.beside(FinishingPaper.class);

    @Override
    public List<Section> sections(JobView job) {
        List<Block> blocks = new ArrayList<>();
        job.worked("finishing").forEach(slip -> blocks.addAll(schedule(slip, job.language())));
        return blocks.isEmpty()
                ? List.of()
                : List.of(Section.of(
                                "org.hidewright.edges.finishing-schedule",
                                text("finishing-schedule.title", job.language()),
                                blocks)
                        .apart());
    }

    private static List<Block> schedule(Slip slip, Locale language) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Paragraph.of(text(
                "paper.schedule-for",
                language,
                slip.title(),
                shown(slip.answers(), "hands-on"),
                shown(slip.answers(), "waits-at-least"),
                shown(slip.answers(), "waits-at-most"))));
        blocks.add(edges(slip, language));
        List<Checks.Check> toHeed = slip.notices().stream()
                .filter(notice -> notice.severity() != Severity.NOTE)
                .toList();
        if (!toHeed.isEmpty()) {
            blocks.add(Checks.of(toHeed));
        }
        blocks.add(timeLine(slip, language));
        steps(slip, language).forEach((stage, steps) -> {
            blocks.add(Paragraph.of(stage));
            blocks.add(TickList.of(steps));
        });
        blocks.add(Paragraph.quiet(text("paper.schedule-help", language)));
        return blocks;
    }

    private static Table edges(Slip slip, Locale language) {
        Table.Builder table = Table.builder()
                .column(text("finishing.edges", language))
                .column(text("edge-row.group", language))
                .numbers(text("edge-row.bevel", language))
                .column(text("edge-row.beveler", language))
                .column(text("edge-row.grits", language));
        for (Row row : slip.answers().get("edges").rows()) {
            table.row(
                    row.id(),
                    shown(row.cells(), "group"),
                    shown(row.cells(), "bevel"),
                    shown(row.cells(), "beveler"),
                    shown(row.cells(), "grits"));
        }
        return table.build();
    }

    private static Map<String, List<TickList.Step>> steps(Slip slip, Locale language) {
        Map<String, List<TickList.Step>> stages = new LinkedHashMap<>();
        for (Row row : slip.answers().get("steps").rows()) {
            String what = text("paper.schedule-step", language, shown(row.cells(), "work"), shown(row.cells(), "on"));
            stages.computeIfAbsent(shown(row.cells(), "stage"), stage -> new ArrayList<>())
                    .add(TickList.Step.of(what, detail(row, language)));
        }
        return stages;
    }

    /** Every step in its time, the least wait after it faint. */
    private static Bars timeLine(Slip slip, Locale language) {
        List<Bars.Bar> bars = new ArrayList<>();
        double from = 0;
        for (Row row : slip.answers().get("steps").rows()) {
            double worked = from + number(row, "hands-on");
            double waited = worked + number(row, "wait-from");
            List<Bars.Stretch> stretches = new ArrayList<>(List.of(Bars.Stretch.of(from, worked)));
            if (waited > worked) {
                stretches.add(Bars.Stretch.faint(worked, waited));
            }
            bars.add(Bars.Bar.of(shown(row.cells(), "work"), stretches, least(row)));
            from = waited;
        }
        return Bars.of(text("paper.schedule-time", language), bars);
    }

    private static double number(Row row, String key) {
        return row.cells().containsKey(key) ? row.cells().get(key).number().orElse(0) : 0;
    }

    /** What a step takes at least: the time at it, and the wait where there is one. */
    private static String least(Row row) {
        String worked = shown(row.cells(), "hands-on");
        return row.cells().containsKey("wait-from") ? worked + " + " + shown(row.cells(), "wait-from") : worked;
    }

    private static String detail(Row row, Locale language) {
        String handsOn = shown(row.cells(), "hands-on");
        if (row.cells().containsKey("wait-from")) {
            return text(
                    "paper.schedule-wait",
                    language,
                    handsOn,
                    shown(row.cells(), "wait-from"),
                    shown(row.cells(), "wait-to"));
        }
        return handsOn;
    }

    private static String shown(Map<String, JobView.Answer> answers, String key) {
        return answers.containsKey(key) ? answers.get(key).inline() : "";
    }

    private static String text(String key, Locale language, String... words) {
        return TEXTS.filled(key, language, words);
    }
}
