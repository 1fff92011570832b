package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.hidewright.window.kit.Bench;
import org.hidewright.window.model.Memory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A maker without a workshop, and without a project. */
class NewWorkshopWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() {
        real = new RealWindow(folder.resolve("settings"), Bench.catalogue());
        real.press("deed.workshop");
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void press(String id) {
        real.press(id);
        real.settle();
    }

    @Test
    void aWorkshopIsBegunFilledSavedAndFoundTheNextTime() throws Exception {
        Path file = folder.resolve("my bench.json");
        real.files.add(file);
        press("workshop.new");
        assertEquals("my bench", real.text("workshop.title"));
        press("workshop/add");
        real.type("workshop/leather[leather-1].name", "Side");
        real.settle();
        real.type("workshop/currency", "EUR");
        real.settle();
        press("deed.save");
        assertEquals("""
                {
                  "workshop": 1,
                  "name": "my bench",
                  "tables": {
                    "leather": [
                      {"id": "leather-1", "name": "Side"}
                    ]
                  },
                  "currency": "EUR"
                }
                """, Files.readString(file));
        assertEquals(Optional.of(file), Memory.in(folder.resolve("settings")).workshop());
        press("workshop.back");
        assertEquals("Open a project …", real.text("start.open"));
    }

    @Test
    void noneIsBegunOverAFileThatIsThereNorOpenedFromWhatIsNone() throws Exception {
        Path file = Files.writeString(folder.resolve("other.json"), "{}");
        real.files.add(file);
        press("workshop.new");
        assertTrue(real.text("workshop.told").contains("is there already"), real.text("workshop.told"));
        assertEquals("{}", Files.readString(file));
        real.files.add(file);
        press("workshop.open");
        assertTrue(real.text("workshop.told").contains("not a workshop file"), real.text("workshop.told"));
        assertEquals(Optional.empty(), Memory.in(folder.resolve("settings")).workshop());
    }
}
