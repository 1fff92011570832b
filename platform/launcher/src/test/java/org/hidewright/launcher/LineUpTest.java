package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LineUpTest {

    @TempDir
    Path folder;

    @BeforeEach
    void aProgramWithAnAddOn() throws IOException {
        AddOnJar.write(folder.resolve("program/bundles/30-platform/p.jar"), "p");
        AddOnJar.write(folder.resolve("program/bundles/40-calculators/c.jar"), "c");
        AddOnJar.write(folder.resolve("settings/addons/a.jar"), "a");
        Files.writeString(folder.resolve("settings/addons/torn.jar"), "no jar");
        Files.writeString(folder.resolve("settings/addons/notes.txt"), "no jar either");
    }

    private LineUp lineUp(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(0, List.of("--settings", folder.resolve("settings").toString()));
        return LineUp.of(new ProgramHome(folder.resolve("program").toFile()), all.toArray(String[]::new));
    }

    private void choose(String text) throws IOException {
        Files.writeString(folder.resolve("settings/addons.txt"), text);
    }

    private static String names(LineUp lineUp) {
        return String.join(
                " ",
                lineUp.files().stream().map(file -> file.level() + file.name()).toList());
    }

    private static Map<String, String> states(LineUp lineUp) {
        Map<String, String> states = new TreeMap<>();
        lineUp.states()
                .forEach((jar, state) -> states.put(Path.of(jar).getFileName().toString(), state));
        return states;
    }

    @Test
    void addOnsStartAfterWhatCameWithTheProgram() {
        assertEquals("30p.jar 40c.jar 50a.jar 50torn.jar", names(lineUp()));
        assertEquals(Map.of("c.jar", "on", "a.jar", "on", "torn.jar", "on"), states(lineUp()));
    }

    @Test
    void whatIsTurnedOffIsNotStarted() throws IOException {
        choose("# mine\noff a\noff c \r\n");
        assertEquals("30p.jar 50torn.jar", names(lineUp()));
        assertEquals(Map.of("c.jar", "off", "a.jar", "off", "torn.jar", "on"), states(lineUp()));
    }

    @Test
    void thePlatformItselfCannotBeTurnedOff() throws IOException {
        choose("off p\n");
        assertEquals("30p.jar 40c.jar 50a.jar 50torn.jar", names(lineUp()));
    }

    @Test
    void aLineThatSaysNothingTurnsNothingOffAndIsToldWithItsNumber() throws IOException {
        choose("# mine\noffice a\n\n off a\r\noff c\noff\n");
        LineUp lineUp = lineUp();
        assertEquals("30p.jar 50a.jar 50torn.jar", names(lineUp));
        String file = folder.resolve("settings/addons.txt").toString();
        String rest =
                " says nothing that can be understood, and is left as it is. Write off and the name of a bundle, or"
                        + " # before a remark.";
        assertEquals(
                List.of(
                        "In " + file + ", line 2" + rest,
                        "In " + file + ", line 4" + rest,
                        "In " + file + ", line 6" + rest),
                lineUp.told());
    }

    @Test
    void ofManySuchLinesTheFirstAreToldAndTheOthersCounted() throws IOException {
        choose("off a b\noff \u00e4\n\u0007\nx\ny\n");
        List<String> told = lineUp().told();
        assertEquals(4, told.size());
        assertTrue(told.get(3).endsWith("addons.txt, more lines of this kind: 2."), told.get(3));
        choose("off a\n#\n\n");
        assertEquals(List.of(), lineUp().told());
    }

    @Test
    void theProgramStartsWithoutAddOnsWhenItIsTold() throws IOException {
        choose("off a\n");
        assertEquals("30p.jar 40c.jar", names(lineUp("explain", "--without-addons")));
        assertEquals(Map.of("c.jar", "on", "a.jar", "off", "torn.jar", "left-out"), states(lineUp("--without-addons")));
        assertEquals("30p.jar 40c.jar 50torn.jar", names(lineUp("work", "--", "--without-addons")));
    }

    @Test
    void choicesThatCannotBeReadTurnNothingOffAndAreTold() throws IOException {
        Files.createDirectory(folder.resolve("settings/addons.txt"));
        LineUp lineUp = lineUp();
        assertEquals("30p.jar 40c.jar 50a.jar 50torn.jar", names(lineUp));
        assertEquals(1, lineUp.told().size());
        assertTrue(
                lineUp.told().get(0).contains("addons.txt cannot be read"),
                lineUp.told().get(0));
    }

    @Test
    void aFailureIsNotedForWhatCanBeTurnedOff() {
        LineUp lineUp = lineUp();
        lineUp.failed(lineUp.files().get(0), "The platform failed.");
        lineUp.failed(lineUp.files().get(2), "a failed.");
        assertEquals(Map.of("c.jar", "on", "a.jar", "a failed.", "torn.jar", "on"), states(lineUp));
    }
}
