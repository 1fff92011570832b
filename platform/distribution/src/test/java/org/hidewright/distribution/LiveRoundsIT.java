package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hidewright.api.measure.Length;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.distribution.LeftBehind.Held;
import org.hidewright.launcher.ProgramInProcess;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;

/**
 * An add-on is installed, updated, turned off and on and removed, over and over, while a project that takes from it is open and
 * is being worked. Nothing of it stays behind in the program. With {@code -Dhidewright.long=true} a thousand rounds.
 */
class LiveRoundsIT {
    private static final int ROUNDS = Boolean.getBoolean("hidewright.long") ? 1000 : 60;

    /** Until everything has been loaded, compiled and pooled that is kept for good. */
    private static final int TO_WARM_UP = 15;

    /** Starts of the add-on in a round: installed, updated, turned on again. */
    private static final int STARTS = 3;

    private static final String LIMIT = "hidewright.call-limit";

    private static final String KEPT = "net.example.kept.";

    private static final String PROJECT = """
            {"hidewright": 1, "name": "Field kit", "slips": [
              {"id": "plain", "calculator": "thickness", "questions": {"thickness": "2-3 oz"}},
              {"id": "coming", "calculator": "coming", "from": "net.example.odd", "questions": {
                "thickness": "2.25 mm", "way": "folded", "end": {"rounded": {"radius": "4 mm"}},
                "layers": [{"id": "a", "thickness": "1 mm"}, {"id": "b", "thickness": "1.5 mm"}]}},
              {"id": "after", "calculator": "thickness", "questions": {"thickness": {"from": "coming", "answer": "length"}}},
              {"id": "tag", "calculator": "coming-tag", "questions": {"width": "30 mm"}}]}
            """;

    @TempDir
    Path scratch;

    private ProgramInProcess program;
    private AddOns addOns;
    private BusyBench bench;
    private final LeftBehind left = new LeftBehind();

    @BeforeEach
    void start() throws Exception {
        System.setProperty(LIMIT, "60"); // nothing here may hang on how busy this computer is
        program = ProgramInProcess.start(scratch);
        addOns = program.service(AddOns.class);
        Path project = Files.writeString(scratch.resolve("kit.json"), PROJECT);
        bench = new BusyBench(program.service(Catalogue.class), project);
    }

    @AfterEach
    void stop() throws Exception {
        bench.close();
        program.close();
        System.clearProperty(LIMIT);
        System.getProperties().keySet().removeIf(key -> key.toString().startsWith(KEPT));
    }

    @Test
    void anAddOnComesAndGoesWhileItIsUsedAndNothingOfItStays() throws Exception {
        Path first = pack(2, "");
        Path second = pack(3, "");
        String whole = text(bench.anew(), "plain");
        for (int i = 0; i < TO_WARM_UP; i++) {
            round(first, second, whole);
        }
        Held before = Held.now();
        int bundles = program.context().getBundles().length;
        long folders = folders();
        int shown = bench.shown();
        for (int i = 0; i < ROUNDS; i++) {
            round(first, second, whole);
        }
        Map<String, Integer> worked = bench.rest();
        assertEquals(0, left.stillThere(), "class loaders left behind, of " + left.watched());
        Held after = Held.now();
        String counted = ROUNDS + " rounds: " + before + " before, " + after + " after; " + worked;
        System.out.println(counted);
        assertEquals(STARTS * (ROUNDS + TO_WARM_UP), left.watched());
        assertTrue(bench.shown() > shown + 5 * ROUNDS, "the open project was shown all along");
        assertTrue(
                worked.keySet()
                        .containsAll(List.of(
                                "plain worked", "coming dormant", "coming worked 4.5 mm", "coming worked 6.75 mm")),
                counted);
        assertEquals(before.bundleLoaders(), after.bundleLoaders(), "by the JDK’s own count; " + counted);
        assertTrue(after.classes() <= before.classes() + 150, counted);
        assertTrue(after.threads() <= before.threads() + 3, counted);
        assertTrue(after.openFiles() <= before.openFiles() + 5, counted);
        assertTrue(after.heap() <= before.heap() + (6 << 20), counted);
        assertEquals(bundles, program.context().getBundles().length);
        assertEquals(folders, folders());
        assertEquals(PROJECT, bench.text());
        install(second, false);
        isWorked(bench.anew(), 3, whole);
    }

