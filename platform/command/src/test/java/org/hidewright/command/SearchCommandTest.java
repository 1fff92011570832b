package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hidewright.command.kit.Guess;
import org.hidewright.command.kit.Plate;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Searches on the command line: begun when asked for, kept in the project. */
class SearchCommandTest {
    private final Terminal terminal = new Terminal(new Guess(), new Plate());

    @TempDir
    Path folder;

    private Path project;

    @BeforeEach
    void project() throws Exception {
        write("{'id': 'one', 'calculator': 'kit-guess', 'questions': {'below': '4 mm'}},"
                + " {'id': 'other', 'calculator': 'kit-guess', 'questions': {'below': '7 mm'}}");
    }

    private void write(String slips) throws Exception {
        project = folder.resolve("project.json");
        Files.writeString(project, ("{'hidewright': 1, 'slips': [" + slips + "]}").replace('\'', '"'));
    }

    private int search(String... more) {
        String[] arguments = new String[more.length + 2];
        arguments[0] = "search";
        arguments[1] = project.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        return terminal.run(arguments);
    }

    private String written() throws Exception {
        return Files.readString(project);
    }

    @Test
    void eachSlipIsSearchedOnAndWhatIsFoundIsKept() throws Exception {
        assertEquals(ExitCode.DONE, search("--tries", "350"));
        assertTrue(terminal.out.contains(" s: left 3\u00A0mm\n"), terminal.out);
        assertTrue(terminal.out.contains(" s: left 1\u00A0mm\n"), terminal.out);
        assertTrue(terminal.out.contains(" s: left 4\u00A0mm\n"), terminal.out);
        assertEquals(2, written().split("\"length\": \"3.0 mm\"", -1).length - 1, written());
        assertEquals(2, written().split("\"seed\":1,\"tries\":299", -1).length - 1, written());
        assertEquals("", terminal.err);
    }

    @Test
    void onlyTheSlipsThatAreNamedAreSearchedOn() throws Exception {
        String before = written();
        assertEquals(ExitCode.DONE, search("other", "--tries", "350"));
        assertTrue(written().startsWith(before.substring(0, before.indexOf("other"))), written());
        assertTrue(written().contains("\"length\": \"3.0 mm\""), written());
    }

    @Test
    void aSearchGoesOnFromWhatWasFoundBefore() throws Exception {
        search("one", "--tries", "250");
        search("one", "--tries", "150", "--seed", "5");
        assertTrue(written().contains("\"length\": \"3.0 mm\""), written());
        assertTrue(written().contains("\"seed\":5,\"tries\":99"), written());
    }

    @Test
    void whereNothingBetterIsFoundTheFileStaysAsItIs() throws Exception {
        String before = written();
        assertEquals(ExitCode.DONE, search("one", "--tries", "50"));
        assertTrue(terminal.out.startsWith("one: nothing better was found than what stands there.\n"), terminal.out);
        assertEquals(before, written());
    }

    @Test
    void aSearchOverABudgetOfTimeEndsWhenNothingBetterCanBeHopedFor() throws Exception {
        assertEquals(ExitCode.DONE, search("--seconds", "600", "--threads", "1"));
        assertTrue(written().contains("\"length\": \"4.0 mm\""), written());
        assertTrue(written().contains("\"length\": \"7.0 mm\""), written());
    }

    @Test
    void answersComeAsJsonWithNothingBesideThem() throws Exception {
        assertEquals(ExitCode.DONE, search("one", "--tries", "350", "--json"));
        assertEquals(List.of("one"), ids(terminal.out));
        assertEquals(ExitCode.DONE, search("--tries", "50", "--json"));
        assertEquals(List.of("one", "other"), ids(terminal.out));
    }

    @Test
    void whatCannotBeSearchedOnYetIsAmongTheJsonAsItStands() throws Exception {
        write("{'id': 'one', 'calculator': 'kit-guess', 'questions': {}}");
        assertEquals(ExitCode.REFUSED, search("--tries", "50", "--json"));
        assertEquals(List.of("one"), ids(terminal.out));
        write("{'id': 'plate', 'calculator': 'kit-plate', 'questions': {}}");
        assertEquals(ExitCode.DONE, search("--json"));
        assertEquals(List.of(), ids(terminal.out));
    }

    private static List<String> ids(String json) throws Exception {
        JsonArray slips = (JsonArray) JsonText.read(json).root();
        return slips.items().stream()
                .map(slip -> ((JsonObject) slip).text("id").orElseThrow())
                .toList();
    }

    @Test
    void aSlipWhoseOtherAnswersAreMissingIsToldWithWhatIsMissing() throws Exception {
        write("{'id': 'one', 'calculator': 'kit-guess', 'questions': {}}");
        assertEquals(ExitCode.REFUSED, search("--tries", "50"));
        assertTrue(
                terminal.err.startsWith("one cannot be searched on yet: other answers are missing.\n"), terminal.err);
        assertTrue(terminal.err.contains("Below"), terminal.err);
    }

    @Test
    void aSearchThatFailsIsToldAndTheOthersGoOn() throws Exception {
        write("{'id': 'one', 'calculator': 'kit-guess', 'questions': {'below': '13 mm'}},"
                + " {'id': 'other', 'calculator': 'kit-guess', 'questions': {'below': '7 mm'}}");
        assertEquals(ExitCode.REFUSED, search("--tries", "150"));
        assertTrue(terminal.err.contains("thirteen"), terminal.err);
        assertTrue(written().contains("\"length\": \"1.0 mm\""), written());
    }

    @Test
    void aProjectWithNothingToSearchForSaysSo() throws Exception {
        write("{'id': 'plate', 'calculator': 'kit-plate', 'questions': {}}");
        assertEquals(ExitCode.DONE, search());
        assertEquals("Nothing in " + project + " is searched for.\n", terminal.out);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "othr|                        |Did you mean other?",
                "plate|                       |has no slip plate that something is searched for on.",
                "--seconds|0                  |--seconds is a whole number from 1 to 604800, not 0.",
                "--seconds|1.5                |--seconds is a whole number from 1 to 604800, not 1.5.",
                "--threads|300                |--threads is a whole number from 1 to 256, not 300.",
                "--seed|none                  |--seed is a whole number from 1",
                "--tries|99999999999999999999 |--tries is a whole number from 1"
            })
    void whatCannotBeUsedIsTold(String first, String second, String told) {
        assertEquals(ExitCode.NOT_UNDERSTOOD, second == null ? search(first) : search(first, second));
        assertTrue(terminal.err.contains(told), terminal.err);
    }

    @Test
    void triesAreForOneThreadAndNoClock() {
        assertEquals(ExitCode.NOT_UNDERSTOOD, search("--tries", "5", "--seconds", "5"));
        assertTrue(terminal.err.contains("Give --seconds or --tries, not both."), terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, search("--tries", "5", "--threads", "2"));
        assertTrue(terminal.err.contains("Leave --threads out."), terminal.err);
    }
}
