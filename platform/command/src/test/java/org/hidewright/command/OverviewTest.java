package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.when;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.command.kit.Strap;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.packet.PacketTrouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OverviewTest {
    private static final List<String> COMMANDS = List.of(
            "window",
            "make",
            "search",
            "work",
            "explain",
            "find",
            "outlines",
            "workshop",
            "keep",
            "put-away",
            "new",
            "addons");

    private final Terminal terminal = new Terminal(new Strap());

    /** As it is asked after a command, and in the language that is asked for. */
    @Test
    void helpOfACommandIsThatOfTheCommand() {
        assertEquals(0, terminal.run("new", "--help"));
        String help = terminal.out;
        assertTrue(help.contains("--presets"), help);
        assertEquals(0, terminal.run("help", "new"));
        assertEquals(help, terminal.out);
        assertEquals(2, terminal.run("help", "nwe"));
        assertTrue(terminal.err.contains("new"), terminal.err);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h", "help"})
    void aloneOrAskedForHelpItSaysWhatCanBeDone(String argument) {
        assertEquals(0, terminal.run(argument, "--language=en"));
        for (String said : List.of(
                "  hidewright make PROJECT [--into FOLDER] [--workshop FILE]\n",
                "  hidewright work ID",
                "  hidewright explain",
                "  kit-strap  Cuts a strap for the field kit.\n",
                "Each command explains itself with --help;")) {
            assertTrue(terminal.out.contains(said), terminal.out);
        }
        assertEquals("", terminal.err);
        assertEquals(0, terminal.run());
        assertTrue(terminal.out.contains("kit-strap"));
    }

    @Test
    void theVersionIsSaid() {
        assertEquals(0, terminal.run("--version"));
        assertEquals("Hidewright 1.2.3\n", terminal.out);
    }

    @Test
    void exitCodesAreSaidWithEveryHelp() {
        String said = "Exit codes: 0 all answered; 1 something was refused or has no answer; 2 the command or a";
        for (String command : List.of("help", "make --help", "work --help", "explain --help")) {
            terminal.run((command + " --language=en").split(" "));
            assertTrue(terminal.out.contains(said), terminal.out);
        }
    }

    @Test
    void aLanguageMayBeNamedBeforeTheCommandOrAlone() {
        for (String arguments : List.of("--language en-XA", "--language=en-XA", "--language=en-XA --help")) {
            assertEquals(0, terminal.run(arguments.split(" ")), terminal.err);
            assertTrue(terminal.out.contains("[Hidewright wörkš öût"), terminal.out);
        }
        assertEquals(0, terminal.run("--language", "en-XA", "--units=in", "explain"));
        assertTrue(terminal.out.startsWith("[Çàlçûlàtörš"), terminal.out);
        assertEquals(2, terminal.run("--language=en-XA", "mkae"));
        assertTrue(terminal.err.startsWith("[Théré îš ñö çömmàñd"), terminal.err);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de_DE", "english", "e", "", "xx", "de-", "12"})
    void whatIsNoLanguageIsTwoAndSaysWhatOneLooksLike(String tag) {
        for (String[] arguments :
                List.of(new String[] {"--language", tag}, new String[] {"explain", "--language=" + tag})) {
            assertEquals(2, terminal.run(arguments));
            assertTrue(
                    terminal.err.startsWith("“" + tag + "” is no language. Write its tag") && terminal.out.isEmpty(),
                    terminal.err);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--colour|There is no option --colour. There are: --",
                "--verzion|There is no option --verzion; perhaps --version is meant.",
                "--units|--units wants something after it: mm",
                "make --inot out x.json|There is no option --inot; perhaps --into is meant.",
                "make x.json --into|--into wants something after it: FOLDER.",
                "make x.json --into --paper=A4|--into wants something after it: FOLDER.",
                "make x.json --into=a --into=b|--into is given twice. Leave one of them out.",
                "make x.json y.json|“y.json” is left over.",
                "make|There is something missing: PROJECT.",
                "work|There is something missing: ID.",
                "work kit-strap --json=maybe|--json stands alone",
            })
    void argumentsThatDoNotFitAreToldInOurOwnWords(String arguments, String said) {
        List<String> all = new ArrayList<>(List.of("--language=en"));
        all.addAll(List.of(arguments.split(" ")));
        assertEquals(2, terminal.run(all.toArray(String[]::new)));
        assertTrue(terminal.err.startsWith(said), terminal.err);
        assertEquals("", terminal.out);
    }

    @Test
    void withoutCalculatorsProjectsStillOpen() {
        Terminal empty = new Terminal();
        assertEquals(0, empty.run("help", "--language=en"));
        assertTrue(empty.out.contains("No calculator is installed. Projects still open"), empty.out);
    }

    @Test
    void whenAllIsTurnedOffItSaysHowToTurnItOn() {
        Terminal off = new Terminal();
        when(off.addOns.all())
                .thenReturn(List.of(
                        new AddOn(
                                "org.example.nets",
                                "Nets",
                                "",
                                "1.0.0",
                                AddOn.Origin.MAKER,
                                AddOn.State.OFF,
                                "",
                                List.of("net"),
                                List.of(),
                                Path.of("nets.jar")),
                        new AddOn(
                                "org.example.torn",
                                "Torn",
                                "",
                                "1.0.0",
                                AddOn.Origin.MAKER,
                                AddOn.State.FAILED,
                                "it is torn",
                                List.of(),
                                List.of(),
                                Path.of("torn.jar"))));
        assertEquals(0, off.run("explain", "--language=en"));
        assertEquals(
                "No calculator is turned on; these bundles are off: org.example.nets. Turn one on: hidewright addons on NAME."
                        + " Projects still open and keep everything in them.\n",
                off.out);
    }

    @Test
    void aMisspeltCommandIsTwoWithTheNearest() {
        assertEquals(2, terminal.run("mkae", "x", "--language=en"));
        assertTrue(terminal.err.contains("There is no command “mkae”; perhaps “make” is meant."), terminal.err);
        assertEquals(2, terminal.run("kit-strap", "thickness=2", "--language=en"));
        assertTrue(
                terminal.err.startsWith("“kit-strap” is a calculator. Write hidewright work kit-strap"), terminal.err);
        assertEquals(2, terminal.run("telephone", "--language=en"));
        assertTrue(terminal.err.contains("There are: " + String.join(", ", COMMANDS) + "."), terminal.err);
    }

    private static List<String> commands() {
        return COMMANDS;
    }

    @ParameterizedTest
    @MethodSource("commands")
    void eachCommandExplainsItself(String command) {
        assertEquals(0, terminal.run(command, "--help", "--language=en"));
        assertTrue(
                terminal.out.contains("hidewright " + command)
                        && terminal.out.contains("Example: hidewright " + command),
                terminal.out);
        assertTrue(terminal.out.contains("--units=mm|in") && terminal.out.contains("--language=TAG"), terminal.out);
    }

    @Test
    void inThePseudoLanguageHelpAndTroubleAreStrange() {
        terminal.run("help", "--language", "en-XA");
        for (String line : terminal.out.lines().filter(line -> !line.isBlank()).toList()) {
            assertTrue(line.contains("ë") && line.contains("["), line);
        }
        for (String usage : List.of(
                "  [hidewright make PROJECT [--into FOLDER] [--workshop FILE] ë",
                "  [hidewright addons [install FILE|FOLDER…|NAME… --from FOLDER | check FILE|FOLDER… | ",
                "[Éàçh çömmàñd éxplàîñš îtšélf wîth --help; --version šàýš")) {
            assertTrue(terminal.out.contains(usage), terminal.out);
        }
        terminal.run("mkae", "--language=en-XA");
        assertTrue(terminal.err.startsWith("[Théré îš ñö çömmàñd"), terminal.err);
        terminal.run("make", "nowhere.json", "--language=en-XA");
        assertTrue(terminal.err.contains(": [Théré îš ñö fîlé nowhere.json"), terminal.err);
    }

    @Test
    void everyTextIsAPatternAndEveryOneAskedForIsThere() throws Exception {
        Properties texts = new Properties();
        try (Reader reader = new InputStreamReader(
                CommandLineRun.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            texts.load(reader);
        }
        texts.forEach((key, text) -> assertFalse(
                String.valueOf(text).replaceAll("'[{}]'", "").contains("'"), key + ": use ’ for an apostrophe"));
        TreeSet<String> asked = new TreeSet<>();
        for (String command : COMMANDS) {
            asked.addAll(List.of(command + ".about", command + ".usage", command + ".example"));
        }
        Stream.of(PacketTrouble.Kind.values()).forEach(kind -> asked.add("trouble." + kind.key()));
        Pattern use = Pattern.compile("(?:texts(?:\\(\\))?\\s*\\.text|head)\\(\\s*\"([a-z0-9.-]*[a-z0-9])\"");
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher matcher = use.matcher(Files.readString(file));
                while (matcher.find()) {
                    asked.add(matcher.group(1));
                }
            }
        }
        assertEquals(asked, new TreeSet<>(texts.stringPropertyNames()));
    }
}
