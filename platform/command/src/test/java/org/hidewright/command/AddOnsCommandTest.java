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
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.addons.Index;
import org.hidewright.core.addons.Offer;
import org.hidewright.core.addons.Offer.Standing;
import org.hidewright.core.addons.ShopProfiles;
import org.hidewright.core.addons.TrustedMakers;
import org.hidewright.core.addons.TrustedMakers.Maker;
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
                Path.of("roll.jar"));
        when(terminal.addOns.install(any(), anyBoolean(), anyBoolean())).thenReturn(List.of(roll));
        run("install", "roll.jar");
        assertTrue(terminal.out.startsWith("It brings texts alone, which run no code"), terminal.out);
        assertFalse(terminal.out.contains("full rights"), terminal.out);
        when(terminal.addOns.all()).thenReturn(List.of(roll));
        run();
        assertTrue(terminal.out.contains("    read from there each time: /bench/roll\n"), terminal.out);
        run("--json");
        assertTrue(terminal.out.contains("\"follows\": \"/bench/roll\""), terminal.out);
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

    private AddOnIndexes indexes() {
        AddOnIndexes indexes = Mockito.mock(AddOnIndexes.class);
        when(terminal.addOns.indexes()).thenReturn(indexes);
        return indexes;
    }

    private static Offer offer(String id, String name, String maker, Standing standing) {
        return new Offer(
                id,
                name,
                maker,
                "1.2.3",
                standing == Standing.NEW ? List.of("belt") : List.of(),
                standing == Standing.NEW ? List.of("knots") : List.of(),
                standing,
                "1.2.0");
    }

    @Test
    void anIndexIsMadeAndSaysWhereItIs() throws Exception {
        when(indexes().write(Path.of("shelf")))
                .thenReturn(new Index(Path.of("shelf", "index.xml"), List.of(offer("nets", "nets", "", Standing.NEW))));
        assertEquals(ExitCode.DONE, run("index", "shelf"));
        assertEquals(
                "The index is written: shelf/index.xml (bundles: 1)\n"
                        + "What it offers is listed by hidewright addons --from shelf\n",
                terminal.out);
    }

    @Test
    void whatAnIndexOffersIsListedWithHowItStands() throws Exception {
        when(indexes().read(Path.of("shelf")))
                .thenReturn(new Index(
                        Path.of("shelf", "index.xml"),
                        List.of(
                                offer("belts", "Belt Pack", "A. Stranger", Standing.NEW),
                                offer("mats", "mats", "", Standing.HERE),
                                offer("nets", "nets", "", Standing.NEWER),
                                offer("pads", "pads", "", Standing.OLDER),
                                offer("straps", "straps", "", Standing.OF_PROGRAM))));
        assertEquals(ExitCode.DONE, run("--from", "shelf"));
        assertEquals("""
                belts 1.2.3: not installed
                    Belt Pack
                    made by: A. Stranger
                    calculators: belt
                    tables of the workshop: knots
                mats 1.2.3: installed
                nets 1.2.3: newer than 1.2.0, which is installed
                pads 1.2.3: older than 1.2.0, which is installed
                straps 1.2.3: not for this program, which has one of that name

                Install one with what it needs: hidewright addons install NAME --from shelf
                Bring all up to date: hidewright addons update --from shelf
                """, terminal.out);
        when(indexes().read(Path.of("shelf"))).thenReturn(new Index(Path.of("shelf", "index.xml"), List.of()));
        run("--from=shelf");
        assertEquals("shelf offers nothing.\n", terminal.out);
    }

    @Test
    void whatComesFromAnIndexIsSaidWithWhatABundleMayDo() throws Exception {
        AddOnIndexes indexes = indexes();
        when(indexes.install(Path.of("shelf"), List.of("nets@1.2.3", "mats"), true))
                .thenReturn(new AddOnChange(
                        List.of(
                                new Moved("knots", "", "2.0.0", List.of(), true),
                                new Moved("mats", "2.0.0", "1.0.0", List.of("mat"), false),
                                new Moved("nets", "", "1.2.3", List.of("net"), false)),
                        List.of("ropes"),
                        List.of(),
                        true));
        assertEquals(ExitCode.DONE, run("install", "nets@1.2.3", "mats", "--from", "shelf", "--older"));
        assertTrue(terminal.out.startsWith("A bundle is code with full rights"), terminal.out);
        assertTrue(terminal.out.endsWith("""

                        knots 2.0.0 comes, since it is needed
                        mats 2.0.0 gives way to 1.0.0
                            calculators: mat
                        nets 1.2.3 comes
                            calculators: net
                        ropes is turned on

                        This holds from the next command on. It is taken back by hidewright addons back
                        """), terminal.out);
    }

    @Test
    void whatIsRenewedTakenBackOrSoAlreadyIsSaid() throws Exception {
        AddOnIndexes indexes = indexes();
        AddOnChange nothing = new AddOnChange(List.of(), List.of(), List.of(), false);
        when(indexes.update(Path.of("shelf"), List.of())).thenReturn(nothing);
        assertEquals(ExitCode.DONE, run("update", "--from", "shelf"));
        assertEquals("There is nothing to do: all is so already.\n", terminal.out);
        when(indexes.back())
                .thenReturn(new AddOnChange(
                        List.of(new Moved("nets", "1.2.3", "", List.of("net"), false)),
                        List.of(),
                        List.of("mats"),
                        false));
        run("back");
        assertEquals("""
                nets 1.2.3 goes
                mats is turned off

                Slips of net are kept as they are in their projects, and are worked again when it is back.
                This holds from the next command on. It is taken back by hidewright addons back
                """, terminal.out);
    }

    @Test
    void aShopIsSetUpByAFileOrOnlyTried() throws Exception {
        ShopProfiles profiles = Mockito.mock(ShopProfiles.class);
        when(terminal.addOns.profiles()).thenReturn(profiles);
        AddOnChange change = new AddOnChange(List.of(), List.of("straps"), List.of("edges"), false);
        when(profiles.apply(Path.of("shop.json"), true)).thenReturn(change);
        when(profiles.apply(Path.of("shop.json"), false)).thenReturn(change);
        String said = "straps is turned on\nedges is turned off\n\n";
        assertEquals(ExitCode.DONE, run("apply", "shop.json", "--try"));
        assertEquals(said + "Nothing of this was done yet; it is done without --try.\n", terminal.out);
        run("apply", "shop.json");
        assertEquals(
                said + "This holds from the next command on. It is taken back by hidewright addons back\n",
                terminal.out);
        run("profile", "mine.json");
        assertEquals("What is turned on here is written: mine.json\n", terminal.out);
        verify(profiles).write(Path.of("mine.json"), List.of());
        when(terminal.addOns.all()).thenReturn(List.of(addOn("nets", Origin.MAKER, State.ON)));
        run("profile", "mine.json");
        assertTrue(
                terminal.out.contains("It names no index that nets could be fetched from: elsewhere they have to be"
                        + " installed first. With one: hidewright addons profile mine.json --from FOLDER"),
                terminal.out);
        run("profile", "mine.json", "--from", "shelf");
        verify(profiles).write(Path.of("mine.json"), List.of(Path.of("shelf")));
    }

    @Test
    void whoseSignatureIsAskedForIsNamedAndListed() throws Exception {
        TrustedMakers makers = Mockito.mock(TrustedMakers.class);
        when(terminal.addOns.makers()).thenReturn(makers);
        when(makers.all()).thenReturn(List.of());
        run("trust");
        assertEquals("No signature is asked for: nobody is named.\n", terminal.out);
        Maker maker = new Maker("ab12", "CN=A maker");
        when(makers.trust(Path.of("maker.cer"))).thenReturn(maker);
        run("trust", "maker.cer");
        String demands = "Only add-ons that somebody named here has signed are installed and started.\n";
        assertEquals("CN=A maker is named, by the certificate AB:12.\n" + demands, terminal.out);
        when(makers.all()).thenReturn(List.of(maker));
        run("trust");
        assertEquals(demands + "    CN=A maker  AB:12\n", terminal.out);
        when(makers.distrust("ab")).thenReturn(maker);
        run("distrust", "ab");
        assertEquals("CN=A maker is named no more (AB:12).\n", terminal.out);
        when(makers.all()).thenReturn(List.of());
        run("distrust", "ab");
        assertTrue(terminal.out.endsWith("No signature is asked for: nobody is named.\n"), terminal.out);
        when(terminal.addOns.all()).thenReturn(List.of(addOn("nets", Origin.MAKER, State.ON)));
        run("distrust", "ab");
        assertTrue(
                terminal.out.contains(
                        "nobody is named.\nInstalled and started as before: nets\nA bundle is code with full rights"),
                terminal.out);
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