    @Test
    void whatAnAddOnLeavesOnAThreadOfTheGuardGoesWithIt() throws Exception {
        String leaves =
                "class Kept { static final ThreadLocal<Object> KEPT = new ThreadLocal<>(); } Kept.KEPT.set(this);";
        rounds(leaves, 7);
        bench.rest();
        rounds(leaves, 1); // what was just at work when it went ends with the next that goes
        assertEquals(0, left.stillThere(), "of " + left.watched());
    }

    /** The count can fail: an add-on that hooks itself into the JDK is found by it. */
    @Test
    void anAddOnThatHooksItselfIntoTheJdkIsCounted() throws Exception {
        rounds("", 3);
        Held before = Held.now();
        rounds("System.getProperties().putIfAbsent(\"" + KEPT + "\" + System.identityHashCode(getClass()), this);", 4);
        bench.rest();
        Held after = Held.now();
        long hooked = System.getProperties().keySet().stream()
                .filter(key -> key.toString().startsWith(KEPT))
                .count();
        assertEquals(4 * STARTS, hooked);
        assertEquals(hooked, left.stillThere());
        assertEquals(before.bundleLoaders() + hooked, after.bundleLoaders(), "by the JDK’s own count");
        assertTrue(after.classes() >= before.classes() + hooked, before + " before, " + after + " after");
    }

    private Path pack(int version, String leaves) throws Exception {
        return ComingBundle.pack(scratch.resolve("given"), version, leaves);
    }

    private void rounds(String leaves, int rounds) throws Exception {
        Path first = pack(2, leaves);
        Path second = pack(3, leaves);
        String whole = text(bench.anew(), "plain");
        for (int i = 0; i < rounds; i++) {
            round(first, second, whole);
        }
    }

    private void round(Path first, Path second, String whole) throws Exception {
        install(first, false);
        isWorked(bench.anew(), 2, whole);
        install(second, true);
        isWorked(bench.anew(), 3, whole);
        WorkedProject typed = bench.typed("coming", "thickness", "2.9-3.1 mm");
        assertEquals(Length.ofMm(3 * 3), length(typed));
        assertTrue(typed.ranges("after").isPresent(), "what hangs on it has a range too");
        isWorked(bench.undone(), 3, whole);
        addOns.turn(ComingBundle.ID, false);
        tookEffect();
        isDormant(bench.anew(), whole);
        addOns.turn(ComingBundle.ID, true);
        tookEffect();
        watch();
        isWorked(bench.anew(), 3, whole);
        addOns.remove(ComingBundle.ID);
        tookEffect();
        isDormant(bench.anew(), whole);
    }

    private void install(Path jar, boolean replace) throws Exception {
        addOns.install(List.of(jar), replace, false);
        tookEffect();
        watch();
    }

    private void tookEffect() {
        assertEquals(List.of(), addOns.takeEffect());
    }

    private void watch() {
        left.watch(Arrays.stream(program.context().getBundles())
                .filter(bundle -> ComingBundle.ID.equals(bundle.getSymbolicName()))
                .filter(bundle -> bundle.getState() == Bundle.ACTIVE)
                .findFirst()
                .orElseThrow());
    }

    private static void isWorked(WorkedProject worked, int version, String whole) {
        assertEquals(
                List.of(State.WORKED, State.WORKED, State.WORKED, State.WORKED), states(worked), () -> told(worked));
        assertEquals(Length.ofMm(2.25 * version), length(worked));
        assertEquals(whole, text(worked, "plain"));
    }

    private static void isDormant(WorkedProject worked, String whole) {
        assertEquals(
                List.of(State.WORKED, State.DORMANT, State.WAITING, State.DORMANT), states(worked), () -> told(worked));
        assertEquals(whole, text(worked, "plain"));
    }

    private static Object length(WorkedProject worked) {
        return worked.slips()
                .get("coming")
                .answers()
                .orElseThrow()
                .get("length")
                .orElseThrow();
    }

    private static List<State> states(WorkedProject worked) {
        return worked.slips().values().stream().map(WorkedSlip::state).toList();
    }

    private static String told(WorkedProject worked) {
        return worked.remarks().stream().map(String::valueOf).collect(Collectors.joining("\n"));
    }

    private static String text(WorkedProject worked, String slip) {
        return String.valueOf(worked.slips().get(slip).answers().orElseThrow());
    }

    /** What the framework keeps on disk, a folder for each bundle. */
    private long folders() throws Exception {
        try (var all = Files.walk(scratch.resolve("caches"))) {
            return all.filter(Files::isDirectory).count();
        }
    }
}
