package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.hidewright.command.kit.Lidded;
import org.hidewright.command.kit.Tray;
import org.hidewright.command.kit.TrayThing;
import org.hidewright.core.template.TemplateReader;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewCommandTest {
    @TempDir
    Path folder;

    private final Terminal terminal = new Terminal(new Tray(), new TrayThing());

    private Path file() {
        return folder.resolve("tray.json");
    }

    private String start(String typed, String... more) throws Exception {
        terminal.typed = typed;
        String[] arguments = new String[4 + more.length];
        System.arraycopy(new String[] {"new", "project", "--template", "tray"}, 0, arguments, 0, 4);
        System.arraycopy(more, 0, arguments, 4, more.length);
        arguments = append(arguments, file().toString());
        assertEquals(0, terminal.run(arguments), terminal.err + terminal.out);
        return Files.readString(file());
    }

    private static String[] append(String[] arguments, String last) {
        String[] all = Arrays.copyOf(arguments, arguments.length + 1);
        all[arguments.length] = last;
        return all;
    }

    @Test
    void whatHasNoPresetIsAskedAndTheProjectCanBeMade() throws Exception {
        // measured; width, height, choice by its number
        String project = start("1\n80 mm\n3 in\n2\n");
        assertTrue(project.contains("\"width\": \"80 mm\""), project);
        assertTrue(project.contains("\"height\": \"3 in\""), project);
        assertTrue(project.contains("\"corners\": \"round\""), project);
        assertFalse(project.contains("thickness"), "what has a preset is not asked: " + project);
        assertTrue(terminal.out.contains("hidewright make " + file()), terminal.out);
        assertTrue(terminal.out.contains("since nobody was asked: Leather 2\u00a0mm"), terminal.out);
        assertEquals(
                0,
                terminal.run(
                        "make",
                        file().toString(),
                        "--into",
                        folder.resolve("out").toString()),
                terminal.err);
        assertTrue(Files.exists(folder.resolve("out/patterns-tray.svg")));
    }

    /** Only the maker can measure; what is taken from the example with Enter fits the thing of the example. */
    @Test
    void anExampleTakenWithEnterIsToldAsNobodysMeasure() throws Exception {
        String project = start("1\n60 mm\n\n2\n");
        assertEquals(
                1, project.split("\"width\"", -1).length - 1, "typed, though it is what was suggested: " + project);
        assertEquals(2, project.split("\"height\"", -1).length - 1, project);
        assertTrue(terminal.err.contains("Nobody has measured this yet"), terminal.err);
        start("1\n60 mm\n90 mm\n2\n", "--replace");
        assertEquals("", terminal.err);
    }

    /** Two projects of one template are told apart, also where their packets lie. */
    @Test
    void aProjectIsCalledByTheFileThatWasNamed() throws Exception {
        assertTrue(start("", "--presets").contains("\"name\": \"Tray\""));
        terminal.typed = "";
        Path other = folder.resolve("lens-tray.json");
        assertEquals(0, terminal.run("new", "project", "--template", "tray", "--presets", other.toString()));
        assertTrue(Files.readString(other).contains("\"name\": \"Lens tray\""), Files.readString(other));
    }

    @Test
    void anEmptyLineTakesWhatIsInBrackets() throws Exception {
        String project = start("\n\n\n\n");
        assertTrue(project.contains("\"width\": \"60 mm\""), project);
        assertTrue(project.contains("\"corners\": \"sharp\""), project);
        assertTrue(terminal.out.contains("[60 mm] > "), terminal.out);
        assertTrue(terminal.out.contains("(usual 20-200 mm)"), terminal.out);
    }

    /** By hand: 60 mm are 2.362 in, so 2 3/8 in; 20 mm are 0.7874 in and 200 mm 7.874 in, told as 0.788 and 7.87 to lie within; a bare 3 is three inches. */
    @Test
    void inInchesItAsksAndUnderstandsInches() throws Exception {
        String project = start("1\n\n3\n1\n", "--units", "in");
        assertTrue(terminal.out.contains("[2 3/8 in] > "), terminal.out);
        assertTrue(terminal.out.contains("(usual 0.788-7.87 in)"), terminal.out);
        assertTrue(project.contains("\"width\": \"2 3/8 in\""), project);
        assertTrue(project.contains("\"height\": \"3 in\""), project);
        assertTrue(project.replaceAll("\\s+", "").contains("\"show\":{\"units\":\"in\"}"), project);
    }

    @Test
    void whatIsOutsideItsLimitsIsToldAndAskedAgain() throws Exception {
        String project = start("1\n9 kg\n1 mm\n50 mm\n\n\n");
        assertTrue(project.contains("\"width\": \"50 mm\""), project);
        assertTrue(terminal.out.contains("1\u00a0mm is below"), terminal.out);
        assertTrue(terminal.out.contains("kg"), terminal.out);
    }

    @Test
    void insideAGroupOnlyWhatIsWrongIsAskedAgain() throws Exception {
        // neither of two ways, then the second; second variant; too many, four; too thick, 9 mm; choice
        String project = start("in\n2\n2\n30\n4\n9 kg\n9 mm\n2\n");
        assertTrue(terminal.out.contains("Type a number from 1 to 2."), terminal.out);
        assertFalse(terminal.out.contains("line "), "there is no file yet: " + terminal.out);
        assertTrue(project.contains("\"count\": \"4\""), project);
        assertTrue(project.contains("\"across\": \"9 mm\""), project);
        assertTrue(project.contains("\"corners\": \"round\""), project);
    }

    /** Yes and no of the language and of a file are the same; the file has its own. */
    @Test
    void yesAndNoAreTypedInAnyOfBothLanguages() throws Exception {
        assertEquals("yes", lid("ja\n", "de"));
        assertEquals("no", lid("Nein\n", "de"));
        assertEquals("no", lid("no\n", "de"));
        assertEquals("yes", lid("\n", "de"));
        assertEquals("no", lid("no\n", "en"));
    }

    private String lid(String typed, String language) throws Exception {
        Terminal lidded = new Terminal(new Lidded());
        lidded.typed = typed;
        Path project = folder.resolve("lidded.json");
        Files.deleteIfExists(project);
        assertEquals(
                0,
                lidded.run("new", "project", "--template", "kit-lidded", "--language", language, project.toString()),
                lidded.err + lidded.out);
        assertTrue(lidded.out.contains(language.equals("de") ? "[ja] > " : "[yes] > "), lidded.out);
        return Files.readString(project).replaceAll("(?s).*\"lid\": \"([a-z]+)\".*", "$1");
    }

    /** An example is nobody’s answer. */
    @Test
    void whereTheAnswersEndBeforeOneThatHasNoPresetNothingIsWritten() {
        endsBefore("", "Width");
        endsBefore("1\n80 mm\n", "Height");
        endsBefore("1\n80 mm\n3 in\n", "Corners");
        endsBefore("1\n80 mm\n9 kg\n", "Height");
        // pencils of another calculator, which have presets
        endsBefore("2\n2\n", "Corners");
        endsBefore("2\n", "Thing");
    }

    private void endsBefore(String typed, String label) {
        terminal.typed = typed;
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                terminal.run("new", "project", "--template", "tray", "--language=en", file().toString()));
        assertEquals(
                "The answers ended before “" + label
                        + "”, which has no preset; nothing is written. Answer it too, or add"
                        + " --presets to take presets and examples.\n",
                terminal.err);
        assertFalse(Files.exists(file()));
    }

    @Test
    void whereOnlyPresetsRemainTheyStand() throws Exception {
        String project = start("1\n80 mm\n3 in\n2\n", "--all");
        assertFalse(project.contains("thickness"), "nobody has typed it: " + project);
        assertTrue(
                terminal.out.contains("The answers ended here; what was not asked stays at its presets.\n"),
                terminal.out);
        start("1\n80 mm\n3 in\n2\n", "--replace");
        assertFalse(terminal.out.contains("ended"), "all that is asked was answered: " + terminal.out);
    }

    @Test
    void whatIsNeverRightEndsTheStart() {
        terminal.typed = "1\n" + "x\n".repeat(40);
        assertEquals(
                ExitCode.NOT_UNDERSTOOD,
                terminal.run("new", "project", "--template", "tray", "--language=en", file().toString()));
        assertTrue(terminal.err.startsWith("“Width” was answered 5 times, and never so that it goes;"), terminal.err);
        terminal.typed = "x\n".repeat(40);
        terminal.run("new", "project", "--template", "tray", "--language=en", file().toString());
        assertTrue(terminal.err.contains("was answered 5 times"), terminal.err);
        assertFalse(Files.exists(file()));
    }

    @Test
    void aThingByItsNameBecomesASlipThatIsTakenFrom() throws Exception {
        // another calculator; second variant; three of them, as thick as usual; choice by its label
        String project = start("2\n2\n3\n\nround\n");
        assertTrue(project.contains("\"id\": \"tray-thing\""), project);
        assertTrue(project.contains("\"calculator\": \"tray-thing\""), project);
        assertTrue(project.contains("\"pencils\""), project);
        assertTrue(project.contains("\"count\": \"3\""), project);
        assertTrue(project.replaceAll("\\s+", "").contains("\"answer\":\"width\""), project);
        assertEquals(
                0,
                terminal.run(
                        "make",
                        file().toString(),
                        "--into",
                        folder.resolve("out").toString()),
                terminal.err);
    }

    @Test
    void allIsAskedOrNothing() throws Exception {
        String project = start("1\n\n\n\n3 mm\n", "--all");
        assertTrue(project.contains("\"thickness\": \"3 mm\""), project);
        assertFalse(terminal.out.contains("--all"), terminal.out);
        start("1\n\n\n\n", "--replace");
        assertTrue(
                terminal.out.contains("What has a preset is not asked (1 questions); with --all it is.\n"),
                terminal.out);
        String examples = project.substring(project.indexOf("\"examples\""));
        assertTrue(examples.contains("width") && !examples.contains("thickness"), "typed by nobody: " + project);
        project = start("", "--presets", "--replace");
        assertTrue(project.contains("\"width\": \"60 mm\""), project);
        assertFalse(terminal.out.contains("> "), terminal.out);
        String into = folder.resolve("out").toString();
        assertEquals(0, terminal.run("make", file().toString(), "--into", into), terminal.err);
        assertTrue(
                terminal.err.contains("Nobody has measured this yet; it is the example of the template: Width"),
                terminal.err);
    }

    @Test
    void aProjectIsNotWrittenOver() throws Exception {
        Files.writeString(file(), "mine");
        assertEquals(2, terminal.run("new", "project", "--template", "tray", file().toString()));
        assertTrue(terminal.err.contains("is there already"), terminal.err);
        assertEquals("mine", Files.readString(file()));
    }

    @Test
    void whatIsNoTemplateIsTold() {
        assertEquals(2, terminal.run("new", "project", "--template", "tary"));
        assertTrue(terminal.err.contains("There is no template “tary”; perhaps “tray” is meant."), terminal.err);
        assertEquals(2, terminal.run("new", "project", "--template", "tray-thing"));
        assertTrue(terminal.err.contains("no template “tray-thing”"), terminal.err);
        assertEquals(2, terminal.run("new", "project"));
        assertTrue(terminal.err.contains("There are: tray."), terminal.err);
        assertEquals(2, terminal.run("new", "projekt"));
        assertTrue(terminal.err.contains("perhaps new project is meant"), terminal.err);
        assertEquals(2, terminal.run("new", "template", "--all", "x"));
        assertTrue(terminal.err.contains("--all goes with hidewright new project alone"), terminal.err);
    }

    @Test
    void aTemplateOfOnesOwnWorksAtOnce() throws Exception {
        Path own = folder.resolve("pen-case");
        assertEquals(0, terminal.run("new", "template", own.toString()), terminal.err);
        String manifest = Files.readString(own.resolve("META-INF/MANIFEST.MF"));
        assertTrue(manifest.contains("Hidewright-Templates: pen-case.json\n"), manifest);
        TemplateReader.Result read =
                TemplateReader.read(Files.readString(own.resolve("pen-case.json")), id -> Optional.empty());
        assertEquals(
                0,
                read.remarks().stream().filter(Remark::stops).count(),
                read.remarks().toString());
        assertEquals("pen-case", read.template().orElseThrow().declaration().id());
        assertTrue(terminal.out.contains("--follow"), terminal.out);
    }

    @Test
    void aTemplateHasANameOfItsOwn() throws Exception {
        assertEquals(2, terminal.run("new", "template"));
        assertTrue(terminal.err.contains("What is it called?"), terminal.err);
        assertEquals(2, terminal.run("new", "template", "Pen Case"));
        assertTrue(terminal.err.contains("cannot be called “Pen Case”"), terminal.err);
        assertEquals(2, terminal.run("new", "template", folder.resolve("tray").toString()));
        assertTrue(terminal.err.contains("“tray” is a calculator or template already"), terminal.err);
        Files.createDirectory(folder.resolve("there"));
        assertEquals(2, terminal.run("new", "template", folder.resolve("there").toString()));
        assertTrue(terminal.err.contains("is there already"), terminal.err);
    }
}
