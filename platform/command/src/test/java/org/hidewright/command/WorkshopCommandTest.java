package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hidewright.command.kit.Strap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The workshop file on the command line: looked over, taken from, and kept in a project. */
class WorkshopCommandTest {
    private static final String WORKSHOP = """
            {'workshop': 1, 'name': 'Field bench', 'currency': 'EUR', 'tables': {
             'leather': [{'id': 'side', 'name': 'Side', 'tannage': 'vegetable', 'thickness': '2.5 mm', 'price': 165}]}}
            """;

    private static final String SLIP =
            "{'id': 'strap', 'calculator': 'kit-strap', 'questions': {'thickness': {'workshop': 'leather', 'row': 'side',"
                    + " 'column': 'thickness'}, 'core': {'flat-ring': {'inside': 20}}, 'edge': {'bevel': 1}, 'sections':"
                    + " []}}";

    private final Terminal terminal = new Terminal(new Strap());

    @TempDir
    Path folder;

    private String workshop;
    private String project;

    @BeforeEach
    void files() throws Exception {
        workshop = file("workshop.json", WORKSHOP);
        project = file("project.json", "{'hidewright': 1, 'name': 'Kit', 'slips': [" + SLIP + "]}");
    }

    private String file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text.replace('\'', '"')).toString();
    }

    @Test
    void aFileIsListedTableByTable() {
        assertEquals(ExitCode.DONE, terminal.run("workshop", workshop));
        assertTrue(terminal.out.startsWith("Field bench\nAmounts without a currency are in EUR.\n\nLeather in stock"));
        assertTrue(terminal.out.contains("  side  Side  vegetable  2.5 mm     165\n"), terminal.out);
        assertEquals("", terminal.err);
    }

    @Test
    void whatIsWrongInAFileIsToldWithItsPlace() throws Exception {
        String wrong = file("wrong.json", WORKSHOP.replace("2.5 mm", "2.5 kg"));
        assertEquals(ExitCode.REFUSED, terminal.run("workshop", wrong));
        assertTrue(terminal.err.contains("(line 2, column "), terminal.err);
        assertTrue(terminal.err.contains("workshop “leather[side].thickness”): “kg” does not measure a length."));
    }

    /** What is taken from a file of which parts had to be passed over is not all that was meant. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "[{'id': 'side', 'thickness': '3 mm'}, {'id': 'side',",
                "[{'thickness': '3 mm'}, {'id': 'side',",
                "[5, {'id': 'side',"
            })
    void wrongRowsAreARefusalForEveryCommandThatTakesFromTheFile(String rows) throws Exception {
        String wrong = file("wrong.json", WORKSHOP.replace("[{'id': 'side',", rows));
        assertEquals(ExitCode.REFUSED, terminal.run("workshop", wrong));
        assertTrue(terminal.err.startsWith("Stop (line 2, column "), terminal.err);
        assertEquals(ExitCode.REFUSED, make("--workshop", wrong));
        assertTrue(terminal.err.startsWith("Stop (line 2, column "), terminal.err);
        assertTrue(Files.exists(folder.resolve("out/job-card.json")), "the card is written all the same");
        assertEquals(ExitCode.REFUSED, workFrom(wrong));
        assertEquals(ExitCode.REFUSED, terminal.run("keep", project, "--workshop", wrong));
        assertEquals(ExitCode.DONE, make(), "with copies the file is not needed");
    }

    @Test
    void whatIsNoWorkshopIsRefused() {
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("workshop", project));
        assertTrue(terminal.err.contains("This is not a workshop file."), terminal.err);
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                terminal.run("workshop", folder.resolve("none.json").toString()));
        assertTrue(terminal.err.contains("none.json"), terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("make", project, "--workshop", project));
        assertTrue(terminal.err.contains("This is not a workshop file."), terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("work", "kit-strap", "thickness=2", "--workshop", project));
        assertTrue(terminal.err.contains("This is not a workshop file."), terminal.err);
    }

    @Test
    void aloneItExplainsTheTables() {
        assertEquals(ExitCode.DONE, terminal.run("workshop"));
        assertTrue(terminal.out.contains("Round punches (punches)\n"), terminal.out);
        assertTrue(terminal.out.contains("  diameter  Diameter  [length, mm, 0.3 mm – 60 mm;"), terminal.out);
        assertEquals(ExitCode.DONE, terminal.run("workshop", workshop, "--columns"));
        assertTrue(terminal.out.contains("Round punches (punches)\n") && terminal.out.contains("Field bench"));
    }

    @Test
    void workTakesFromTheFileAndSaysSo() {
        assertEquals(ExitCode.DONE, workFrom(workshop));
        assertTrue(
                terminal.out.contains("Taken from the workshop:\n  thickness  Thickness  2.5\u00A0mm"), terminal.out);
        assertTrue(terminal.out.contains("  leather[side].thickness: 2.5 mm\n"), terminal.out);
    }

    private int workFrom(String file) {
        return terminal.run(
                "work",
                "kit-strap",
                "thickness={\"workshop\": \"leather\", \"row\": \"side\", \"column\": \"thickness\"}",
                "core={\"flat-ring\": {\"inside\": 20}}",
                "edge={\"bevel\": 1}",
                "sections=[]",
                "--workshop",
                file);
    }

    private int make(String... more) {
        String[] all = new String[4 + more.length];
        System.arraycopy(new String[] {"make", project, "--into=" + folder.resolve("out"), "--replace"}, 0, all, 0, 4);
        System.arraycopy(more, 0, all, 4, more.length);
        return terminal.run(all);
    }

    @Test
    void aProjectIsMadeWithTheFileAndAfterKeepingWithoutIt() throws Exception {
        assertEquals(ExitCode.REFUSED, make());
        assertTrue(terminal.err.contains(
                "This is to come from the workshop, Leather in stock, side, Thickness, and there is none."));
        assertEquals(ExitCode.DONE, make("--workshop", workshop));
        assertEquals("", terminal.err);
        assertTrue(Files.readString(folder.resolve("out/job-card.json"))
                .contains("The project has no copy of Leather in stock, Side yet."));

        assertEquals(ExitCode.DONE, terminal.run("keep", project, "--workshop", workshop));
        assertTrue(terminal.out.endsWith("project.json keeps copies of:\n  leather[side]\n"), terminal.out);
        assertEquals(ExitCode.DONE, make());
        assertFalse(Files.readString(folder.resolve("out/job-card.json")).contains("no copy"));

        byte[] kept = Files.readAllBytes(Path.of(project));
        assertEquals(ExitCode.DONE, terminal.run("keep", project));
        assertTrue(terminal.out.endsWith("project.json stay as they are:\n  leather[side]\n"), terminal.out);
        assertArrayEquals(kept, Files.readAllBytes(Path.of(project)));

        file("workshop.json", WORKSHOP.replace("165", "180"));
        assertEquals(ExitCode.DONE, terminal.run("keep", project, "--workshop", workshop));
        assertTrue(
                terminal.err.startsWith(
                        "Note: “Leather in stock, Side, Price” is 165 in the project and 180 in the workshop now."),
                terminal.err);

        file("workshop.json", WORKSHOP.replace("2.5 mm", "3 mm"));
        assertEquals(ExitCode.DONE, make("--workshop", workshop));
        assertTrue(terminal.err.contains(
                "“Leather in stock, Side, Thickness” is 2.5 mm in the project and 3 mm in the workshop now."));
        assertEquals(ExitCode.DONE, terminal.run("keep", project, "--workshop", workshop));
        assertTrue(terminal.err.contains("is 2.5 mm in the project and 3 mm in the workshop now."), terminal.err);
        assertTrue(terminal.out.contains("stay as they are"), terminal.out);
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("keep", project, "--renew"));
        assertEquals(
                "There is nothing to take the rows over from. Name the workshop file with --workshop FILE.\n",
                terminal.err);
        assertArrayEquals(kept, Files.readAllBytes(Path.of(project)));
        assertEquals(ExitCode.DONE, terminal.run("keep", project, "--workshop", workshop, "--renew"));
        assertEquals(ExitCode.DONE, make("--workshop", workshop));
        assertEquals("", terminal.err);
    }

    /** A row of several lines in the workshop file, a project with other line ends, another indent, and a byte order mark. */
    @Test
    void copiesAreWrittenAsTheLinesOfTheProjectAre() throws Exception {
        file("workshop.json", WORKSHOP.replace("'name': 'Side', ", "'name': 'Side',\n      "));
        String written = "\uFEFF{\r\n\t'hidewright': 1,\r\n\t'slips': [" + SLIP + "]\r\n}";
        file("project.json", written);
        assertEquals(ExitCode.DONE, terminal.run("keep", project, "--workshop", workshop));
        String block =
                ",~>'workshop': {~>>'currency': 'EUR',~>>'tables': {~>>>'leather': [~>>>>{'id': 'side', 'name': 'Side',"
                        + "~>>>>>'tannage': 'vegetable', 'thickness': '2.5 mm', 'price': 165}~>>>]~>>}~>}";
        String expected =
                written.replace("]\r\n}", "]" + block.replace("~", "\r\n").replace('>', '\t') + "\r\n}");
        assertEquals(expected.replace('\'', '"'), Files.readString(Path.of(project)));
        assertEquals(ExitCode.DONE, terminal.run("keep", project, "--workshop", workshop, "--renew"));
        assertTrue(terminal.out.contains("stay as they are"), terminal.out);
    }

    @Test
    void whatCannotBeKeptIsTold() throws Exception {
        assertEquals(ExitCode.REFUSED, terminal.run("keep", project));
        assertTrue(terminal.err.contains("Name the file with --workshop FILE"), terminal.err);
        String plain = file("plain.json", "{'hidewright': 1, 'slips': []}");
        assertEquals(ExitCode.DONE, terminal.run("keep", plain, "--workshop", workshop));
        assertTrue(terminal.out.contains("takes nothing from the workshop"), terminal.out);
        assertEquals("{\"hidewright\": 1, \"slips\": []}", Files.readString(Path.of(plain)));
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                terminal.run("keep", folder.resolve("none.json").toString()));
    }
}
