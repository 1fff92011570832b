package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyBoolean;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Add-ons are installed, removed, turned on and off by commands, and what fits no command is told. */
class AddOnsInstallTest extends AddOnsRun {
    @Test
    void installingSaysWhatABundleMayDoAndHowToTakeItAwayAgain() throws Exception {
        when(terminal.addOns.install(List.of(Path.of("a.jar"), Path.of("more")), true, false))
                .thenReturn(List.of(
                        addOn("belts", Origin.MAKER, State.NEXT_START, "belt"),
                        addOn("nets", Origin.MAKER, State.OFF)));
        assertEquals(ExitCode.DONE, run("install", "a.jar", "more", "--replace"));
        assertTrue(
                terminal.out.startsWith("A bundle is code with full rights: on this computer it may do"), terminal.out);
        assertTrue(
                terminal.out.contains("\nbelts 1.2.3, installed: starts with the next command\n    Belt Pack\n"
                        + "    calculators: belt\nnets 1.2.3, installed: turned off\n"),
                terminal.out);
        assertTrue(terminal.out.contains("hidewright addons remove belts takes it away again"), terminal.out);
        when(terminal.addOns.all()).thenReturn(List.of(addOn("nets", Origin.MAKER, State.OFF)));
        run("install", "a.jar", "more", "--replace");
        String here = "nets 1.2.3 is here already, exactly so, and nothing was changed: turned off\n";
        assertTrue(terminal.out.contains("\n" + here), terminal.out);
        when(terminal.addOns.install(List.of(Path.of("nets.jar")), false, false))
                .thenReturn(List.of(addOn("nets", Origin.MAKER, State.OFF)));
        run("install", "nets.jar");
        assertEquals(here, terminal.out, "what it may do and how it is taken away was said when it came");
    }

    /** Which keeps it is the same whichever was installed first. */
    @Test
    void twoWithOneCalculatorAreToldAsTheyAreInstalledAndAsOneOfThemGoes() throws Exception {
        AddOn mats = addOn("mats", Origin.MAKER, State.ON, "mat");
        AddOn nets = addOn("nets", Origin.MAKER, State.NEXT_START, "mat", "net");
        when(terminal.addOns.all()).thenReturn(List.of(mats));
        when(terminal.addOns.install(any(), anyBoolean(), anyBoolean())).thenReturn(List.of(nets));
        run("install", "nets.jar");
        assertTrue(terminal.out.contains("Bundle nets brings another calculator called “mat”."), terminal.out);
        assertTrue(terminal.out.contains("the one of mats is used"), terminal.out);
        when(terminal.addOns.all()).thenReturn(List.of(addOn("straps", Origin.PROGRAM, State.ON, "net"), mats));
        run("install", "nets.jar");
        assertTrue(terminal.out.contains("the one of straps is used"), terminal.out);
        AddOnIndexes indexes = indexes();
        when(terminal.addOns.all()).thenReturn(List.of(mats));
        when(indexes.install(Path.of("shelf"), List.of("belts"), false))
                .thenReturn(new AddOnChange(
                        List.of(new Moved("belts", "", "1.0.0", List.of("mat"), false)), List.of(), List.of(), true));
        run("install", "belts", "--from", "shelf");
        assertTrue(terminal.out.contains("Bundle mats brings another calculator called “mat”."), terminal.out);
        when(terminal.addOns.all()).thenReturn(List.of(mats, nets));
        when(terminal.addOns.remove("nets")).thenReturn(nets);
        run("remove", "nets");
        assertEquals("""
                nets 1.2.3 was removed.
                Slips of mat are worked by mats from then on, which brings a calculator of that name too.
                Slips of net are kept as they are in their projects, and are worked again when it is back.
                """, terminal.out);
    }

    @Test
    void textsAloneAreToldAsSuchAndTheFolderThatIsFollowedIsListed() throws Exception {
        AddOn roll = new AddOn(
                "roll",
                "roll",
                "",
                "1.0.0",
                Origin.MAKER,
                State.ON,
                "",
                List.of("roll"),
                List.of(),
                List.of("parts"),
                false,
                "/bench/roll",
                Path.of("roll.jar"),
                Map.of());
        when(terminal.addOns.install(any(), anyBoolean(), anyBoolean())).thenReturn(List.of(roll));
        run("install", "roll.jar");
        assertTrue(terminal.out.startsWith("It brings texts alone, which run no code"), terminal.out);
        assertFalse(terminal.out.contains("full rights"), terminal.out);
        when(terminal.addOns.all()).thenReturn(List.of(roll));
        run();
        assertTrue(terminal.out.contains("    read from there each time: /bench/roll\n"), terminal.out);
        run("--json");
        assertTrue(terminal.out.contains("\"follows\": \"/bench/roll\""), terminal.out);

        AddOnIndexes indexes = indexes();
        AddOnChange newer = new AddOnChange(
                List.of(new Moved("roll", "1.0.0", "1.1.0", List.of("roll"), false)), List.of(), List.of(), false);
        when(indexes.update(Path.of("shelf"), List.of())).thenReturn(newer);
        run("update", "--from", "shelf");
        assertTrue(
                terminal.out.contains("roll was read from /bench/roll each time. It is the jar that works now:"),
                terminal.out);
        assertTrue(terminal.out.endsWith("hidewright addons install /bench/roll --follow --replace\n"), terminal.out);
        when(terminal.addOns.all()).thenReturn(List.of(addOn("roll", Origin.MAKER, State.ON, "roll")));
        run("update", "--from", "shelf");
        assertFalse(terminal.out.contains("each time"), terminal.out);
    }

