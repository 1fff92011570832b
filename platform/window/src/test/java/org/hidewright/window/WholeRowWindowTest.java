package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.Layered;
import org.hidewright.window.kit.Mats;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All that a row of the workshop has for questions that stand together is taken at once, as a hide with its flaws. */
class WholeRowWindowTest {
    private static final String PROJECT = """
            {
              "hidewright": 1,
              "name": "Stack",
              "slips": [
                {"id": "s", "calculator": "layered", "questions": {"layers": [
                  {"id": "top", "leather": {"thickness": "2 mm"}},
                  {"id": "core", "board": {"thickness": "1 mm"}}]}}
              ]
            }
            """;

    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        Catalogue catalogue = Catalogue.of("org.example", RecordCalculator.of(new Layered()));
        real = new RealWindow(folder.resolve("settings"), catalogue, Mats.stock(catalogue));
        real.window.open(Files.writeString(folder.resolve("stack.json"), PROJECT));
        real.settle();
    }

    @AfterEach
    void close() {
        real.close();
    }

    @Test
    void theMenuOfOneOfThemTakesTheRowForAll() {
        var lines = real.find(org.eclipse.swt.widgets.List.class, "s/layers/rows");
        lines.select(0);
        lines.notifyListeners(SWT.Selection, new Event());
        real.settle();
        real.find(MenuItem.class, "clear"); // menus are filled as if they were opened
        real.press("whole-row.bridle");
        assertTrue(
                real.window
                        .project()
                        .orElseThrow()
                        .project()
                        .text()
                        .contains("\"leather\": {\"workshop\": \"leather\", \"row\": \"bridle\"}"),
                real.window.project().orElseThrow().project().text());
        real.press("deed.undo");
        assertEquals(PROJECT, real.window.project().orElseThrow().project().text(), "with one step");
    }
}
