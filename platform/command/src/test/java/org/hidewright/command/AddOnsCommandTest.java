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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.command.kit.Strap;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mockito.Mockito;

/** Add-ons on the command line; what is done with files is tested where it is done. */
class AddOnsCommandTest {
    private final Terminal terminal = new Terminal(new Strap());

    private static AddOn addOn(String id, Origin origin, State state, String... calculators) {
        return new AddOn(
                id,
                id.equals("belts") ? "Belt Pack" : id,
                "",
                "1.2.3",
                origin,
                state,
                state == State.FAILED ? "Nets broke." : "",
                List.of(calculators),
                List.of(),
                Path.of("addons", id + ".jar"));
    }

    private int run(String... arguments) {
        List<String> all = new ArrayList<>(List.of("addons", "--language=en"));
        all.addAll(List.of(arguments));
        return terminal.run(all.toArray(String[]::new));
    }

    @Test
    void aloneItListsWhereEachIsFromWhatBecameOfItAndWhatItBrings() {
        AddOn jars = new AddOn(
                "jars",
                "jars",
                "",
                "2.0.0",
                Origin.MAKER,
                State.LEFT_OUT,
                "",
                List.of("jar", "lid"),
                List.of("glass"),
                Path.of("jars.jar"));
        AddOn torn = new AddOn(
                "",
                "torn.jar",
                "",
                "",
                Origin.MAKER,
                State.FAILED,
                "It is torn.",
                List.of(),
                List.of(),
                Path.of("torn.jar"));
        when(terminal.addOns.all())
                .thenReturn(List.of(
                        addOn("straps", Origin.PROGRAM, State.ON, "kit-strap"),
                        addOn("belts", Origin.MAKER, State.OFF, "belt"),
                        jars,
                        torn));
        assertEquals(ExitCode.DONE, run());
        assertEquals(
                """
                straps 1.2.3, came with the program: on
                    calculators: kit-strap
                belts 1.2.3, installed by you: turned off
                    Belt Pack
                    calculators: belt
                jars 2.0.0, installed by you: left out of this start
                    calculators: jar, lid
                    tables of the workshop: glass
                torn.jar, installed by you: did not start; why was told as this command began

                """, terminal.out.substring(0, terminal.out.indexOf("Turn one off or on: hidewright addons off NAME")));
        assertEquals("", terminal.err);
    }

    @Test
    void withoutAnyItSaysSo() {
        assertEquals(ExitCode.DONE, run());
        assertTrue(terminal.out.startsWith("There is no bundle that could be turned on or off.\n"), terminal.out);
    }

    @Test
    void theListCanBeHadAsJson() {
        when(terminal.addOns.all())
                .thenReturn(List.of(
                        addOn("belts", Origin.MAKER, State.LEFT_OUT, "belt"),
                        addOn("nets", Origin.PROGRAM, State.FAILED)));
        assertEquals(ExitCode.DONE, run("--json"));
        String flat = terminal.out.replaceAll("\\s+", " ");
        assertEquals(
                "{ \"addons\": [ { \"id\": \"belts\", \"name\": \"Belt Pack\", \"version\": \"1.2.3\", \"origin\": \"maker\","
                        + " \"state\": \"left-out\", \"calculators\": [ \"belt\" ], \"tables\": [ ], \"file\": \"addons/belts.jar\" },"
                        + " { \"id\": \"nets\", \"name\": \"nets\", \"version\": \"1.2.3\", \"origin\": \"program\","
                        + " \"state\": \"failed\", \"why\": \"Nets broke.\", \"calculators\": [ ], \"tables\": [ ],"
                        + " \"file\": \"addons/nets.jar\" } ] } ",
                flat);
    }

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
        assertTrue(terminal.out.contains("\nnets 1.2.3, there already: turned off\n"), terminal.out);
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
        assertEquals(ExitCode.DONE, run("off", "belts"));
        assertEquals("belts is turned off.\n" + slips, terminal.out);
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
                "show belts|With addons there is no “show”. There are: install, remove, on, off.",
                "install|What is to be installed? Write hidewright addons install FILE",
                "remove|Which bundle? Write hidewright addons remove NAME;",
                "off belts nets|“nets” is left over.",
                "off belts --replace|--replace goes with hidewright addons install alone.",
                "--replace|--replace goes with hidewright addons install alone.",
                "install a.jar --json|--json goes with hidewright addons alone.",
            })
    void whatDoesNotFitIsToldAndNothingIsDone(String arguments, String said) throws Exception {
        assertEquals(ExitCode.NOT_UNDERSTOOD, run(arguments.split(" ")));
        assertTrue(terminal.err.startsWith(said), terminal.err);
        assertEquals("", terminal.out);
        verify(terminal.addOns, never()).install(any(), anyBoolean(), anyBoolean());
        verify(terminal.addOns, never()).turn(any(), anyBoolean());
        verify(terminal.addOns, never()).remove(any());
    }

    @Test
    void troubleIsToldWithWhyAndWhatToDo() throws Exception {
        when(terminal.addOns.remove("belt"))
                .thenThrow(new FileTrouble(
                        List.of(Remark.of(AddOnNotices.ADD_ON_UNKNOWN_NEAREST.with("belt", "belts"), CoreTexts.TEXTS)),
                        null));
        assertEquals(ExitCode.NOT_UNDERSTOOD, run("remove", "belt"));
        assertEquals(
                "Stop: There is no bundle “belt” here; perhaps belts is meant.\n    Nothing was changed.\n"
                        + "    hidewright addons lists them all.\n",
                terminal.err);
    }

    @Test
    void aCalculatorOfABundleThatIsOffIsToldWithTheWayBack() {
        when(terminal.addOns.all())
                .thenReturn(List.of(
                        addOn("nets", Origin.MAKER, State.ON, "belt"),
                        addOn("belts", Origin.MAKER, State.OFF, "belt")));
        String said = "“belt” is a calculator of belts, which is turned off. Turn it on: hidewright addons on belts\n";
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("work", "belt", "width=2", "--language=en"));
        assertEquals(said, terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("explain", "belt", "--language=en"));
        assertEquals(said, terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("explain", "kit-strop", "--language=en"));
        assertFalse(terminal.err.contains("turned off"), terminal.err);
    }

    @Test
    void aCalculatorThatIsThereAndCannotBeUsedIsNotOfferedForItself() {
        Catalogue broken = Mockito.mock(Catalogue.class);
        when(broken.ids()).thenReturn(List.of("belt"));
        when(broken.find("belt")).thenReturn(Optional.empty());
        Terminal withBroken = new Terminal(broken);
        assertEquals(ExitCode.NOT_UNDERSTOOD, withBroken.run("work", "belt", "width=2", "--language=en"));
        assertEquals(
                "The calculator “belt” is installed and cannot be used. Why, and what to do, stands below.\n",
                withBroken.err);
    }

    @Test
    void aCalculatorLeftOutOfOneStartIsToldWithTheOptionThatLeftItOut() {
        when(terminal.addOns.all()).thenReturn(List.of(addOn("belts", Origin.MAKER, State.LEFT_OUT, "belt")));
        assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run("work", "belt", "--language=en"));
        assertEquals(
                "“belt” is a calculator of belts, which this start left out as you asked. Work without"
                        + " --without-addons to have it.\n",
                terminal.err);
    }
}
