package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.hidewright.core.addons.AddOn.State;
import org.junit.jupiter.api.Test;

/** Removing, turning on and off, and names that are not there. */
class RemovedAndTurnedTest extends MakersSettings {
    @Test
    void whatIsInstalledIsRemovedByItsNameOrItsFile() throws Exception {
        there("n.jar", "on", Jar.bundle("nets"));
        there("m.jar", "on", Jar.bundle("mats"));
        there("k.jar", "on", Jar.bundle("kits"));
        states.put(Files.writeString(jars.resolve("torn.jar"), "torn").toString(), "torn.jar was not started.");
        assertEquals("nets", addOns().remove("nets").id());
        assertEquals("mats", addOns().remove("m.jar").id());
        assertEquals("kits", addOns().remove("k").id());
        assertEquals("torn.jar", addOns().remove("torn").name());
        assertEquals(List.of(), installedFiles());
        assertFalse(Files.exists(settings.resolve("addons.txt")));
    }

    @Test
    void whatIsRemovedIsNotOffWhenItComesAgain() throws Exception {
        there("nets.jar", "off", Jar.bundle("nets"));
        Files.writeString(settings.resolve("addons.txt"), "off nets\noff straps\n");
        addOns().remove("nets");
        assertEquals("off straps\n", choices());
    }

    @Test
    void whatCameWithTheProgramIsNotRemovedUnlessTheMakerHasACopyOfTheName() throws Exception {
        assertEquals(
                "straps came with the program and cannot be removed. Turn it off: hidewright addons off straps",
                told(() -> addOns().remove("straps")));
        assertTrue(Files.exists(folder.resolve("program/s.jar")));
        there("copy.jar", "copy.jar was not started.", Jar.bundle("straps"));
        assertEquals(jars.resolve("copy.jar"), addOns().remove("straps").file());
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void aFileThatIsGoneAlreadyIsTold() throws Exception {
        Files.delete(there("nets.jar", "on", Jar.bundle("nets")));
        assertTrue(
                told(() -> addOns().remove("nets.jar")).startsWith("settings/addons/nets.jar could not be changed: "));
    }

    @Test
    void aChoiceIsALineAndOtherLinesStay() throws Exception {
        assertEquals(State.ON, addOns().turn("straps", false).state());
        assertEquals(
                "# Bundles that are turned off. Changed by: hidewright addons off|on NAME\noff straps\n", choices());
        Files.writeString(settings.resolve("addons.txt"), "# mine\r\noffice\noff straps \noff strapsack\n");
        addOns().turn("straps", true);
        assertEquals("# mine\r\noffice\noff strapsack\n", choices());
        addOns().turn("s.jar", false);
        addOns().turn("straps", false);
        assertEquals("# mine\r\noffice\noff strapsack\noff straps\n", choices());
    }

    @Test
    void aChoiceThatChangesNothingWritesNothing() throws Exception {
        addOns().turn("straps", true);
        assertFalse(Files.exists(settings.resolve("addons.txt")));
        byte[] latin = {'o', 'f', 'f', ' ', (byte) 0xE9, '\n', 'x'};
        Files.createDirectories(settings);
        Files.write(settings.resolve("addons.txt"), latin);
        addOns().turn("straps", true);
        assertArrayEquals(latin, Files.readAllBytes(settings.resolve("addons.txt")));
        addOns().turn("straps", false);
        byte[] after = Files.readAllBytes(settings.resolve("addons.txt"));
        assertArrayEquals(latin, Arrays.copyOf(after, latin.length));
    }

    @Test
    void aChoiceThatCannotBeWrittenIsTold() throws Exception {
        Files.createDirectories(settings.resolve("addons.txt"));
        assertTrue(told(() -> addOns().turn("straps", false)).startsWith("settings/addons.txt could not be changed: "));
    }

    @Test
    void whatHasNoNameCannotBeTurnedOffButRemoved() throws Exception {
        Files.createDirectories(jars);
        states.put(Files.writeString(jars.resolve("torn.jar"), "torn").toString(), "torn.jar was not started.");
        assertEquals(
                "torn.jar cannot be turned on or off: it has no bundle’s name to know it by. Take it away: hidewright"
                        + " addons remove torn.jar",
                told(() -> addOns().turn("torn.jar", false)));
    }

    @Test
    void namesThatAreNotThereAreToldWithTheNearest() throws Exception {
        assertEquals(
                "There is no bundle “strabs” here; perhaps straps is meant. hidewright addons lists them all.",
                told(() -> addOns().turn("strabs", false)));
        there("nets.jar", "on", Jar.bundle("nets"));
        assertEquals(
                "There is no bundle “telephone” here. There are: straps, nets. hidewright addons says more about each.",
                told(() -> addOns().remove("telephone")));
        assertEquals(
                "command is a part of the program itself. hidewright addons lists what can be turned off.",
                told(() -> addOns().turn("command", false)));
        states.clear();
        assertEquals(
                "There is no bundle “straps” here, and no other that could be turned on or off. hidewright addons"
                        + " install FILE installs one.",
                told(() -> addOns().turn("straps", false)));
    }

    @Test
    void whatWaitsMayStartOnceItIsTurnedOn() throws Exception {
        Path nets = there("nets.jar", "waiting", Jar.bundle("nets"));
        assertEquals(State.WAITING, addOns().turn("nets", false).state());
        assertFalse(Files.exists(settings.resolve("addons-agreed.txt")));
        assertEquals(State.WAITING, addOns().turn("nets", true).state());
        assertTrue(Files.readString(settings.resolve("addons-agreed.txt"))
                .endsWith("\n" + Sha256.of(Files.readAllBytes(nets)) + " nets\n"));
    }
}
