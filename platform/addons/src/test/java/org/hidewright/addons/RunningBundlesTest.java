package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.example.stranger.Hangs;
import net.example.stranger.HangsAtStop;
import net.example.stranger.Throws;
import net.example.stranger.ThrowsAtStop;
import net.example.stranger.ThrowsSilently;
import org.apache.felix.framework.FrameworkFactory;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.startlevel.FrameworkStartLevel;

/** Bundles in a real framework, and what becomes of them when what was chosen takes effect. */
class RunningBundlesTest extends MakersSettings {
    private Framework framework;
    private RunningBundles running;

    @BeforeEach
    void startFramework() throws Exception {
        framework = new FrameworkFactory()
                .newFramework(Map.of(
                        Constants.FRAMEWORK_STORAGE, folder.resolve("cache").toString(), "felix.log.level", "0"));
        framework.start();
        running = new RunningBundles(framework.getBundleContext(), 3);
    }

    @AfterEach
    void stopFramework() throws Exception {
        framework.stop();
        framework.waitForStop(10_000);
    }

    private Path jar(String file, Jar jar) throws IOException {
        return jar.write(folder.resolve("given").resolve(file));
    }

    private static Jar starting(String id, Class<?> activator) throws IOException {
        return Jar.bundle(id, "Bundle-Activator", activator.getName(), Constants.IMPORT_PACKAGE, "org.osgi.framework")
                .with(activator);
    }

    private Bundle bundle(String id) {
        return Stream.of(framework.getBundleContext().getBundles())
                .filter(bundle -> id.equals(bundle.getSymbolicName()))
                .findFirst()
                .orElseThrow();
    }

    private List<String> ids() {
        return Stream.of(framework.getBundleContext().getBundles())
                .filter(bundle -> bundle.getBundleId() != 0)
                .map(Bundle::getSymbolicName)
                .sorted()
                .toList();
    }

    @Test
    void aBundleRunsFromWhereItLiesUntilItIsStopped() throws Exception {
        Path rivets = jar("a+b c.jar", Jar.bundle("rivets"));
        assertFalse(running.runs(rivets));
        assertEquals(Optional.empty(), running.start(rivets, 50));
        assertTrue(running.runs(rivets));
        assertEquals(Bundle.ACTIVE, bundle("rivets").getState());
        assertTrue(bundle("rivets").getLocation().startsWith("reference:"), "no copy is kept of it");
        BundleStartLevel level = bundle("rivets").adapt(BundleStartLevel.class);
        assertEquals(1, level.getStartLevel(), "the framework has come to 1, and nothing starts above that");
        assertFalse(level.isPersistentlyStarted(), "the next start goes by the folders");
        assertTrue(level.isActivationPolicyUsed());
        running.stop(rivets);
        assertFalse(running.runs(rivets));
        assertEquals(List.of(), ids());
        running.stop(rivets); // what does not run stays as it is
    }

    @Test
    void itStartsAtItsLevelWhereTheFrameworkIsFurther() throws Exception {
        FrameworkStartLevel levels = framework.adapt(FrameworkStartLevel.class);
        levels.setStartLevel(60);
        while (levels.getStartLevel() < 60) {
            Thread.sleep(10);
        }
        assertEquals(Optional.empty(), running.start(jar("r.jar", Jar.bundle("rivets")), 50));
        assertEquals(50, bundle("rivets").adapt(BundleStartLevel.class).getStartLevel());
    }

    @Test
    void whatHasNoNameIsRefusedAndLeavesNothing() throws Exception {
        Path nameless = jar("n.jar", Jar.empty().with("META-INF/MANIFEST.MF", "Manifest-Version: 1.0\n\n"));
        assertEquals(Optional.of("Bundle-SymbolicName"), running.start(nameless, 1));
        assertEquals(List.of(), ids());
    }

    @Test
    void whatIsNoBundleSaysSo() throws Exception {
        Path torn = Files.writeString(folder.resolve("torn.jar"), "no jar at all");
        assertTrue(running.start(torn, 1).isPresent());
        assertFalse(running.runs(torn));
        Path missing = folder.resolve("missing.jar");
        assertTrue(running.start(missing, 1).isPresent());
    }

    @Test
    void whatBreaksSaysWhyInOneLine() throws Exception {
        Path breaks = jar("t.jar", starting("breaks", Throws.class));
        assertEquals(Optional.of("a knot in it"), running.start(breaks, 1), "what came first of all");
        assertFalse(running.runs(breaks));
        Path silent = jar("s.jar", starting("silent", ThrowsSilently.class));
        assertEquals(Optional.of("java.lang.StackOverflowError"), running.start(silent, 1));
    }

