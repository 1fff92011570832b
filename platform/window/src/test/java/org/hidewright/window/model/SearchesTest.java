package org.hidewright.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.window.kit.Knots;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SearchesTest {
    private static final Duration MINUTE = Duration.ofMinutes(1);

    @TempDir
    Path folder;

    private final AtomicLong clock = new AtomicLong();
    /** Searches that were begun; run when a test says so. */
    private final Deque<Runnable> begun = new ArrayDeque<>();

    private final List<String> seen = new ArrayList<>();
    private OpenProject open;
    private Searches searches;

    @BeforeEach
    void open() throws Exception {
        Path file = Files.writeString(folder.resolve("cord.json"), """
                {"hidewright": 1, "slips": [
                 {"id": "cord", "calculator": "knots", "questions": {"cord": "30 mm"}},
                 {"id": "open", "calculator": "knots", "questions": {}}]}
                """);
        open = new OpenProject(
                file,
                ProjectFile.open(file),
                new Wording(Locale.ENGLISH, UnitSystem.METRIC),
                () -> new Bench(Catalogue.of("org.example.nets", RecordCalculator.of(new Knots()))),
                Runnable::run,
                Runnable::run,
                face -> {});
        open.workOut();
        searches = new Searches(open, begun::add, Runnable::run, clock::get, 2);
        searches.watch(() -> seen.add(searches.on().orElse("none")));
    }

    private void begin(String slip) {
        searches.begin(slip, MINUTE);
    }

    private String count() {
        return open.face()
                .orElseThrow()
                .slip("cord")
                .orElseThrow()
                .answers()
                .get(0)
                .inline();
    }

    @Test
    void whatIsFoundStandsInTheProjectAndIsTakenBackTogether() {
        String before = open.project().text();
        begin("cord");
        assertEquals(Optional.of("cord"), searches.on());
        assertEquals(0, searches.share());
        begun.remove().run();
        assertEquals("3", count());
        assertEquals(List.of("cord", "none"), seen);
        assertEquals(Optional.empty(), searches.on());
        open.undo();
        assertEquals(before, open.project().text());
        open.redo();
        assertEquals("3", count());
    }

    @Test
    void oneSearchRunsAtATimeAndSaysHowFarItIs() {
        begin("cord");
        assertFalse(searches.canBegin("cord"));
        begin("cord");
        assertEquals(1, begun.size());
        clock.addAndGet(Duration.ofSeconds(15).toNanos());
        assertEquals(0.25, searches.share(), 1e-9);
        clock.addAndGet(Duration.ofSeconds(90).toNanos());
        assertEquals(1, searches.share());
    }

    @Test
    void aSearchThatIsStoppedEndsAtOnce() {
        begin("cord");
        searches.stop();
        begun.remove().run();
        assertEquals("0", count());
        assertEquals(List.of("cord", "none"), seen);
        assertTrue(searches.canBegin("cord"));
    }

    @Test
    void eachSearchHasAnotherSeed() {
        begin("cord");
        begun.remove().run();
        assertTrue(open.project().text().contains("\"seed\":1"), open.project().text());
        open.type("cord", AnswerPath.of("cord"), "60 mm");
        begin("cord");
        begun.remove().run();
        assertTrue(open.project().text().contains("\"seed\":2"), open.project().text());
        assertEquals("6", count());
    }

    @Test
    void whatIsTypedWhileItIsSearchedStays() {
        begin("cord");
        open.titleSlip("cord", "Net cord");
        begun.remove().run();
        assertEquals(
                "Net cord", open.face().orElseThrow().slip("cord").orElseThrow().title());
        assertEquals("3", count());
    }

    @Test
    void aSearchWhoseCodeFailsIsToldOnItsSlipUntilTheNextBegins() {
        open.type("cord", AnswerPath.of("cord"), "13 mm");
        begin("cord");
        begun.remove().run();
        assertEquals("notice.broken", searches.failed("cord").map(Remark::key).orElse("nothing"));
        assertEquals(Optional.empty(), searches.failed("open"));
        assertTrue(searches.canBegin("cord"));
        begin("cord");
        assertEquals(Optional.empty(), searches.failed("cord"));
    }

    @Test
    void withoutItsOtherAnswersNothingIsSearchedFor() {
        assertFalse(searches.canBegin("open"));
        assertFalse(searches.canBegin("none"));
        begin("open");
        assertEquals(0, begun.size());
        assertEquals(
                "tied", open.face().orElseThrow().slip("open").orElseThrow().sought());
    }
}
