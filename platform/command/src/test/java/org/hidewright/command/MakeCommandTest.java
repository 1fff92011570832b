package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.document.Section;
import org.hidewright.core.paper.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What of a project is worked out, put into its packet, and told. */
class MakeCommandTest extends MakeRun {
    @Test
    void thePacketIsThreeFiles() throws Exception {
        assertEquals(0, make(project("", slip("a", QUESTIONS)), "--language=en"), terminal.err);
        Path out = folder.resolve("out/deep");
        assertEquals(
                out.resolve("job-card.pdf") + "\n" + out.resolve("job-card.json") + "\n" + out.resolve("job-card.csv")
                        + "\n",
                terminal.out);
        assertEquals("", terminal.err);
        assertEquals("%PDF of a test", Files.readString(out.resolve("job-card.pdf")));
        var json = new ObjectMapper().readTree(Files.readString(out.resolve("job-card.json")));
        assertEquals("2026-03-01", json.get("date").asText());
        assertEquals(4, json.at("/slips/0/answers/cut/value").asDouble());
        assertTrue(
                Files.readString(out.resolve("job-card.csv")).contains("a|kit-strap|answer||cut|Cut length|4.0|mm|"));
        assertEquals("Kit", terminal.document.project());
        assertEquals(LocalDate.of(2026, 3, 1), terminal.document.date());
        assertEquals(Paper.A4, terminal.paper);
    }

