package org.hidewright.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.window.kit.Layered;
import org.hidewright.window.kit.Mats;
import org.hidewright.window.model.QuestionFace.Origin;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is asked together is taken together from a row of the workshop. */
class WholeRowTest {
    private static final String PROJECT = """
            {"hidewright": 1, "name": "Stack", "slips": [
              {"id": "s", "calculator": "layered", "questions": {"layers": [
                {"id": "top", "leather": {"thickness": "2 mm", "sheets": 2}},
                {"id": "core", "board": {"thickness": "1 mm"}},
                {"id": "fill", "filler": {"height": "1 mm", "weight": "0.9"}}],
                "patches": [{"id": "worn", "thickness": "1 mm", "density": "0.9"}]}}]}
            """;

    private static final AnswerPath TOP = AnswerPath.of("layers").row("top").key("leather");
    private static final AnswerPath CORE = AnswerPath.of("layers").row("core").key("board");

    @TempDir
    Path folder;

    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private final List<ProjectFace> shown = new ArrayList<>();
    private OpenProject open;

    @BeforeEach
    void open() throws Exception {
        Catalogue catalogue = Catalogue.of("org.example", RecordCalculator.of(new Layered()));
        Path file = Files.writeString(folder.resolve("stack.json"), PROJECT);
        open = new OpenProject(
                file,
                ProjectFile.open(file),
                new Wording(Locale.ENGLISH, UnitSystem.METRIC),
                () -> new Bench(catalogue, Mats.stock(catalogue)),
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

    private QuestionFace question(AnswerPath path) {
        return shown.get(shown.size() - 1)
                .slip("s")
                .orElseThrow()
                .question(path)
                .orElseThrow();
    }

    private List<Fit> offered(AnswerPath path) {
        return open.choices().wholeRows("s", question(path));
    }

    private void take(String row) {
        Fit fit = offered(TOP.key("thickness")).stream()
                .filter(one -> one.link().row().equals(row))
                .findFirst()
                .orElseThrow();
        open.take("s", TOP, fit.link());
        work();
    }

    @Test
    void rowsAreOfferedWholeWhereMoreThanOneQuestionTakesFromThem() {
        assertEquals(3, offered(TOP.key("thickness")).size());
        assertEquals("", offered(TOP.key("thickness")).get(0).link().column());
        assertEquals(List.of(), offered(CORE.key("thickness")), "alone");
        AnswerPath filler = AnswerPath.of("layers").row("fill").key("filler");
        assertEquals(
                List.of(), offered(filler.key("height")), "called otherwise, they would not be answered by the row");
        AnswerPath patch = AnswerPath.of("patches").row("worn");
        assertEquals(List.of(), offered(patch.key("thickness")), "a row keeps its id");
    }

    @Test
    void allThatTheRowHasIsTaken() {
        take("bridle");
        assertEquals("2.4 mm", question(TOP.key("thickness")).text().replace('\u00A0', ' '));
        assertEquals("0.95", question(TOP.key("density")).text());
        assertEquals(Origin.WORKSHOP, question(TOP.key("thickness")).origin());
        assertEquals(Origin.WORKSHOP, question(TOP.key("density")).origin());
        assertTrue(
                open.project().text().contains("{\"sheets\": 2, \"workshop\": \"leather\", \"row\": \"bridle\"}"),
                open.project().text());
        assertEquals(1, open.project().kept().orElseThrow().rows("leather").size(), "a copy of it is kept");
    }

    @Test
    void whatIsTypedOverItGoesBeforeItAndCanBeTakenBack() {
        take("bridle");
        open.type("s", TOP.key("thickness"), "3 mm");
        work();
        assertEquals(Origin.TYPED, question(TOP.key("thickness")).origin());
        assertEquals("0.95", question(TOP.key("density")).text());
        open.clear("s", TOP.key("thickness"));
        work();
        assertEquals("2.4 mm", question(TOP.key("thickness")).text().replace('\u00A0', ' '));
    }

    @Test
    void clearingWhatTheRowGivesTakesTheRowAway() {
        take("bridle");
        open.clear("s", TOP.key("density"));
        work();
        assertEquals(Origin.OPEN, question(TOP.key("density")).origin());
        assertEquals("", question(TOP.key("thickness")).text());
        assertTrue(
                open.project().text().contains("\"leather\": {\"sheets\": 2}"),
                open.project().text());
        open.undo();
        work();
        assertEquals("0.95", question(TOP.key("density")).text());
    }
}
