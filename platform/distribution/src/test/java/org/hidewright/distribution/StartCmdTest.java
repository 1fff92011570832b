package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The script that starts a bundle on Windows. It cannot be run here: it is held to the rules by which cmd.exe reads it (Microsoft's
 * pages of its commands, from memory), and to what the script of the shell hands over and says.
 */
class StartCmdTest {
    private static final Path CONTRACT = Path.of("src/main/program/contract");
    private static final Pattern NAME = Pattern.compile("%(\\w+)(?::[^%]*)?%");
    /** Names that Windows gives a value. */
    private static final Set<String> GIVEN = Set.of("cd", "errorlevel");

    private String text;
    private List<String> lines;

    @BeforeEach
    void read() throws IOException {
        text = Files.readString(CONTRACT.resolve("start.cmd"), StandardCharsets.US_ASCII);
        lines = text.lines().filter(line -> !line.startsWith("rem ")).toList();
    }

    @Test
    void itHandsMavenWhatTheScriptOfTheShellDoes() throws Exception {
        Set<String> cmd = options(String.join("\n", lines));
        assertTrue(cmd.size() >= 10, cmd.toString());
        assertEquals(options(Files.readString(CONTRACT.resolve("start"))), cmd);
    }

    /** Names of what is handed over, and what it is where that is fixed. */
    private static Set<String> options(String script) {
        return all("-D(\\w+)=([\\w.-]*)(?=\\s)|-D(\\w+)=|maven-archetype-plugin:\\S+", script)
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<MatchResult> all(String pattern, String in) {
        return Pattern.compile(pattern, Pattern.MULTILINE).matcher(in).results();
    }

    /** PowerShell, which only the one needs, aside. */
    @Test
    void itRefusesWithTheSameWordsAndNumbers() throws Exception {
        Map<String, String> shell = new TreeMap<>();
        all("echo \"start: (.*)\" >&2\\s+exit (\\d+)", Files.readString(CONTRACT.resolve("start")))
                .forEach(said -> shell.put(plain(said.group(1)), said.group(2)));
        Map<String, String> cmd = new TreeMap<>();
        all("^echo start: (.*)>&2\\R^exit /b (\\d+)", text)
                .filter(said -> !said.group(1).startsWith("PowerShell"))
                .forEach(said -> cmd.put(plain(said.group(1)), said.group(2)));
        assertEquals(9, shell.size(), shell.toString());
        assertEquals(shell, cmd);
    }

    /** The same words of Java and names of what is made are kept back. */
    @Test
    void itKeepsBackTheSameNames() throws Exception {
        Set<String> shell = all("'(\\w+(?:\\|\\w+){9,})'", Files.readString(CONTRACT.resolve("start")))
                .map(list -> list.group(1))
                .collect(Collectors.toSet());
        assertEquals(2, shell.size());
        assertEquals(
                shell,
                all("set \"words=(.*)\"", text)
                        .map(list -> list.group(1).strip())
                        .collect(Collectors.toSet()));
    }

    private static String plain(String said) {
        return said.replaceAll("%(\\w+)%", "\\$$1")
                .replace("$package.$id", "$folder")
                .replace("start.cmd", "start")
                .replaceAll("[“”]", "\"");
    }

    /** Of the code page of the console, and each with both marks of an end, or labels are missed. */
    @Test
    void itsTextIsPlain() {
        assertFalse(text.replace("\r\n", "").matches("(?s).*[\r\n].*"), "a line does not end as Windows has it");
        assertTrue(text.chars().allMatch(letter -> letter < 127), "not in each code page");
        lines.forEach(line -> assertEquals(line.stripTrailing(), line, "a blank behind a ^ or a value counts"));
        lines.forEach(line -> assertEquals(0, line.chars().filter(c -> c == '"').count() % 2, line));
    }

    /** A bracket in the name of a folder, as in Program Files (x86), would end a block in which the name stands. */
    @Test
    void namesStandInNoBlock() {
        assertFalse(lines.stream().anyMatch(line -> line.endsWith("(")), "a block");
        assertTrue(
                lines.stream().anyMatch("setlocal EnableExtensions DisableDelayedExpansion"::equals),
                "or an exclamation mark in the name of a folder is lost");
        assertFalse(text.toLowerCase(Locale.ROOT).contains("shift"), "an option is parted at its = there");
        assertFalse(text.matches("(?s).*%~?[4-9].*"), "what is behind the third is taken from the whole line");
    }

    @Test
    void pathsStandInQuotesAndDoNotEndInABackslash() {
        for (String line : lines) {
            for (String path : List.of("%here", "%cd")) {
                for (int at = line.indexOf(path); at >= 0; at = line.indexOf(path, at + 1)) {
                    long quotes =
                            line.substring(0, at).chars().filter(c -> c == '"').count();
                    assertEquals(1, quotes % 2, line);
                }
            }
            // a backslash before a quote takes it from Maven: C:\ is a folder too
            assertFalse(line.contains("\\\"") || line.contains("%cd%\""), line);
        }
    }

    @Test
    void everyNameHasAValueAndEveryLabelIsGoneTo() {
        Set<String> known = new HashSet<>(GIVEN);
        for (String line : lines) {
            NAME.matcher(line).results().forEach(name -> assertTrue(known.contains(name.group(1)), line));
            all("set \"?(\\w+)=|!(\\w+)!", line).forEach(set -> known.add(set.group(1)));
        }
        Set<String> labels = labels("^:(\\w+)$");
        assertTrue(labels.size() > 7, labels.toString());
        assertEquals(labels, labels("goto (\\w+)$"));
    }

    private Set<String> labels(String pattern) {
        return lines.stream()
                .flatMap(line -> all(pattern, line))
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** What comes after an end is gone to by a label alone; a number of Maven's may be below nothing. */
    @Test
    void itEndsEachWayWithANumber() {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(":")) {
                assertTrue(lines.get(i - 1).matches("exit /b \\d+"), lines.get(i));
                assertTrue(lines.get(i + 1).startsWith("echo start: ")
                        && lines.get(i + 1).endsWith(">&2"));
                assertTrue(lines.get(i + 2).matches("exit /b [1-9]\\d*"), lines.get(i + 2));
            }
            assertFalse(lines.get(i).matches(".*\\d>&2"), "the digit is taken for a stream");
        }
        int maven = lines.indexOf("if not \"%errorlevel%\"==\"0\" goto failed");
        assertTrue(maven > 0 && lines.get(maven - 1).endsWith(" %more%"));
        assertTrue(text.contains("\r\ncall mvn "), "without call it would not come back");
    }
}