    @Test
    void everyAnswerOfTheCardIsInTheCsvToo() throws Exception {
        assertEquals(
                0,
                make(
                        project("", slip("a", QUESTIONS.replace("[]", "[{'id': 'x', 'run': {'length': 7}}]"))),
                        "--language=en"));
        String csv = Files.readString(folder.resolve("out/deep/job-card.csv"));
        assertTrue(csv.contains("a|kit-strap|answer|x|rows.at|"), csv);
        assertTrue(csv.contains("|question|x|sections.run.length|"), csv);
        assertTrue(csv.contains("a|kit-strap|state||state||worked||"), csv);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "thickness: 3 sheep|{'id': 'a', 'calculator': 'kit-strap', 'questions': {'thickness': '3 sheep'}}",
                "no such calculator|{'id': 'a', 'calculator': 'nowhere'}",
                "no id|{'calculator': 'kit-strap'}",
                "one id twice|{'id': 'a', 'calculator': 'nowhere'}, {'id': 'a', 'calculator': 'nowhere'}",
            })
    void whatCannotBeWorkedIsOneAndThePacketSaysSo(String name, String slips) throws Exception {
        assertEquals(1, make(project("", slips), "--language=en"), terminal.err);
        assertTrue(terminal.err.startsWith("Stop (line 1, column "), terminal.err);
        assertTrue(Files.exists(folder.resolve("out/deep/job-card.pdf")));
    }

    @Test
    void whatIsSoInPartOfARangeIsToldByTheCommandToo() throws Exception {
        // the kit's strap tells a check above 5 mm
        assertEquals(
                0,
                make(project("", slip("a", QUESTIONS.replace("2 mm", "4-6 mm"))), "--language=en", "--units=mm"),
                terminal.err);
        assertTrue(
                terminal.err.replace('\u00A0', ' ').contains("Check (slip “a”): Where Thickness is 5.000 mm or more: "),
                terminal.err);
    }

    @Test
    void whereTheMiddleOfARangeIsRefusedTheRestIsTold() throws Exception {
        assertEquals(
                1,
                make(project("", slip("a", QUESTIONS.replace("2 mm", "0.1-0.7 mm"))), "--language=en", "--units=mm"));
        assertTrue(
                terminal.err
                        .replace('\u00A0', ' ')
                        .contains("Check (slip “a”): There is an answer only where Thickness is 0.500 mm or more."),
                terminal.err);
    }

    @Test
    void aCheckIsToldAndDoesNotRefuse() throws Exception {
        assertEquals(0, make(project("", slip("a", QUESTIONS.replace("2 mm", "6 mm"))), "--language=en"));
        assertTrue(terminal.err.startsWith("Check (line 1, column "), terminal.err);
        assertTrue(terminal.err.contains("slip “a”, question “thickness”): 6\u00A0mm is thick."), terminal.err);
        assertFalse(terminal.err.contains("unusual"), "notes stay on the card");
    }

    @Test
    void settingsOfTheProjectAreTakenAndOptionsGoBeforeThem() throws Exception {
        String project =
                project(", 'show': {'units': 'in', 'paper': 'Letter', 'language': 'de'}", slip("a", QUESTIONS));
        assertEquals(0, make(project), terminal.err);
        assertEquals(Paper.LETTER, terminal.paper);
        assertEquals(Locale.GERMAN, terminal.document.language());
        assertTrue(overview().contains("0,158\u00A0in"), overview());
        assertEquals(0, make(project, "--units=mm", "--paper=a4", "--language=en"));
        assertEquals(Paper.A4, terminal.paper);
        assertTrue(overview().contains("4.0\u00A0mm"), overview());
    }

    private String overview() {
        Section first = terminal.document.sections().get(0);
        return ((org.hidewright.api.document.Table) first.blocks().get(0))
                .rows()
                .toString();
    }

    @Test
    void aSettingThatIsNoneIsToldAndTheUsualOneTaken() throws Exception {
        String project = project(", 'show': {'units': 'cm', 'paper': 'B5'}", slip("a", QUESTIONS));
        assertEquals(1, make(project, "--language=en"), terminal.err);
        assertTrue(terminal.err.contains("“cm” is none of the choices"), terminal.err);
        assertTrue(terminal.err.contains("“B5” is none of the choices"), terminal.err);
        assertEquals(Paper.A4, terminal.paper);
        assertTrue(overview().contains("4.0\u00A0mm"), overview());
    }

    @ParameterizedTest
    @CsvSource({
        "--date=2026-13-01,“2026-13-01” is no date",
        "--date=tomorrow,“tomorrow” is no date",
        "--paper=B5,no paper “B5”",
        "--units=cm,not in “cm”",
        "--colour=tan,--colour"
    })
    void anOptionThatIsNoneIsTwoAndNothingIsWritten(String option, String said) throws Exception {
        assertEquals(
                2,
                terminal.run(
                        "make",
                        project("", slip("a", QUESTIONS)),
                        "--into",
                        folder.resolve("out").toString(),
                        option,
                        "--language=en"));
        assertTrue(terminal.err.contains(said), terminal.err);
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void aFileThatCannotBeReadIsTwoAndSaysWhy() throws Exception {
        Path latin = folder.resolve("latin.json");
        Files.write(latin, "{\"hidewright\": 1, \"name\": \"Käfer\"}".getBytes(StandardCharsets.ISO_8859_1));
        Path broken = folder.resolve("broken.json");
        Files.writeString(broken, "{\"hidewright\": 1,\n\"name\" \"Kit\"}");
        Path other = folder.resolve("other.json");
        Files.writeString(other, "{\"name\": \"Kit\"}");
        Path empty = Files.createFile(folder.resolve("empty.json"));
        told(folder.resolve("nowhere.json"), "There is no file ");
        told(folder, " is a folder.");
        told(latin, " is no text in UTF-8.");
        told(broken, "Stop (line 2, column ");
        told(other, "This is not a Hidewright project.");
        told(empty, "There is nothing in the file.");
    }

    private void told(Path file, String said) {
        assertEquals(2, make(file.toString(), "--language=en"));
        assertTrue(terminal.err.contains(said), terminal.err);
        assertEquals("", terminal.out);
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void aSaveThatWasCutShortIsPutRightAndTold() throws Exception {
        Path project = Path.of(project("", slip("a", QUESTIONS)));
        Files.move(project, folder.resolve(".project.json.new"));
        assertEquals(0, make(project.toString(), "--language=en"), terminal.err);
        assertTrue(terminal.err.startsWith("Check: " + project + " was missing after a save that was cut short"));
        assertEquals(List.of("out", "project.json"), names(folder));
    }

    @Test
    void aProjectThatDoesNotOpenNamesTheVersionThatWasKept() throws Exception {
        Path project = Path.of(project("", slip("a", QUESTIONS)));
        Files.move(project, folder.resolve("project.json.before"));
        assertEquals(2, make(project.toString(), "--language=en"));
        assertTrue(terminal.err.startsWith("Stop: There is no file " + project + "."), terminal.err);
        assertTrue(terminal.err.contains("Note: An earlier version is kept in " + project + ".before."), terminal.err);
    }

    @Test
    void aProjectWithoutSlipsIsSaidToBeEmptyAndNothingIsWritten() throws Exception {
        String empty = project("", "");
        assertEquals(1, make(empty, "--language=en"));
        assertTrue(terminal.err.startsWith("There is no slip in " + empty + ", so there is nothing"), terminal.err);
        assertFalse(Files.exists(folder.resolve("out")));
        assertEquals(1, make(project("", "5"), "--language=en"));
        assertTrue(terminal.err.startsWith("Stop (line 1") && terminal.err.contains("There is no slip"), terminal.err);
        Files.writeString(Path.of(empty), "{\"hidewright\": 1, \"slip\": []}");
        assertEquals(1, make(empty, "--language=en"));
        assertTrue(
                terminal.err.contains("“slip” means nothing here; “slips” would.")
                        && terminal.err.contains("There is no slip in"),
                terminal.err);
    }

    @Test
    void slipsThatWaitAreNamedTogetherAndNotOneByOne() throws Exception {
        String waiting = QUESTIONS.replace("'2 mm'", "{'from': 'a', 'answer': 'cut'}");
        assertEquals(
                1,
                make(
                        project(
                                "",
                                slip("a", QUESTIONS.replace("2 mm", "2 sheep")) + "," + slip("b", waiting) + ","
                                        + slip("c", waiting)),
                        "--language=en"));
        assertEquals(
                "Waiting for what is told above: b, c.",
                terminal.err.lines().skip(3).findFirst().orElse(""),
                terminal.err);
    }

    @Test
    void aWriterThatIsNotInstalledIsToldAndTheRestIsWritten() throws Exception {
        terminal.pdf = null;
        terminal.csv = null;
        assertEquals(1, make(project("", slip("a", QUESTIONS)), "--language=en"));
        assertTrue(terminal.err.contains("No bundle that writes PDF")
                && terminal.err.contains("No bundle that writes CSV"));
        assertEquals(folder.resolve("out/deep/job-card.json") + "\n", terminal.out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a.json b.json"})
    void makeTakesOneProject(String files) {
        assertEquals(
                2,
                terminal.run(
                        ("make " + files + " --language=en").replace("  ", " ").split(" ")));
        assertTrue(terminal.err.contains("hidewright make --help shows what it takes."), terminal.err);
    }

    @Test
    void theProjectItselfIsLeftAsItIs() throws Exception {
        String project = project(", 'theirs' :  [ 1.50 ]", slip("a", QUESTIONS));
        String before = Files.readString(Path.of(project));
        make(project);
        assertEquals(before, Files.readString(Path.of(project)));
        assertEquals(List.of("out", "project.json"), names(folder));
    }
}
