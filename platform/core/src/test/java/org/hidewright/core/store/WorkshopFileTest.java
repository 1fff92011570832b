package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.WorkshopText;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkshopFileTest {
    private static final Stock TABLES = Stock.of(() -> Tables.of(StandardTables.brought()));

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void begin() throws FileTrouble {
        file = folder.resolve("bench.json");
        WorkshopFile.begin(file, "Bench");
    }

    private static WorkshopText withAPunch(WorkshopFile file) {
        return file.text().adding("punches", "two", Map.of("name", "Two", "diameter", "2 mm"));
    }

    private static List<String> keys(FileTrouble trouble) {
        return trouble.remarks().stream().map(Remark::key).toList();
    }

    @Test
    void aWorkshopIsBegunWithNothingMadeUpAndNeverOverAnother() throws Exception {
        WorkshopFile opened = WorkshopFile.open(file, TABLES);
        assertEquals("Bench", opened.text().workshop().name());
        assertEquals(List.of(), opened.text().workshop().tables());
        assertEquals(List.of(), opened.remarks());
        FileTrouble there = assertThrows(FileTrouble.class, () -> WorkshopFile.begin(file, "Other"));
        assertEquals(List.of("notice.file-there"), keys(there));
        FileTrouble nowhere =
                assertThrows(FileTrouble.class, () -> WorkshopFile.begin(folder.resolve("no/bench.json"), "Other"));
        assertEquals(List.of("notice.not-saved"), keys(nowhere));
    }

    @Test
    void whatIsSavedIsInTheFileAndTheVersionBeforeBesideIt() throws Exception {
        String before = Files.readString(file);
        WorkshopFile opened = WorkshopFile.open(file, TABLES);
        WorkshopFile saved = opened.save(withAPunch(opened));
        assertEquals(saved.text().text(), Files.readString(file));
        assertEquals(before, Files.readString(folder.resolve("bench.json.before")));
        assertFalse(saved.changedMeanwhile());
        assertTrue(saved.stock().file().orElseThrow().row("punches", "two").isPresent());
    }

    @Test
    void whatAnotherProgramWroteIsNotWrittenOver() throws Exception {
        WorkshopFile opened = WorkshopFile.open(file, TABLES);
        String other = Files.readString(file).replace("Bench", "Table");
        Files.writeString(file, other);
        assertTrue(opened.changedMeanwhile());
        FileTrouble trouble = assertThrows(FileTrouble.class, () -> opened.save(withAPunch(opened)));
        assertEquals("notice.changed-by-another", keys(trouble).get(0));
        assertEquals(other, Files.readString(file));
        assertEquals(
                withAPunch(opened).text(), Files.readString(folder.resolve("bench.json.unsaved")), "and nothing lost");
    }

    @Test
    void whatIsNoWorkshopIsRefusedAndTheVersionBeforeIsNamed() throws Exception {
        WorkshopFile opened = WorkshopFile.open(file, TABLES);
        opened.save(withAPunch(opened));
        Files.writeString(file, "{\"hidewright\": 1}");
        FileTrouble trouble = assertThrows(FileTrouble.class, () -> WorkshopFile.open(file, TABLES));
        assertEquals(List.of("notice.not-a-workshop", "notice.earlier-version"), keys(trouble));
    }
}
