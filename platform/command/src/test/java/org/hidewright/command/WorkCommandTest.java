package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.command.kit.Plate;
import org.hidewright.command.kit.PlateParts;
import org.hidewright.command.kit.Strap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkCommandTest {
    private static final String[] ENOUGH = {
        "thickness=2 mm", "core=flat-ring", "core.inside=20", "edge.bevel=1", "sections=[]"
    };

    private final Terminal terminal = new Terminal(new Strap());

    private JsonNode worked(int code, String... questions) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("work", "kit-strap", "--json", "--language", "en"));
        for (String enough : ENOUGH) {
            String start = enough.split("[.=]")[0];
            if (List.of(questions).stream().noneMatch(question -> question.startsWith(start))) {
                arguments.add(enough);
            }
        }
        arguments.addAll(List.of(questions));
        assertEquals(code, terminal.run(arguments.toArray(String[]::new)), terminal.out + terminal.err);
        return new ObjectMapper().readTree(terminal.out);
    }

    @Test
    void answersComeWithValueUnitAndSource() throws Exception {
        JsonNode tree = worked(0, "thickness=8 oz");
        assertEquals("worked", tree.get("state").asText());
        assertEquals(6.35, tree.at("/answers/cut/value").asDouble(), 1e-9);
        assertEquals("mm", tree.at("/answers/cut/unit").asText());
        assertEquals("common-practice", tree.at("/answers/cut/source/kind").asText());
        assertEquals("Habit of the bench", tree.at("/answers/cut/source/text").asText());
        assertEquals("Round a ring.", tree.at("/answers/said/value").asText());
        assertEquals("8 oz", tree.at("/questions/thickness/typed").asText());
        assertEquals("preset", tree.at("/questions/tannage/from").asText());
        assertEquals("", terminal.err);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "core=round-bar core.diameter=8",
                "core.diameter=8 core=round-bar",
                "core.is=round-bar core.diameter=8",
                "core.round-bar.diameter=8",
                "core.round-bar.diameter=8 core=round-bar",
                "core.is=round-bar core.round-bar.diameter=8",
                "core={\"round-bar\":{\"diameter\":8}}",
                "core={\"is\":\"round-bar\",\"round-bar\":{\"diameter\":\"8mm\"},\"flat-ring\":{}}",
            })
    void aVariantIsAnsweredByDotsOrJson(String arguments) throws Exception {
        JsonNode tree = worked(0, arguments.split(" "));
        assertEquals(
                8, tree.at("/questions/core/value/round-bar/diameter/value").asDouble(), terminal.out);
        assertEquals("Round a bar.", tree.at("/answers/said/value").asText());
        assertEquals(0, tree.get("notices").size(), terminal.out);
    }

    @Test
    void aTableIsAnsweredAsJsonOrFromAFile(@TempDir Path folder) throws Exception {
        String json = "[{\"id\": \"a\", \"run\": {\"length\": \"50 mm\"}}, {\"id\": \"b\", \"bend\": {}}]";
        Path file = folder.resolve("sections.json");
        Files.writeString(file, json + "\n");
        for (String sections : List.of(json, "@" + file)) {
            JsonNode tree = worked(0, "sections=" + sections);
            assertEquals(50, tree.at("/answers/rows/value/0/at/value").asDouble());
            assertEquals("b", tree.at("/answers/rows/value/1/id").asText());
        }
    }

    /** The example alone, or all that was printed: either is what a maker saves. */
    @Test
    void whatExplainPrintsRunsFromAFileAndWhatIsTypedGoesBeforeIt(@TempDir Path folder) throws Exception {
        assertEquals(0, terminal.run("explain", "kit-strap", "--json", "--language=en"));
        Path whole = folder.resolve("kit-strap.json");
        Files.writeString(whole, terminal.out);
        Path example = folder.resolve("example.json");
        Files.writeString(
                example,
                new ObjectMapper().readTree(terminal.out).get("example").toPrettyString());
        for (Path file : List.of(whole, example)) {
            assertEquals(0, terminal.run("work", "kit-strap", "@" + file, "--json"), terminal.out + terminal.err);
            assertEquals(
                    "typed",
                    new ObjectMapper()
                            .readTree(terminal.out)
                            .at("/questions/thickness/from")
                            .asText());
            assertTrue(terminal.out.contains("\"value\": 4.0"), terminal.out);
            assertEquals(0, terminal.run("work", "kit-strap", "thickness=3", "@" + file, "--json"), terminal.out);
            assertTrue(terminal.out.contains("\"value\": 6.0"), terminal.out);
        }
        Files.writeString(example, "[1]");
        assertEquals(2, terminal.run("work", "kit-strap", "@" + example, "--language=en"));
        assertTrue(terminal.err.contains("holds no questions. Write them as an object, for example {"), terminal.err);
        Files.writeString(example, "{\"thickness\" 3}");
        assertEquals(2, terminal.run("work", "kit-strap", "@" + example, "--language=en"));
        assertTrue(
                terminal.err.contains(example + "” cannot be read (line 1, column 14): a colon is missing before 3."),
                terminal.err);
    }

    @Test
    void aTypedTextIsKeptWhateverStandsInIt() throws Exception {
        assertEquals(
                "a=b \"c\" \\ é",
                worked(0, "note=a=b \"c\" \\ é").at("/questions/note/typed").asText());
        assertEquals(
                "1,5 mm",
                worked(0, "thickness=1,5 mm").at("/questions/thickness/typed").asText());
    }

    @Test
    void aRefusalIsOneAndSaysWhatWhyAndWhatNext() throws Exception {
        JsonNode tree = worked(1, "thickness=3 sheep");
        assertEquals("refused", tree.get("state").asText());
        JsonNode notice = tree.at("/notices/0");
        assertEquals("thickness", notice.get("question").asText());
        for (String part : List.of("what", "why", "next")) {
            assertFalse(notice.get(part).asText().isBlank());
        }
        assertFalse(notice.has("line"), "there is no file whose line could be told");
        assertEquals(
                "no-way", worked(1, "note=refuse").at("/notices/0/key").asText().replace("notice.", ""));
    }

    @Test
    void inWordsAnAnswerHasItsLabelAndItsSource() {
        List<String> arguments = new ArrayList<>(List.of("work", "kit-strap", "--language=en"));
        arguments.addAll(List.of(ENOUGH));
        arguments.set(arguments.indexOf("sections=[]"), "sections=[{\"run\":{\"length\":\"5 cm\"}}]");
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)), terminal.err);
        assertTrue(terminal.out.startsWith("Kit strap\n  Cut length  4.0\u00A0mm\n"), terminal.out);
        assertTrue(terminal.out.contains("row 1  50.0\u00A0mm"), terminal.out);
        assertTrue(terminal.out.endsWith("Common practice: Habit of the bench\n"), terminal.out);
        arguments.add("--units=in");
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)));
        assertTrue(terminal.out.contains("Cut length  0.158\u00A0in\n"), "11/64 in is another size: " + terminal.out);
        arguments.set(arguments.indexOf("thickness=2 mm"), "thickness=1/8 in");
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)));
        assertTrue(terminal.out.contains("Cut length  0.250\u00A0in  (1/4 in)"), terminal.out);
        arguments.set(arguments.indexOf("thickness=1/8 in"), "thickness=2 mm");
        arguments.set(2, "--language=de");
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)));
        assertTrue(terminal.out.contains("0,158\u00A0in"), terminal.out);
    }

    /** What is asked for in inches is typed in inches; JSON and files keep the unit of the question. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "core.inside=2, 50.8",
        "core.inside=2 mm, 2",
        "core.inside=1 1/2, 38.1",
        "core.flat-ring.inside=2, 50.8",
        "core as JSON, 20",
    })
    void whoeverAsksForInchesTypesInches(String typed, double inside) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("work", "kit-strap", "--json", "--units", "in"));
        arguments.addAll(List.of("thickness=2 mm", "edge.bevel=1 mm", "sections=[]"));
        if (typed.equals("core as JSON")) {
            arguments.add("core={\"is\":\"flat-ring\",\"flat-ring\":{\"inside\":\"20\"}}");
        } else {
            arguments.addAll(List.of("core=flat-ring", typed));
        }
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)), terminal.out + terminal.err);
        JsonNode read = new ObjectMapper().readTree(terminal.out).at("/questions/core/value/flat-ring/inside/value");
        assertEquals(inside, read.asDouble(), 1e-9, terminal.out);
    }

    private String inWords(String... more) {
        List<String> arguments = new ArrayList<>(List.of("work", "kit-strap", "--language=en"));
        for (String enough : ENOUGH) {
            String start = enough.split("[.=]")[0];
            if (List.of(more).stream().noneMatch(question -> question.startsWith(start))) {
                arguments.add(enough);
            }
        }
        arguments.addAll(List.of(more));
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)), terminal.out + terminal.err);
        return terminal.out.replace('\u00A0', ' ');
    }

    @Test
    void whatWasNotTypedIsShownWithItsValueAndWhoPresetsIt() {
        assertTrue(
                inWords("core=round-bar", "core.diameter=6", "sections=[{\"id\": \"tip\", \"bend\": {}}]")
                        .contains("\nNot typed, so taken as kit-strap presets it (bundle org.example.kit):\n"
                                + "  tannage                  Tannage      Vegetable    preset\n"
                                + "  core.round-bar.turns     Turns        1            preset\n"
                                + "  edge.burnished           Burnished    yes          preset\n"
                                + "  sections[tip].bend.turn  Turn         180 deg      preset\n"
                                + "  end                      End          Blunt        preset\n"
                                + "  end.blunt.allowance      Allowance    0 mm         preset\n"
                                + "  start                    Start        Folded over  preset\n"
                                + "  start.folded.over        Folded over  12 mm        preset\n"
                                + "  keeper                   Keeper       1 row        preset\n"
                                + "  keeper[a].bend.turn      Turn         180 deg      preset\n"
                                + "  marks                    Marks        3 mm; 4 mm   preset\n"),
                terminal.out);
        assertFalse(inWords("tannage=chrome").contains("  tannage "), terminal.out);
    }

    @Test
    void theWorkingIsShownWhenAskedFor() {
        assertTrue(
                inWords("--working").contains("\nWorking\n  Twice the leather:  L = 2 · t\n      = 2 · 2 mm = 4 mm\n"),
                terminal.out);
        assertFalse(inWords().contains("Working"), terminal.out);
    }

    @Test
    void inWordsACheckIsToldWithItsQuestion() {
        List<String> arguments = new ArrayList<>(List.of("work", "kit-strap", "--language=en"));
        arguments.addAll(List.of(ENOUGH));
        arguments.set(3, "thickness=6 mm");
        assertEquals(0, terminal.run(arguments.toArray(String[]::new)), terminal.err);
        assertTrue(
                terminal.out.contains(
                        "Check (question “thickness”): 6\u00A0mm is thick.\n    It will not fold.\n    Skive it.\n"),
                terminal.out);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "kit-strip|perhaps “kit-strap” is meant",
                "weather|No calculator called “weather” is installed",
                "kit-strap thickness|“thickness” is no key=value",
                "kit-strap =2|“=2” is no key=value",
                "kit-strap thickness=1 thickness=2|“thickness” is answered twice",
                "kit-strap core=a core=b|“core” is answered twice",
                "kit-strap core={} core.x=1|“core.x” is answered twice",
                "kit-strap core.is=a core.is=b|“core.is” is answered twice",
                "kit-strap core..x=1|“core..x=1” is no key=value",
                "kit-strap .x=1|“.x=1” is no key=value",
                "kit-strap x.=1|“x.=1” is no key=value",
                "kit-strap sections=[1,|What is given for “sections” cannot be read (line 1, column 4): it ends before the bracket opened in line 1 is",
                "kit-strap @nowhere.json|There is no file nowhere.json",
                "kit-strap @a.json @b.json|@b.json is a second",
                "kit-strap sections=@nowhere.json|There is no file nowhere.json",
                "kit-strap sections=@.|. is a folder",
                "kit-strap --units=furlong|not in “furlong”",
                "kit-strap --weather=fine|--weather",
                "|work --help",
            })
    void whatIsNotUnderstoodIsTwoAndSaysWhatWouldBe(String arguments, String said) {
        String line = "work " + (arguments == null ? "" : arguments + " ") + "--language=en";
        assertEquals(2, terminal.run(line.split(" ")), terminal.out);
        assertTrue(terminal.err.contains(said), terminal.err);
        assertEquals("", terminal.out);
    }

    @Test
    void aFileThatIsNoTextIsTold(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("note.json");
        Files.write(file, "\"Käfer\"".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(2, terminal.run("work", "kit-strap", "note=@" + file, "--language=en"));
        assertTrue(terminal.err.contains("is no text in UTF-8"), terminal.err);
    }

    /** A link is all that answers it, and a command line has no other slip. */
    @Test
    void whatWorksOnAnItemIsSentToAProjectAtOnce(@TempDir Path folder) throws Exception {
        Terminal shop = new Terminal(new PlateParts(), new Plate());
        assertEquals(0, shop.run("explain", "kit-plate-parts", "--json"));
        Path example = folder.resolve("example.json");
        Files.writeString(example, shop.out);
        assertEquals(2, shop.run("work", "kit-plate-parts", "@" + example, "--language=en"));
        assertTrue(shop.err.contains("works on an item, which another slip of a project answers"), shop.err);
        assertEquals(0, shop.run("explain", "kit-plate-parts", "--language=en"));
        assertTrue(shop.out.contains("the example goes into a project"), shop.out);
        assertFalse(shop.out.contains("@file runs it"), shop.out);
        assertEquals(0, shop.run("explain", "kit-plate", "--language=en"));
        assertTrue(shop.out.contains("hidewright work kit-plate @file runs it"), "asks no item: " + shop.out);
    }
}
