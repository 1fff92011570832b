package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.Project;
import org.hidewright.window.kit.Mats;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A row of the workshop for a question of a slip that is there already. */
class TakenRowWindowTest {
    private static final String MATS = """
            {
              "hidewright": 1,
              "name": "Mats",
              "slips": [
                {"id": "small", "calculator": "mat", "title": "Small mat", "questions": {"width": "120 mm", "thickness": "2 mm"}},
                {"id": "large", "calculator": "mat", "title": "Large mat", "questions": {
                  "width": "400 mm", "thickness": {"workshop": "leather", "row": "bridle", "column": "thickness"}}}
              ]
            }
            """;

    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        Catalogue catalogue = Mats.catalogue();
        real = new RealWindow(folder.resolve("settings"), catalogue, Mats.stock(catalogue));
        real.window.open(Files.writeString(folder.resolve("mats.json"), MATS));
        real.settle();
    }

    @AfterEach
    void close() {
        real.close();
    }

    private Project project() {
        return real.window.project().orElseThrow().project();
    }

    /** The lines of the menu of a question, without those inside them. */
    private List<String> lines(String question) {
        real.find(MenuItem.class, "clear"); // menus are filled as if they were opened
        return real.all(MenuItem.class, question).stream()
                .map(MenuItem::getText)
                .toList();
    }

    @Test
    void theMenuOfAFieldOffersTheRowsThatSuit() {
        assertEquals(
                List.of("Bridle · 2.4 mm", "Bridle · 2.4 mm"),
                lines("row.bridle").stream().map(line -> line.replace("&", "")).toList());
        assertEquals(2, lines("row.thin").size(), "on both slips, and at no question that takes no leather");
        assertFalse(real.has(MenuItem.class, "row.sole"), "6 mm are beyond the limits");
        assertEquals(2, lines("rows").size());
    }

    @Test
    void theRowIsTakenAndKeptAndTakenBack() {
        real.press("row.thin"); // the first is that of the small mat
        assertEquals("1.2 mm", real.text("small/thickness").replace('\u00A0', ' '));
        assertTrue(real.text("small/thickness/told").contains("the workshop"), real.text("small/thickness/told"));
        assertTrue(
                real.text("small/thickness/told")
                        .replace('\u00A0', ' ')
                        .endsWith("\n1.2 mm is unusual; 2 mm to 3 mm is common."),
                real.text("small/thickness/told"));
        assertTrue(
                project().text().contains("{\"workshop\":\"leather\",\"row\":\"thin\",\"column\":\"thickness\"}"),
                project().text());
        assertEquals(
                List.of("thin"),
                project().kept().orElseThrow().rows("leather").stream()
                        .map(row -> row.id())
                        .toList(),
                "of the row that is taken alone");
        real.press("deed.undo");
        assertEquals(MATS, project().text(), "with one step");
        assertEquals("2 mm", real.text("small/thickness"));
    }
}
