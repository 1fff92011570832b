package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.List;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.Knots;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A slip on which something is searched for: begun, watched, ended, and changed by hand. */
class SearchWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        Path file = Files.writeString(folder.resolve("cord.json"), """
                {"hidewright": 1, "slips": [
                 {"id": "cord", "calculator": "knots", "questions": {"cord": "30 mm"}},
                 {"id": "long", "calculator": "knots", "questions": {"cord": "800 mm"}}]}
                """);
        real = RealWindow.at(
                folder.resolve("settings"), Catalogue.of("org.example.nets", RecordCalculator.of(new Knots())), file);
    }

    @AfterEach
    void close() {
        real.close();
    }

    @Test
    void aSearchIsBegunAndItsFindingsStandOnTheSlip() {
        assertEquals("Search", real.text("cord/search"));
        assertFalse(real.find(Link.class, "cord/by-hand").isVisible());
        real.press("cord/search");
        real.until(() -> real.answers("cord").contains("3"));
        real.until(() -> real.text("cord/search").equals("Search"));
        real.press("deed.undo");
        assertTrue(real.answers("cord").contains("0"), real.answers("cord"));
    }

    @Test
    void whatWasFoundIsChangedByHandBehindWordsThatOpenIt() {
        real.press("cord/search");
        real.until(() -> real.text("cord/search").equals("Search")
                && real.answers("cord").contains("3"));
        assertFalse(real.has(List.class, "cord/tied.knots/rows"));
        real.press("cord/by-hand");
        List knots = real.find(List.class, "cord/tied.knots/rows");
        assertEquals(3, knots.getItemCount());
        knots.select(1);
        knots.notifyListeners(SWT.Selection, new Event());
        real.settle();
        assertEquals("15.0 mm", real.text("cord/tied.knots[knot-2].at"));
        real.type("cord/tied.knots[knot-2].at", "17 mm");
        assertTrue(real.window.project().orElseThrow().project().text().contains("17 mm"));
    }

    @Test
    void aSearchThatRunsIsSeenAndStopped() {
        real.press("long/search");
        real.until(() -> real.text("long/search-told").startsWith("Searching: "));
        assertEquals("Stop", real.text("long/search"));
        assertFalse(real.find(Link.class, "cord/search").isEnabled(), "one at a time");
        real.press("long/search");
        real.until(() -> real.text("long/search").equals("Search"));
        real.until(() -> real.find(Link.class, "cord/search").isEnabled());
    }

    /** What is not searched for yet is no row that could say it; with other answers it is told again. */
    @Test
    void aSlipSaysThatItWaitsForASearch() {
        String waits = "Check: Nothing has been searched for here: Tied is empty.";
        assertTrue(real.text("cord/urgent").startsWith(waits), real.text("cord/urgent"));
        real.press("project.look");
        assertTrue(real.find(Link.class, "cord/search").isFocusControl(), "what there is to look at leads to it");
        real.press("cord/search");
        real.until(() -> real.answers("cord").contains("3"));
        assertFalse(real.find(Label.class, "cord/urgent").isVisible());
        real.type("cord/cord", "31 mm");
        assertTrue(
                real.text("cord/urgent").contains("was searched for before other answers"), real.text("cord/urgent"));
    }

    @Test
    void whatIsWrongByHandIsNotFoldedAway() {
        real.press("cord/search");
        real.until(() -> real.text("cord/search").equals("Search")
                && real.answers("cord").contains("3"));
        real.press("cord/by-hand");
        List knots = real.find(List.class, "cord/tied.knots/rows");
        knots.select(0);
        knots.notifyListeners(SWT.Selection, new Event());
        real.settle();
        real.type("cord/tied.knots[knot-1].at", "20 m"); // ten at most
        real.press("cord/by-hand");
        assertTrue(real.has(List.class, "cord/tied.knots/rows"));
    }
}