    @Test
    void whatDoesNotComeBackIsLeftToItself() throws Exception {
        System.clearProperty(Hangs.INTERRUPTED);
        Path hangs = jar("h.jar", starting("hangs", Hangs.class));
        assertEquals(Optional.of("3 s"), running.start(hangs, 1));
        long end = System.nanoTime() + 10_000_000_000L;
        while (System.getProperty(Hangs.INTERRUPTED) == null && System.nanoTime() < end) {
            Thread.sleep(10);
        }
        assertEquals("true", System.getProperty(Hangs.INTERRUPTED));
    }

    @Test
    void whatBreaksOrHangsWhenItIsStoppedIsGoneNoneTheLess() throws Exception {
        Path breaks = there("t.jar", "on", starting("breaks", ThrowsAtStop.class));
        Path hangs = there("h.jar", "on", starting("hangs", HangsAtStop.class));
        InstalledAddOns addOns = live();
        assertEquals(List.of(), addOns.takeEffect());
        Files.delete(breaks);
        Files.delete(hangs);
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        assertEquals(
                List.of("h.jar did not stop as it should: 3 s."),
                addOns.takeEffect().stream().map(wording::what).toList());
        assertFalse(running.runs(breaks));
        assertFalse(running.runs(hangs));
        assertEquals(List.of(), addOns.takeEffect(), "told once");
        assertEquals("ON", state(addOns, "straps"), "the rest goes on");
    }

    @Test
    void whatWasWiredToABundleThatIsGoneIsNoLonger() throws Exception {
        Path lends = jar(
                "l.jar",
                Jar.bundle("lends", "Export-Package", "net.example.lent").with("net/example/lent/text.txt", "lent"));
        Path takes = jar("t.jar", Jar.bundle("takes", "Import-Package", "net.example.lent"));
        assertEquals(Optional.empty(), running.start(lends, 1));
        assertEquals(Optional.empty(), running.start(takes, 1));
        running.stop(lends);
        assertEquals(Bundle.INSTALLED, bundle("takes").getState(), "nobody lends it anything");
        assertFalse(running.runs(takes));
    }

    private InstalledAddOns live() {
        return addOns(running);
    }

    private static String state(InstalledAddOns addOns, String id) {
        return addOns.all().stream()
                .filter(addOn -> addOn.id().equals(id))
                .map(addOn -> addOn.state() + (addOn.why().isEmpty() ? "" : " " + addOn.why()))
                .findFirst()
                .orElse("not there");
    }

    @Test
    void whatWasInstalledStartsAndGoesWhenItIsTakenAway() throws Exception {
        InstalledAddOns addOns = live();
        addOns.install(List.of(jar("r.jar", Jar.bundle("rivets"))), false, false);
        assertEquals("not there", state(addOns, "rivets"), "it waits for its effect");
        assertEquals(List.of(), ids());
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals("ON", state(addOns, "rivets"));
        assertEquals(List.of("rivets", "straps"), ids());
        addOns.remove("rivets");
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals("not there", state(addOns, "rivets"));
        assertEquals(List.of("straps"), ids());
    }

    @Test
    void whatIsTurnedOffGoesAndComesBack() throws Exception {
        InstalledAddOns addOns = live();
        addOns.takeEffect();
        assertEquals(List.of("straps"), ids());
        addOns.turn("straps", false);
        assertEquals("ON", state(addOns, "straps"), "it waits for its effect");
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals("OFF", state(addOns, "straps"));
        assertEquals(List.of(), ids());
        addOns.turn("straps", true);
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals("ON", state(addOns, "straps"));
        assertEquals(List.of("straps"), ids());
    }

    @Test
    void whatRunsAlreadyIsLeftAlone() throws Exception {
        InstalledAddOns addOns = live();
        addOns.takeEffect();
        long id = bundle("straps").getBundleId();
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals(id, bundle("straps").getBundleId());
    }

    @Test
    void aJarThatIsAnotherNowIsStartedAnew() throws Exception {
        InstalledAddOns addOns = live();
        addOns.install(List.of(jar("r.jar", Jar.bundle("rivets", "Bundle-Version", "1.0.0"))), false, false);
        addOns.takeEffect();
        addOns.install(List.of(jar("r2.jar", Jar.bundle("rivets", "Bundle-Version", "2.0.0"))), true, false);
        Path place = jars.resolve("rivets.jar");
        Files.setLastModifiedTime(place, FileTime.fromMillis(1_000_000));
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals("2.0.0", bundle("rivets").getVersion().toString());
        assertEquals(List.of("rivets", "straps"), ids());
    }

