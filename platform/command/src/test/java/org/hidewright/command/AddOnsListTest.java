package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.mockito.Mockito;

/** Which add-ons there are, how they stand, and what is told of a calculator of one that does not run. */
class AddOnsListTest extends AddOnsRun {
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
    void aCalculatorOfABundleThatDidNotStartIsNotOneThatNobodyBrings() {
        when(terminal.addOns.all())
                .thenReturn(List.of(
                        addOn("belts", Origin.MAKER, State.FAILED, "belt"),
                        addOn("nets", Origin.MAKER, State.WAITING, "net")));
        for (String command : List.of("work", "explain")) {
            assertEquals(ExitCode.NOT_UNDERSTOOD, terminal.run(command, "belt", "--language=en"));
            assertEquals(
                    "“belt” is a calculator of belts, which is installed and did not start. What kept it was told as this"
                            + " command began, with what to do. Where its author has to mend it, put the mended one in its"
                            + " place: hidewright addons install FILE --replace\n",
                    terminal.err);
        }
        terminal.run("work", "net", "--language=en");
        assertEquals(
                "“net” is a calculator of nets, which is new here and waits for your word. If it comes from somebody you"
                        + " trust, start it: hidewright addons on nets\n",
                terminal.err);
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
