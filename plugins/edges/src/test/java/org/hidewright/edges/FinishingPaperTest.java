package org.hidewright.edges;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.JobView.Answer;
import org.hidewright.api.document.JobView.Row;
import org.hidewright.api.document.JobView.State;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Severity;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.junit.jupiter.api.Test;

/** What stands on the schedule that lies beside the work. */
class FinishingPaperTest {
    private static Row row(String id, String... cells) {
        Map<String, Answer> map = new LinkedHashMap<>();
        for (int i = 0; i < cells.length; i += 2) {
            String[] value = cells[i + 1].split(" ");
            map.put(
                    cells[i],
                    value.length == 2 && value[1].matches("min|h|mm")
                            ? Answer.number("", value[0], value[1], 1)
                            : Answer.text("", cells[i + 1]));
        }
        return Row.of(id, map);
    }

    private static JobView.Slip.Builder slip(String calculator, State state) {
        return JobView.Slip.of("edges", calculator, "Edges of the cover", state)
                .answer("hands-on", Answer.number("", "1.2", "h", 4000))
                .answer("waits-at-least", Answer.number("", "4.5", "h", 1))
                .answer("waits-at-most", Answer.number("", "26", "h", 1))
                .answer(
                        "edges",
                        Answer.rows(
                                "",
                                "",
                                List.of(
                                        row(
                                                "mouth",
                                                "group",
                                                "before glue-up",
                                                "bevel",
                                                "0.5 mm",
                                                "beveler",
                                                "small",
                                                "grits",
                                                "P240, P400"),
                                        row("under", "group", "buried, none", "grits", ""))))
                .answer(
                        "steps",
                        Answer.rows(
                                "",
                                "",
                                List.of(
                                        row(
                                                "dye-1",
                                                "stage",
                                                "Before glue-up",
                                                "work",
                                                "Dye",
                                                "on",
                                                "mouth",
                                                "hands-on",
                                                "2 min",
                                                "wait-from",
                                                "4 h",
                                                "wait-to",
                                                "24 h"),
                                        row(
                                                "burnish-1",
                                                "stage",
                                                "Before glue-up",
                                                "work",
                                                "Rub",
                                                "on",
                                                "mouth",
                                                "hands-on",
                                                "3 min"),
                                        row(
                                                "glue-and-stitch",
                                                "stage",
                                                "Glue and stitch",
                                                "work",
                                                "Stitch",
                                                "on",
                                                "whole piece"))));
    }

    private static List<Section> sections(JobView.Slip slip) {
        return new FinishingPaper().sections(JobView.of("Cover", Locale.ENGLISH, List.of(slip)));
    }

    @Test
    void theScheduleStandsApartWithItsStages() {
        Section section = sections(slip("finishing", State.WORKED)
                        .notice(Checks.Check.of(Severity.CAUTION, "Caution", "Dust", "", ""))
                        .build())
                .get(0);
        assertEquals("org.hidewright.edges.finishing-schedule", section.id());
        assertEquals("Finishing schedule", section.title());
        assertTrue(section.standsApart());
        List<Block> blocks = section.blocks();
        assertEquals(
                "Edges of the cover: 1.2\u00A0h of work, 4.5\u00A0h to 26\u00A0h of waiting one after the other.",
                ((Paragraph) blocks.get(0)).text());
        assertEquals("Dust", ((Checks) blocks.get(2)).checks().get(0).what());
        Table edges = (Table) blocks.get(1);
        assertEquals(
                List.of(
                        List.of("mouth", "before glue-up", "0.5\u00A0mm", "small", "P240, P400"),
                        List.of("under", "buried, none", "", "", "")),
                edges.rows());
        assertEquals("Before glue-up", ((Paragraph) blocks.get(4)).text());
        assertEquals(
                List.of("Dye: mouth | 2\u00A0min; then wait 4\u00A0h to 24\u00A0h", "Rub: mouth | 3\u00A0min"),
                steps(blocks.get(5)));
        assertEquals("Glue and stitch", ((Paragraph) blocks.get(6)).text());
        assertEquals(List.of("Stitch: whole piece | "), steps(blocks.get(7)));
        assertTrue(((Paragraph) blocks.get(8)).text().contains("label"));
        assertEquals(9, blocks.size());
    }

    /** Numbers of the rows are 1 here, whatever their unit. */
    @Test
    void theStepsLieInTimeOneAfterTheOther() {
        Bars bars = (Bars) sections(slip("finishing", State.WORKED).build())
                .get(0)
                .blocks()
                .get(2);
        assertEquals("In time, one after the other; faint: the least wait", bars.caption());
        assertEquals(
                List.of("Dye 0-1, faint 1-2: 2\u00A0min + 4\u00A0h", "Rub 2-3: 3\u00A0min", "Stitch 3-3: "),
                bars.bars().stream().map(FinishingPaperTest::read).toList());
    }

    private static String read(Bars.Bar bar) {
        return bar.label() + " "
                + bar.stretches().stream()
                        .map(stretch -> (stretch.isFaint() ? "faint " : "") + Math.round(stretch.from()) + "-"
                                + Math.round(stretch.to()))
                        .collect(Collectors.joining(", "))
                + ": " + bar.text();
    }

    private static List<String> steps(Block block) {
        return ((TickList) block)
                .steps().stream()
                        .map(step -> step.text() + " | " + step.detail())
                        .toList();
    }

    @Test
    void notesStayOnTheJobCard() {
        JobView.Slip.Builder slip =
                slip("finishing", State.WORKED).notice(Checks.Check.of(Severity.NOTE, "Note", "Worth knowing", "", ""));
        assertEquals(8, sections(slip.build()).get(0).blocks().size());
    }

    @Test
    void onlyWhatWasWorkedIsScheduled() {
        assertEquals(List.of(), sections(slip("finishing", State.REFUSED).build()));
        assertEquals(List.of(), sections(slip("edge-bevel", State.WORKED).build()));
    }
}
