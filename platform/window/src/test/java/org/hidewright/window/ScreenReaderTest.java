package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a screen reader gets of the window, read over the bus it reads itself: AT-SPI 2, in every state (WCAG 2.2, success
 * criteria 1.1.1, 1.3.1, 3.3.2 and 4.1.2).
 */
@EnabledOnOs(OS.LINUX)
class ScreenReaderTest {
    private static final long PATIENCE_S = 300;
    /** What only holds others, or is read by what stands in it. */
    private static final List<String> UNNAMED = List.of("frame", "filler", "panel", "scroll pane", "table cell");

    @TempDir
    static Path folder;

    private static final List<Heard> HEARD = new ArrayList<>();

    /** A thing of the tree in a state of the window. */
    private record Heard(String state, String role, String name, String about, List<String> states) {
        static Heard of(String line) {
            String[] parts = line.split("\t", -1);
            return new Heard(parts[0], parts[2], parts[3], parts[4], Arrays.asList(parts[5].split(" ")));
        }

        boolean isReached() {
            return states.contains("focusable") && states.contains("showing") && states.contains("enabled");
        }
    }

    @BeforeAll
    static void listen() throws Exception {
        Path reader = folder.resolve("tree.py");
        Files.copy(ScreenReaderTest.class.getResourceAsStream("tree.py"), reader);
        Path out = folder.resolve("heard.txt");
        ProcessBuilder program = new ProcessBuilder(
                "dbus-run-session",
                "--",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Duser.language=en",
                ReadAloud.class.getName(),
                folder.toString(),
                reader.toString(),
                out.toString());
        program.environment().remove("NO_AT_BRIDGE");
        Path said = folder.resolve("said.txt");
        Process running =
                program.redirectErrorStream(true).redirectOutput(said.toFile()).start();
        boolean ended = running.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        running.descendants().forEach(ProcessHandle::destroy);
        running.destroy();
        assertTrue(ended && Files.exists(out), () -> {
            try {
                return Files.readString(said);
            } catch (java.io.IOException e) {
                return e.toString();
            }
        });
        Files.readAllLines(out).forEach(line -> HEARD.add(Heard.of(line)));
    }

    private static boolean hears(String state, Predicate<Heard> so) {
        return HEARD.stream().filter(one -> one.state().equals(state)).anyMatch(so);
    }

    @Test
    void whateverTakesTheFocusHasAName() {
        Set<String> faults = new LinkedHashSet<>();
        int reached = 0;
        for (Heard one : HEARD) {
            if (one.isReached() && !UNNAMED.contains(one.role())) {
                reached++;
                if (one.name().isBlank()) {
                    faults.add(one.toString());
                }
            }
        }
        assertTrue(HEARD.stream().map(Heard::state).distinct().count() >= 17, "states");
        assertTrue(reached > 300, reached + " reached of " + HEARD.size());
        assertEquals("", String.join("\n", faults));
    }

    @Test
    void aQuestionIsCalledByItsLabelAndSaysItsLimitsAndHowItWasUnderstood() {
        assertTrue(hears(
                "project",
                one -> one.role().equals("text")
                        && one.name().equals("Round")
                        && one.about().contains("50-300 mm")
                        && one.states().contains("labelled-by")));
        assertTrue(
                hears(
                        "project",
                        one -> one.name().equals("Round") && one.about().contains("“two”")),
                "what is refused says so");
        assertTrue(
                hears(
                        "project",
                        one -> one.name().equals("Width") && one.about().contains("Linked")),
                "what is linked says so");
    }

    @Test
    void answersAndDrawingsAreTold() {
        assertTrue(hears(
                "project", one -> one.name().contains("Length") && one.name().contains("150.8")));
        assertTrue(hears(
                "project",
                one -> one.name().matches("(?s).*Bag.*\\d\\hmm × .*\\d\\hmm.*")
                        && one.about().contains("to look at")));
    }

    @Test
    void howASlipStandsIsTold() {
        assertTrue(hears("project", one -> one.name().equals("Hem, Worked out")));
        assertTrue(hears("project", one -> one.name().startsWith("After it, Waits for")));
    }

    @Test
    void whatFoldsSaysHowItStands() {
        assertTrue(hears(
                "project",
                one -> one.name().equals("Why? The working")
                        && one.about().equals("folded")
                        && one.role().equals("push button")));
        assertTrue(hears(
                "unfolded",
                one -> one.name().equals("Why? The working") && one.about().equals("open")));
    }

    @Test
    void whatIsHiddenIsNotRead() {
        assertTrue(hears("bundle-off", one -> one.name().startsWith("What is installed") && one.isReached()));
        assertFalse(
                hears("start", one -> one.name().equals("Show inches") && one.isReached()),
                "the line of a project is hidden where none is open");
    }
}
