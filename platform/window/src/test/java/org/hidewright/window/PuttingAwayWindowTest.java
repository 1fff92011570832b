package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.window.kit.Layered;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is left of a project that is cut, put into the workshop beside it. Invented. */
class PuttingAwayWindowTest {
    private static final String WORKSHOP = """
            {"workshop": 1, "currency": "EUR", "tables": {"leather": [
              {"id": "bridle", "name": "Bridle", "thickness": "2.4 mm", "density": "0.95"}
            ]}}""";

    private static final String PROJECT = """
            {"hidewright": 1, "name": "Stack", "slips": [
              {"id": "s", "calculator": "layered", "questions": {"layers": [%s]}}]}
            """;

    private static final String TAKEN = """
            {"id": "top", "leather": {"thickness": {"workshop": "leather", "row": "bridle", "column": "thickness"}}}""";

    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() {
        real = new RealWindow(
                folder.resolve("settings"), Catalogue.of("org.example", RecordCalculator.of(new Layered())));
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void open(String layers) throws Exception {
        real.window.workshop().open(Files.writeString(folder.resolve("workshop.json"), WORKSHOP));
        real.window.open(Files.writeString(folder.resolve("stack.json"), PROJECT.formatted(layers)));
        real.settle();
    }

    private String project() {
        return real.window.project().orElseThrow().project().text();
    }

    private String workshop() {
        return real.window.workshop().opened().orElseThrow().text();
    }

    private void putAway() {
        real.press("deed.put-away");
        real.settle();
        real.settle();
    }

    /** By hand: 2.4 mm less half a millimetre are 1.9 mm. */
    @Test
    void theRowThatWasTakenIsWhatIsLeftAndTheProjectKeepsWhatItTook() throws Exception {
        open(TAKEN);
        putAway();
        assertEquals(WORKSHOP.replace("2.4 mm", "1.9 mm"), workshop());
        assertTrue(project().contains("\"thickness\": \"2.4 mm\""), project());
        assertEquals("“Bridle” is what is left of it now.", real.text("workshop.told"));
        real.press("deed.undo");
        real.settle();
        assertEquals(WORKSHOP, workshop(), "taken back on the page of the workshop");
    }

    @Test
    void putAwayAgainItIsThereAlready() throws Exception {
        open(TAKEN);
        putAway();
        real.press("workshop.back");
        String once = workshop();
        putAway();
        assertEquals(once, workshop());
        assertEquals("“Bridle” was put away before.", real.text("workshop.told"));
    }

    @Test
    void leatherThatWasTypedBecomesARowToBeNamed() throws Exception {
        open("{\"id\": \"top\", \"leather\": {\"thickness\": \"2 mm\"}}");
        putAway();
        assertTrue(workshop().contains("\"thickness\": \"1.5 mm\""), workshop());
        assertTrue(real.text("workshop.told").contains("is new here"), real.text("workshop.told"));
    }

    @Test
    void whereNothingIsLeftThatIsSaidAndNothingChanges() throws Exception {
        open("{\"id\": \"core\", \"board\": {\"thickness\": \"1 mm\"}}");
        String before = project();
        putAway();
        assertEquals(WORKSHOP, workshop());
        assertEquals(before, project());
        assertTrue(real.text("project.told").contains("nothing is left"), real.text("project.told"));
    }

    @Test
    void withoutAWorkshopThereIsNowhereToPutIt() throws Exception {
        real.window.open(Files.writeString(folder.resolve("stack.json"), PROJECT.formatted(TAKEN)));
        real.settle();
        assertFalse(real.find(MenuItem.class, "deed.put-away").isEnabled());
    }
}
