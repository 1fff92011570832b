package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hidewright.command.kit.Split;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a project leaves goes into the workshop file; an invented workshop. */
class PutAwayCommandTest {
    private static final String WORKSHOP = """
            {'workshop': 1, 'tables': {
             'leather': [{'id': 'side', 'name': 'Side', 'tannage': 'vegetable', 'thickness': '3 mm', 'price': '165 EUR'}]}}
            """;

    private static final String TAKEN =
            "{'id': 'a', 'thickness': {'workshop': 'leather', 'row': 'side', 'column': 'thickness'}}";

    private final Terminal terminal = new Terminal(new Split());

    @TempDir
    Path folder;

    private Path workshop;
    private Path project;

    @BeforeEach
    void files() throws Exception {
        workshop = file("workshop.json", WORKSHOP);
        project = project(TAKEN);
    }

    private Path file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text.replace('\'', '"'));
    }

    private Path project(String sides) throws Exception {
        return file(
                "project.json",
                "{'hidewright': 1, 'slips': [{'id': 'split', 'calculator': 'kit-split', 'questions': {'sides': ["
                        + sides + "]}}]}");
    }

    private int putAway() {
        return terminal.run("put-away", project.toString(), "--workshop", workshop.toString(), "--language=en");
    }

    @Test
    void theRowThatWasTakenIsWhatIsLeftOfItAndTheProjectKeepsWhatItWas() throws Exception {
        assertEquals(0, putAway(), terminal.err);
        assertTrue(terminal.out.contains("  leather[side]  is what is left of it now\n"), terminal.out);
        assertEquals(WORKSHOP.replace('\'', '"').replace("3 mm", "1.5 mm"), Files.readString(workshop));
        assertTrue(Files.readString(project).contains("\"3 mm\""), "the copy");
        assertEquals(0, putAway(), terminal.err);
        assertTrue(terminal.out.contains("  leather[side]  was put away before\n"), terminal.out);
        assertEquals(WORKSHOP.replace('\'', '"').replace("3 mm", "1.5 mm"), Files.readString(workshop));
    }

    @Test
    void whatWasTypedIsAdded() throws Exception {
        project("{'id': 'a', 'thickness': '4 mm'}");
        assertEquals(0, putAway(), terminal.err);
        assertTrue(terminal.out.contains("  leather[a-rest]  added; give it a name\n"), terminal.out);
        assertTrue(Files.readString(workshop).contains("\"a-rest\""));
    }

    @Test
    void whereNothingIsLeftNothingIsWritten() throws Exception {
        project("{'id': 'a'}");
        String before = Files.readString(project);
        assertEquals(0, putAway(), terminal.err);
        assertTrue(terminal.out.contains("nothing is left for the workshop"), terminal.out);
        assertEquals(WORKSHOP.replace('\'', '"'), Files.readString(workshop));
        assertEquals(before, Files.readString(project));
    }

    @Test
    void aWorkshopThatIsNotSoundIsNotWrittenInto() throws Exception {
        file("workshop.json", WORKSHOP.replace("}]", "}, {'id': 'side', 'name': 'Other'}]"));
        String before = Files.readString(workshop);
        assertFalse(putAway() == 0, terminal.out);
        assertEquals(before, Files.readString(workshop));
        assertFalse(Files.readString(project).contains("\"workshop\": {"), "the project either");
        assertEquals(2, terminal.run("put-away", project.toString(), "--language=en"));
        assertTrue(terminal.err.contains("Into which workshop?"), terminal.err);
    }
}
