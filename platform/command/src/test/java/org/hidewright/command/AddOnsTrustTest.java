package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.spi.ToolProvider;
import org.hidewright.core.addons.AddOn.Origin;
import org.hidewright.core.addons.AddOn.State;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.Index;
import org.hidewright.core.addons.Offer;
import org.hidewright.core.addons.Offer.Standing;
import org.hidewright.core.addons.ShopProfiles;
import org.hidewright.core.addons.TrustedMakers;
import org.hidewright.core.addons.TrustedMakers.Maker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.mockito.Mockito;

/** Add-ons from an index, shops from a file, and whose signature is asked for. */
class AddOnsTrustTest extends AddOnsRun {
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

    /** What is told to be typed is typed here, with the tool of the JDK, and makes a jar with the manifest and the text. */
    @Test
    void foldersThatAreNotIndexedAreToldWithHowTheyArePacked(@TempDir Path shelf) throws Exception {
        Path texts = shelf.resolve("pen-case");
        Files.createDirectories(texts.resolve("META-INF"));
        Files.writeString(
                texts.resolve("META-INF/MANIFEST.MF"), "Manifest-Version: 1.0\nHidewright-Templates: pen-case.json\n");
        Files.writeString(texts.resolve("pen-case.json"), "{}");
        when(indexes().write(shelf))
                .thenReturn(new Index(
                        shelf.resolve("index.xml"),
                        List.of(),
                        List.of(shelf.resolve("drafts"), shelf.resolve("pen-case"))));
        assertEquals(ExitCode.DONE, run("index", shelf.toString()));
        assertTrue(terminal.out.contains("and these folders are left out: drafts, pen-case. "), terminal.out);
        List<String> typed =
                terminal.out.lines().filter(line -> line.startsWith("  jar ")).toList();
        assertEquals(1, typed.size(), terminal.out);
        String[] words = typed.get(0).strip().split(" ");
        ToolProvider jar = ToolProvider.findFirst("jar").orElseThrow();
        assertEquals(0, jar.run(System.out, System.err, Arrays.copyOfRange(words, 1, words.length)));
        try (JarFile packed = new JarFile(shelf.resolve("pen-case.jar").toFile())) {
            assertEquals(
                    "pen-case.json", packed.getManifest().getMainAttributes().getValue("Hidewright-Templates"));
            assertEquals(
                    List.of("META-INF/", "META-INF/MANIFEST.MF", "pen-case.json"),
                    packed.stream().map(JarEntry::getName).sorted().toList());
        }
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
        String back = """
                Taken back is the change that was made last by install, update, remove, apply or back:
                nets 1.2.3 goes
                mats is turned off

                Slips of net are kept as they are in their projects, and are worked again when it is back.
                This holds from the next command on. It is taken back by hidewright addons back
                """;
        assertEquals(back, terminal.out);
        when(terminal.addOns.all())
                .thenReturn(List.of(
                        addOn("nets", Origin.MAKER, State.OFF),
                        addOn("mats", Origin.MAKER, State.ON),
                        addOn("straps", Origin.PROGRAM, State.OFF),
                        addOn("belts", Origin.PROGRAM, State.OFF)));
        run("back");
        assertEquals(
                back + "Turned off stays: belts, straps. Turn one on again: hidewright addons on NAME\n", terminal.out);
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
        when(profiles.write(Path.of("mine.json"), List.of())).thenReturn(List.of("nets 1.2.3"));
        run("profile", "mine.json");
        assertTrue(
                terminal.out.contains(
                        "It names no index that nets 1.2.3 could be fetched from: elsewhere they have to be"
                                + " installed first. With one: hidewright addons profile mine.json --from FOLDER"),
                terminal.out);
        when(profiles.write(Path.of("mine.json"), List.of(Path.of("shelf")))).thenReturn(List.of("mats 1.0.0"));
        run("profile", "mine.json", "--from", "shelf");
        assertTrue(terminal.out.contains("shelf does not have: mats 1.0.0."), terminal.out);
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
}
