package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.hidewright.core.addons.CatalogueWithAddOns;
import org.hidewright.window.kit.FakeWriters;
import org.hidewright.window.kit.Nets;
import org.hidewright.window.kit.NetsBundles;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bundles in a real window: what is installed, turned off and on, added and taken away while a project is open. */
class BundlesWindowTest {
    @TempDir
    Path folder;

    private NetsBundles bundles;
    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        bundles = new NetsBundles();
        real = new RealWindow(
                folder.resolve("settings"),
                new CatalogueWithAddOns(bundles, () -> bundles),
                bundles,
                FakeWriters.all());
        real.window.open(Nets.bag(folder));
        real.settle();
        real.press("deed.bundles");
    }

    @AfterEach
    void close() {
        real.close();
    }

    private Table lines() {
        return real.find(Table.class, "bundles.lines");
    }

    private void choose(String name) {
        for (int i = 0; i < lines().getItemCount(); i++) {
            if (lines().getItem(i).getData("id").equals(name)) {
                lines().setSelection(i);
                lines().notifyListeners(SWT.Selection, new Event());
                return;
            }
        }
        throw new AssertionError("no bundle " + name);
    }

    private void settle() {
        real.settle();
        real.settle();
    }

    @Test
    void eachSaysWhoMadeItWhatItBringsAndHowItStands() {
        assertEquals(2, lines().getItemCount());
        assertEquals("Bags 1.0.0", lines().getItem(0).getText(0));
        assertEquals("Net makers", lines().getItem(0).getText(1));
        assertEquals("Bag", lines().getItem(0).getText(2));
        assertEquals("On.", lines().getItem(0).getText(3));
        choose("org.example.cords");
        assertEquals("Cords 1.0.0 · \nBrings: Cord\nOn.", real.text("bundles.about"));
    }

    @Test
    void aBundleWhoseCalculatorAnotherKeepsSaysSo() {
        bundles.another("org.example.aaa", "bag");
        bundles.another("org.example.knots", "cord");
        real.press("bundles.back");
        real.press("deed.bundles");
        choose("org.example.aaa");
        assertTrue(
                real.text("bundles.about")
                        .endsWith("On. Its “bag” is left out: Bags brings one of that name"
                                + " too and keeps it. Turn one of the two off."),
                real.text("bundles.about"));
        choose("org.example.knots");
        assertTrue(real.text("bundles.about").contains("Cords brings one"), real.text("bundles.about"));
        choose("org.example.cords");
        assertTrue(real.text("bundles.about").endsWith("On."), real.text("bundles.about"));
    }

    @Test
    void oneThatIsTextsAloneIsNotCalledCodeWithFullRights() {
        bundles.textsThatWait("org.example.nets");
        real.press("bundles.back");
        real.press("deed.bundles");
        choose("org.example.nets");
        assertTrue(
                real.text("bundles.about")
                        .endsWith(
                                "\nWaits until you turn it on. It is texts alone, which run no code: what they ask and"
                                        + " draw is worked out by calculators that are here."),
                real.text("bundles.about"));
    }

    @Test
    void aTableIsCalledAsTheWorkshopCallsIt() {
        bundles.tableOf("org.example.hides", "punches");
        real.press("bundles.back");
        real.press("deed.bundles");
        choose("org.example.hides");
        assertTrue(real.text("bundles.about").contains("\nBrings: table Round punches\n"), real.text("bundles.about"));
    }

    @Test
    void aBundleThatIsTurnedOffLeavesItsSlipsDormantAndTheyComeBackWhole() {
        String before = real.answers("bag");
        String text = real.window.project().orElseThrow().project().text();
        choose("org.example.bags");
        real.press("bundles.turn");
        settle();
        assertEquals("", real.answers("bag"));
        assertEquals("Turn on", real.text("bundles.turn"));
        assertTrue(real.text("project.look").contains("thing"), real.text("project.look"));
        assertEquals(text, real.window.project().orElseThrow().project().text(), "nothing of it is lost");
        real.press("bundles.turn");
        settle();
        assertEquals(before, real.answers("bag"));
        assertEquals("All worked out", real.text("project.look"));
    }

    @Test
    void aDormantSlipLeadsToItsBundle() {
        choose("org.example.bags");
        real.press("bundles.turn");
        settle();
        assertFalse(real.text("bag/urgent").contains("hidewright addons"), real.text("bag/urgent"));
        real.press("bundles.back");
        assertFalse(real.find(Link.class, "roll/installed").getVisible(), "it is worked");
        real.press("bag/installed");
        assertTrue(real.text("bundles.about").startsWith("Bags 1.0.0"), real.text("bundles.about"));
        real.press("bundles.turn");
        settle();
        assertFalse(real.answers("bag").isEmpty());
        assertFalse(real.find(Link.class, "bag/installed").getVisible());
    }

    @Test
    void aBundleIsTakenAwayAndAddedAgain() {
        choose("org.example.cords");
        real.press("bundles.remove");
        settle();
        assertEquals(1, lines().getItemCount());
        assertTrue(
                real.text("bundles.told").contains("org.example.bags does not work without org.example.cords."),
                real.text("bundles.told"));
        assertEquals("", real.answers("roll"));
        real.files.add(Path.of("cords.jar"));
        real.press("bundles.add");
        settle();
        assertEquals(2, lines().getItemCount());
        assertTrue(real.answers("roll").contains("100.0\u00A0mm"), real.answers("roll"));
    }

    @Test
    void aBundleIsInstalledFromAnIndexAfterItIsSaidWhatItMayDo() {
        choose("org.example.cords");
        real.press("bundles.remove");
        settle();
        assertTrue(real.text("bundles.rights").startsWith("A bundle is code with full rights"));
        real.files.add(Path.of("index.xml"));
        real.press("bundles.index");
        settle();
        assertTrue(real.text("offers.rights").startsWith("A bundle is code with full rights"));
        Table offers = real.find(Table.class, "offers.lines");
        assertEquals("Cords 1.0.0", offers.getItem(0).getText(0));
        assertEquals("Rope walk", offers.getItem(0).getText(1));
        assertEquals("cord, table knots", offers.getItem(0).getText(2));
        assertEquals("Not installed.", offers.getItem(0).getText(3));
        real.press("offers.install");
        settle();
        assertEquals("", real.text("offers.told"));
        assertEquals("Installed.", offers.getItem(0).getText(3));
        assertTrue(real.answers("roll").contains("100.0\u00A0mm"), real.answers("roll"));
        real.press("offers.update");
        settle();
        assertEquals("", real.text("offers.told"));
        real.press("offers.back");
        assertEquals(2, lines().getItemCount());
        choose("org.example.bags");
        real.press("bundles.turn");
        settle();
        assertEquals("", real.text("bundles.told"));
        real.press("bundles.undo");
        settle();
        assertEquals(1, lines().getItemCount());
        assertEquals(
                "Taken back: org.example.cords 1.0.0 goes.\n"
                        + "Turned off stays: org.example.bags. Choose it and press “Turn on”.",
                real.text("bundles.told"));
        real.press("bundles.undo");
        settle();
        assertTrue(real.text("bundles.told").startsWith("There is no change"), real.text("bundles.told"));
    }

    /** Knots come from the index with a “cord” of their own. */
    @Test
    void aBundleFromAnIndexWhoseCalculatorAnotherKeepsSaysSo() {
        bundles.offersToo("org.example.knots");
        real.files.add(Path.of("index.xml"));
        real.press("bundles.index");
        settle();
        Table offers = real.find(Table.class, "offers.lines");
        offers.setSelection(1);
        offers.notifyListeners(SWT.Selection, new Event());
        real.press("offers.install");
        settle();
        assertEquals(
                "The “cord” of org.example.knots is left out: Cords brings one of that name too and keeps"
                        + " it. Turn one of the two off.",
                real.text("offers.told"));
    }

    /** What is off does not say that its papers are not wanted any more. */
    @Test
    void papersOfWhatIsOffAreKeptAndThatIsTold() throws Exception {
        Path out = folder.resolve("out");
        export(out);
        assertFalse(real.text("project.told").contains("Kept"), real.text("project.told"));
        assertTrue(Files.exists(out.resolve("patterns.pdf")));
        real.press("deed.bundles");
        choose("org.example.bags");
        real.press("bundles.turn");
        settle();
        export(out);
        String told = real.text("project.told");
        assertTrue(told.contains("Kept from the earlier packet, since not every slip is worked now: "), told);
        assertTrue(told.contains("patterns.pdf"), told);
        assertTrue(Files.exists(out.resolve("patterns.pdf")));
    }

    private void export(Path out) {
        real.press("bundles.back");
        real.files.add(out);
        real.press("deed.export");
        real.until(() -> real.text("project.told").contains("The packet is in"));
    }

    @Test
    void whatIsNoIndexIsTold() {
        real.files.add(Path.of("nowhere.xml"));
        real.press("bundles.index");
        settle();
        assertTrue(real.text("offers.told").contains("There is no index nowhere.xml"), real.text("offers.told"));
        assertEquals(0, real.find(Table.class, "offers.lines").getItemCount());
    }

    @Test
    void whatCannotBeDoneIsToldAndChangesNothing() {
        choose("org.example.bags");
        real.press("bundles.remove");
        settle();
        assertTrue(real.text("bundles.told").contains("came with the program"), real.text("bundles.told"));
        assertEquals(2, lines().getItemCount());
        assertFalse(real.answers("bag").isEmpty());
    }

    @Test
    void aBundleThatDoesNotStartSaysWhy() {
        bundles.startsBadly("org.example.bags");
        choose("org.example.bags");
        real.press("bundles.turn");
        settle();
        real.press("bundles.turn");
        settle();
        assertTrue(real.text("bundles.told").contains("a knot in it"), real.text("bundles.told"));
        assertEquals("a knot in it", lines().getItem(0).getText(3));
        assertEquals(List.of("cord"), bundles.ids());
    }
}
