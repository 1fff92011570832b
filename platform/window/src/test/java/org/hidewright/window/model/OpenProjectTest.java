package org.hidewright.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.model.QuestionFace.Choice;
import org.hidewright.window.model.QuestionFace.Origin;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenProjectTest {
    private static final AnswerPath ROUND = AnswerPath.of("round");
    private static final AnswerPath END = AnswerPath.of("end");

    @TempDir
    Path folder;

    /** What waits for the thread that works; run when a test says so. */
    private final Deque<Runnable> waiting = new ArrayDeque<>();

    private final List<ProjectFace> shown = new ArrayList<>();
    private OpenProject open;

    @BeforeEach
    void open() throws Exception {
        open = new OpenProject(
                folder.resolve("nets.json"),
                Nets.file(folder),
                new Wording(Locale.ENGLISH, UnitSystem.METRIC),
                () -> new Bench(Nets.catalogue()),
                waiting::add,
                Runnable::run,
                shown::add);
        open.workOut();
        work();
    }

    private void work() {
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
    }

    private SlipFace slip(String id) {
        return shown.get(shown.size() - 1).slip(id).orElseThrow();
    }

    private QuestionFace question(String slip, String path) {
        return slip(slip).questions().stream()
                .filter(face -> face.path().toString().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private String length(String slip) {
        return slip(slip).answers().get(0).inline();
    }

    @Test
    void aSlipShowsItsLeadingAnswerFirst() {
        assertEquals("First cord", slip("first").title());
        assertEquals("Length", slip("first").answers().get(0).label());
        assertEquals("200.0\u00A0mm", length("first"));
        assertTrue(slip("first").answers().get(0).lead());
        assertEquals("400.0\u00A0mm", length("second"), "linked");
        assertEquals(1, slip("first").drawings().size());
    }

    @Test
    void rangesFollowWhatIsShownAtOnce() {
        assertEquals(2, shown.size());
        assertTrue(shown.get(0).slips().get(0).answers().get(0).met().isEmpty());
        var met = slip("first").answers().get(0).met().orElseThrow();
        assertEquals(196, met.low(), 1e-6);
        assertEquals(204, met.high(), 1e-6);
        assertTrue(met.movedBy().contains("Round"), met.movedBy());
    }

    @Test
    void questionsSayWhereTheirAnswersComeFrom() {
        assertEquals(Origin.TYPED, question("first", "round").origin());
        assertEquals("100 +- 2 mm", question("first", "round").text());
        assertEquals("50-300 mm", question("first", "round").limits());
        assertEquals(Origin.PRESET, question("first", "turns").origin());
        assertEquals("1 – 9", question("first", "turns").limits());
        assertEquals(Origin.LINKED, question("second", "round").origin());
        assertEquals("First cord, Length", question("second", "round").text());
        assertEquals("200\u00A0mm", question("second", "round").understood());
        assertEquals(Origin.OPEN, question("first", "spare").origin());
        assertEquals(
                List.of(new Choice("two", "Two strands"), new Choice("three", "Three strands")),
                question("first", "lay").choices());
        assertEquals("Plain", question("first", "end").text());
    }

    @Test
    void thePieceIsWhatIsDrawnFirstWhereNothingIsMade() {
        ProjectFace face = shown.get(shown.size() - 1);
        assertEquals(slip("first").drawings(), face.piece());
        assertFalse(slip("first").makes());
        assertEquals(1, face.urgent(), "the bundle that is missing");
        assertEquals(
                List.of("“100 +- 2 mm” is worked at its midpoint, 100\u00A0mm."),
                question("first", "round").notes());
    }

    @Test
    void whatHangsOnAChangeMoves() {
        open.type("first", ROUND, "150 mm");
        work();
        assertEquals("300.0\u00A0mm", length("first"));
        assertEquals("600.0\u00A0mm", length("second"));
        assertTrue(open.unsaved());
    }

    @Test
    void aVariantBringsItsQuestions() {
        open.choose("first", END, "loop");
        work();
        assertEquals("220.0\u00A0mm", length("first"));
        assertEquals(1, question("first", "end.loop.round").depth());
        open.type("first", END.key("loop").key("round"), "30 mm");
        work();
        assertEquals("230.0\u00A0mm", length("first"));
        assertEquals(
                "\"30 mm\"", open.typed("first", END.key("loop").key("round")).orElseThrow());
    }

    @Test
    void aRefusalIsToldAtItsQuestion() {
        open.type("first", ROUND, "2 sheep");
        work();
        assertEquals(State.REFUSED, slip("first").state());
        assertEquals(1, question("first", "round").wrong().size());
        assertEquals("2 sheep", question("first", "round").text(), "what was typed stays");
        assertEquals(List.of(), slip("first").told());
        assertEquals(State.WAITING, slip("second").state());
        assertFalse(slip("second").stateText().isEmpty());
        open.type("first", ROUND, "");
        work();
        assertEquals(1, question("first", "round").wrong().size(), "it has no preset");
    }

    @Test
    void aSlipOfAMissingBundleIsDormantAndKept() {
        assertEquals(State.DORMANT, slip("gone").state());
        assertTrue(slip("gone").told().get(0).what().contains("net-weight"));
        assertTrue(open.project().text().contains("\"mesh\": \"2 mm\""));
    }

    @Test
    void everythingIsTakenBackAndMadeAgain() {
        String opened = open.project().text();
        open.type("first", ROUND, "1");
        open.type("first", ROUND, "15");
        open.type("first", ROUND, "150 mm");
        open.type("first", AnswerPath.of("turns"), "3");
        open.undo();
        assertTrue(open.project().text().contains("150 mm"));
        assertFalse(open.project().text().contains("turns"));
        open.undo();
        assertEquals(opened, open.project().text(), "letters of one field go together");
        assertFalse(open.canUndo());
        open.undo();
        open.redo();
        open.redo();
        assertFalse(open.canRedo());
        work();
        assertEquals("450.0\u00A0mm", length("first"));
    }

    @Test
    void onlyTheLastOfManyChangesIsWorkedOut() {
        int before = shown.size();
        open.type("first", ROUND, "1 mm");
        open.type("first", ROUND, "15 mm");
        open.type("first", ROUND, "150 mm");
        work();
        assertEquals(before + 2, shown.size());
        assertEquals("300.0\u00A0mm", length("first"));
    }

    @Test
    void rangesAreLeftOffWhenSomethingElseIsTyped() {
        List<String> asked = new ArrayList<>();
        var worked = new Bench(Nets.catalogue()).work(open.project());
        assertTrue(Faces.whole(worked, Nets.ENGLISH, List.of(), () -> {
                    asked.add("again");
                    return asked.size() < 2;
                })
                .isEmpty());
        assertEquals(2, asked.size(), "asked before each slip, until it said no");
    }

    @Test
    void aSaveWritesWhatIsShown() throws Exception {
        open.type("first", ROUND, "150 mm");
        assertEquals(List.of(), open.save());
        assertFalse(open.unsaved());
        assertTrue(Files.readString(folder.resolve("nets.json")).contains("\"round\": \"150 mm\""));
        Files.writeString(folder.resolve("nets.json"), "{\"hidewright\": 1}");
        open.type("first", ROUND, "151 mm");
        assertEquals(1, open.save().size(), "another program has changed it");
        assertTrue(open.unsaved());
    }
}