    @Test
    void whatFailsIsToldOnceAndTriedAgainOnlyWhenItIsAnother() throws Exception {
        InstalledAddOns addOns = live();
        Jar breaks = starting("breaks", Throws.class);
        Path place = there("breaks.jar", "on", breaks);
        InstalledAddOns withIt = live();
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        List<String> told = withIt.takeEffect().stream().map(wording::what).toList();
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains("breaks.jar") && told.get(0).contains("a knot in it"), told.get(0));
        assertEquals("FAILED a knot in it", state(withIt, "breaks"));
        assertEquals(List.of(), withIt.takeEffect(), "it is not called again");
        Jar.bundle("breaks").write(place);
        Files.setLastModifiedTime(place, FileTime.fromMillis(1_000_000));
        assertEquals(List.of(), withIt.takeEffect());
        assertEquals("ON", state(withIt, "breaks"));
        assertEquals("not there", state(addOns, "breaks"));
    }

    @Test
    void whatIsUnsoundIsNotStartedWhileTheProgramRuns() throws Exception {
        faults.put("changed.jar", "seal");
        InstalledAddOns addOns = live();
        Jar.bundle("changed").write(jars.resolve("changed.jar"));
        Jar.bundle("part", "Fragment-Host", "command").write(jars.resolve("part.jar"));
        Files.writeString(jars.resolve("torn.jar"), "torn");
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        List<String> told = addOns.takeEffect().stream().map(wording::what).toList();
        assertEquals(
                List.of(
                        "changed.jar was not started: it is signed, and was changed since.",
                        "part.jar was not started: it wants to become a part of command, which belongs to the program."),
                told.subList(0, 2));
        assertTrue(told.get(2).startsWith("torn.jar was not started: "), told.get(2));
        assertEquals(3, told.size());
        assertEquals("FAILED it is signed, and was changed since", state(addOns, "changed"));
        assertEquals(
                "FAILED it wants to become a part of command, which belongs to the program", state(addOns, "part"));
        assertEquals(List.of("straps"), ids());
        assertEquals(List.of(), addOns.takeEffect(), "told once");
    }

    /** What came with the program is not looked over: it may be long, and is nobody else’s. */
    @Test
    void theProgramsOwnAreNotLookedOver() throws Exception {
        faults.put("s.jar", "damaged");
        assertEquals(List.of(), live().takeEffect());
        assertEquals(List.of("straps"), ids());
    }

    @Test
    void whatWasCopiedInWaitsForAWordAndIsToldOnce() throws Exception {
        InstalledAddOns addOns = live();
        Jar.bundle("rivets").write(jars.resolve("r.jar"));
        waiting.add("r.jar");
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        List<String> told = addOns.takeEffect().stream()
                .map(remark -> wording.what(remark) + " " + wording.why(remark))
                .toList();
        assertEquals(1, told.size());
        assertTrue(
                told.get(0).startsWith("r.jar is new here and was not started. A bundle is code with full rights"),
                told.get(0));
        assertEquals("WAITING", state(addOns, "rivets"));
        assertEquals(List.of("straps"), ids());
        assertEquals(List.of(), addOns.takeEffect(), "told once");
        addOns.turn("rivets", true);
        waiting.clear();
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals("ON", state(addOns, "rivets"));
        assertEquals(List.of("rivets", "straps"), ids());
    }

    @Test
    void whatIsTextsAloneIsNotCalledCodeAsItWaits() throws Exception {
        InstalledAddOns addOns = live();
        Jar.bundle("rolls", TemplateFiles.HEADER, "roll.json")
                .with("roll.json", "{}")
                .write(jars.resolve("r.jar"));
        waiting.add("r.jar");
        Remark told = addOns.takeEffect().get(0);
        Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        assertEquals("r.jar is new here and is not used yet.", wording.what(told));
        assertTrue(wording.why(told).startsWith("It is texts alone, which run no code"), wording.why(told));
    }

    @Test
    void whatWasLeftOutOfThisStartStaysOut() throws Exception {
        there("rivets.jar", "left-out", Jar.bundle("rivets"));
        InstalledAddOns addOns = live();
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals("LEFT_OUT", state(addOns, "rivets"));
        assertEquals(List.of("straps"), ids());
    }

    @Test
    void aBundleOfTheMakerStartsAfterThoseOfTheProgram() throws Exception {
        FrameworkStartLevel levels = framework.adapt(FrameworkStartLevel.class);
        levels.setStartLevel(60);
        while (levels.getStartLevel() < 60) {
            Thread.sleep(10);
        }
        there("rivets.jar", "on", Jar.bundle("rivets"));
        live().takeEffect();
        assertEquals(50, bundle("rivets").adapt(BundleStartLevel.class).getStartLevel());
        assertEquals(40, bundle("straps").adapt(BundleStartLevel.class).getStartLevel());
    }
}
