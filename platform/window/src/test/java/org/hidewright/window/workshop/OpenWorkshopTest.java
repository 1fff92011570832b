package org.hidewright.window.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Project;
import org.hidewright.core.store.WorkshopFile;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Stock;
import org.hidewright.window.kit.Bench;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.words.WindowTexts;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workshop without a window: what typing, copying and recording make of its text, and who takes a row. */
class OpenWorkshopTest {
    private static final Catalogue CATALOGUE = Bench.catalogue();
    private static final WindowTexts TEXTS = new WindowTexts(Locale.ENGLISH);

    @TempDir
    Path folder;

    private final List<String> changes = new ArrayList<>();
    private UnitSystem units = UnitSystem.METRIC;
    private Path file;
    private OpenWorkshop workshop;

    @BeforeEach
    void open() throws Exception {
        file = Bench.workshop(folder);
        workshop = new OpenWorkshop(
                file,
                WorkshopFile.open(file, Stock.of(CATALOGUE::tables)),
                CATALOGUE,
                () -> new Wording(Locale.ENGLISH, units),
                TEXTS,
                Runnable::run,
                Runnable::run,
                () -> changes.add("changed"));
        workshop.show();
    }

    private static AnswerPath cell(String row, String column) {
        return AnswerPath.of("punches").row(row).key(column);
    }

    private QuestionFace face(String row, String column) {
        return workshop.face().orElseThrow().table("punches").orElseThrow().line(row).orElseThrow().questions().stream()
                .filter(question -> question.path().equals(cell(row, column)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aBareNumberIsOfTheUnitThatIsShown() {
        units = UnitSystem.INCH;
        workshop.type(OpenWorkshop.PLACE, cell("two", "diameter"), "1/8");
        assertTrue(workshop.text().contains("\"diameter\": \"1/8 in\""), workshop.text());
        assertEquals(
                "in",
                workshop.face()
                        .orElseThrow()
                        .table("punches")
                        .orElseThrow()
                        .columns()
                        .get(1)
                        .unit());
        assertEquals(List.of("changed"), changes);
    }

    @Test
    void lettersOfOneFieldAreTakenBackTogether() {
        String before = workshop.text();
        for (String typed : List.of("2", "25", "25 ", "25 m", "25 mm")) {
            workshop.type(OpenWorkshop.PLACE, cell("two", "diameter"), typed);
        }
        assertTrue(workshop.unsaved());
        workshop.undo();
        assertEquals(before, workshop.text());
        assertFalse(workshop.unsaved());
        workshop.redo();
        assertEquals("25 mm", face("two", "diameter").text());
    }

    @Test
    void noRowComesIntoATableThatIsNotThere() {
        String before = workshop.text();
        AnswerPath none = AnswerPath.of(""); // as long as the page shows no table
        workshop.addRow(OpenWorkshop.PLACE, none);
        workshop.addRows(OpenWorkshop.PLACE, none, List.of(List.of("2 mm")));
        workshop.removeRow(OpenWorkshop.PLACE, none, "two");
        workshop.moveRow(OpenWorkshop.PLACE, none, "two", 1);
        assertEquals(before, workshop.text());
        assertEquals(List.of(), changes);
    }

    @Test
    void whatCannotBeReadIsRefusedInPlaceAndKept() {
        workshop.type(OpenWorkshop.PLACE, cell("two", "diameter"), "wide");
        assertEquals(1, face("two", "diameter").wrong().size());
        assertEquals("wide", face("two", "diameter").text());
        assertEquals(
                1, workshop.face().orElseThrow().table("punches").orElseThrow().wrong());
        workshop.type(OpenWorkshop.PLACE, WorkshopFaces.CURRENCY, "gold");
        assertEquals(1, workshop.face().orElseThrow().head().get(1).wrong().size());
    }

    @Test
    void aBundlesRowIsNotChangedAndItsCopyIsTheMakersOwn() {
        String before = workshop.text();
        workshop.type(OpenWorkshop.PLACE, cell("five", "diameter"), "6 mm");
        workshop.removeRow(OpenWorkshop.PLACE, AnswerPath.of("punches"), "five");
        assertEquals(before, workshop.text());
        assertEquals(Optional.of("five"), workshop.copyRow("punches", "five", false));
        assertTrue(workshop.text().contains("{\"id\": \"five\", \"name\": \"Five\", \"diameter\": \"5 mm\"}"));
        workshop.type(OpenWorkshop.PLACE, cell("five", "diameter"), "6 mm");
        assertEquals(
                Optional.of("6 mm"),
                workshop.taken("punches", "five").orElseThrow().cell("diameter"));
    }

    @Test
    void aResultIsAppendedWithItsDayAndNamedAfterWhatItIs() {
        assertEquals("ring-fold", new Recorded(workshop).on(LocalDate.of(2026, 3, 1), Map.of("name", "Ring fold")));
        assertTrue(
                workshop.text().contains("{\"id\": \"ring-fold\", \"day\": \"2026-03-01\", \"name\": \"Ring fold\"}"));
        assertEquals("ring-fold-2", new Recorded(workshop).on(LocalDate.of(2026, 3, 2), Map.of("name", "Ring fold")));
    }

    @Test
    void whatStandsUnderTheIdOfARowIsMovedWithIt() {
        assertFalse(workshop.call("punches", "two", "three"), "it is taken");
        assertFalse(workshop.call("punches", "two", " "));
        assertTrue(workshop.call("punches", "two", "2-mm"));
        assertEquals("20 mm", face("2-mm", "diameter").text());
    }

    @Test
    void projectsOfKnownFilesAndFoldersAreReadAgainWhenTheyChange() throws Exception {
        Path project = Bench.project(folder);
        Files.writeString(folder.resolve("broken.json"), "{");
        KnownProjects known = new KnownProjects();
        assertEquals(
                List.of(project),
                List.copyOf(known.in(List.of(), List.of(folder)).keySet()));
        Files.writeString(project, Files.readString(project).replace("\"Cords\"", "\"Cords and ropes\""));
        Map<Path, Project> now = known.in(List.of(project, folder.resolve("gone.json")), List.of(folder.resolve("no")));
        assertEquals("Cords and ropes", now.get(project).name());
        workshop.type(OpenWorkshop.PLACE, cell("two", "diameter"), "25 mm");
        List<RowUse> uses = new RowUses(CATALOGUE, new Wording(Locale.ENGLISH, units), TEXTS)
                .of(
                        CATALOGUE.tables().find("punches").orElseThrow(),
                        workshop.taken("punches", "two").orElseThrow(),
                        now);
        assertEquals(
                List.of(new RowUse(project, "Cords and ropes", "Roll, Round", "Diameter: was 20 mm, is 25 mm", true)),
                uses);
    }
}