    @Test
    void nothingGivesWayUnasked() throws Exception {
        when(terminal.addOns.install(any(), anyBoolean(), anyBoolean()))
                .thenReturn(List.of(addOn("belts", Origin.MAKER, State.NEXT_START)));
        run("install", "a.jar");
        verify(terminal.addOns).install(List.of(Path.of("a.jar")), false, false);
    }

    @Test
    void removingAndTurningOffSayWhatBecomesOfSlips() throws Exception {
        when(terminal.addOns.remove("belts")).thenReturn(addOn("belts", Origin.MAKER, State.ON, "belt", "loop"));
        assertEquals(ExitCode.DONE, run("remove", "belts"));
        String slips =
                "Slips of belt, loop are kept as they are in their projects, and are worked again when it is back.\n";
        assertEquals("belts 1.2.3 was removed.\n" + slips, terminal.out);
        when(terminal.addOns.turn("belts", false)).thenReturn(addOn("belts", Origin.MAKER, State.ON, "belt", "loop"));
        when(terminal.addOns.dependents("belts"))
                .thenReturn(List.of(Remark.of(AddOnNotices.ADD_ON_NEEDED.with("ends", "belts"), CoreTexts.TEXTS)));
        String needed = "Check: ends does not work without belts.\n"
                + "    It needs what belts offers, or draws with it or asks it.\n"
                + "    Have belts back, or turn ends off as well: hidewright addons off ends\n";
        assertEquals(ExitCode.DONE, run("off", "belts"));
        assertEquals("belts is turned off.\n" + slips + needed, terminal.out);
        run("remove", "belts");
        assertEquals("belts 1.2.3 was removed.\n" + slips + needed, terminal.out);
        when(terminal.addOns.remove("nets")).thenReturn(addOn("nets", Origin.MAKER, State.FAILED));
        run("remove", "nets");
        assertEquals("nets 1.2.3 was removed.\n", terminal.out);
    }

    @ParameterizedTest
    @CsvSource({
        "on,  OFF,      belts is turned on and starts with the next command.",
        "on,  FAILED,   belts is on already.",
        "on,  ON,       belts is on already.",
        "off, OFF,      belts is turned off already.",
        "off, LEFT_OUT, belts is turned off.",
        "on,  WAITING,  belts is turned on and starts with the next command.",
    })
    void aChoiceIsSaidAgainstWhatWasThere(String to, State before, String said) throws Exception {
        when(terminal.addOns.turn("belts", to.equals("on"))).thenReturn(addOn("belts", Origin.MAKER, before));
        assertEquals(ExitCode.DONE, run(to, "belts"));
        assertEquals(said + "\n", terminal.out);
    }

    @ParameterizedTest(name = "addons {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "instal a.jar|With addons there is no “instal”; perhaps “install” is meant.",
                "show belts|With addons there is no “show”. There are: install, check, update, back, remove, on, off, index, apply, profile, trust, distrust.",
                "install|Which file? Write hidewright addons install FILE",
                "check|Which file? Write hidewright addons check FILE",
                "remove|Which bundle? Write hidewright addons remove NAME;",
                "off belts nets|“nets” is left over.",
                "off belts --replace|--replace goes with hidewright addons install alone.",
                "--replace|--replace goes with hidewright addons install alone.",
                "install a.jar --json|--json goes with hidewright addons alone.",
                "update nets|From where? Write hidewright addons update --from FOLDER",
                "back nets|“nets” is left over.",
                "back --from shelf|--from goes with hidewright addons, addons install, addons update, addons profile alone.",
                "index|Which folder? Write hidewright addons index FOLDER",
                "apply|Which file? Write hidewright addons apply FILE.",
                "profile|Which file? Write hidewright addons profile FILE.",
                "distrust|Who? Write hidewright addons distrust and the name",
                "apply a.json b.json|“b.json” is left over.",
                "install nets --try|--try goes with hidewright addons apply alone.",
                "install nets --older|--older goes with --from alone.",
                "install nets --from shelf --replace|--replace does not go with --from.",
                "--from shelf --json|--json does not go with --from.",
            })
    void whatDoesNotFitIsToldAndNothingIsDone(String arguments, String said) throws Exception {
        assertEquals(ExitCode.NOT_UNDERSTOOD, run(arguments.split(" ")));
        assertTrue(terminal.err.startsWith(said), terminal.err);
        assertEquals("", terminal.out);
        verify(terminal.addOns, never()).install(any(), anyBoolean(), anyBoolean());
        verify(terminal.addOns, never()).turn(any(), anyBoolean());
        verify(terminal.addOns, never()).remove(any());
    }
}
