package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bundles that come and go while the program runs. */
class LiveAddOnsIT {
    private static final String STRAPS = "org.hidewright.straps";

    @TempDir
    Path scratch;

    private ProgramInProcess program;
    private AddOns addOns;
    private Catalogue catalogue;

    @BeforeEach
    void start() throws Exception {
        program = ProgramInProcess.start(scratch);
        addOns = program.service(AddOns.class);
        catalogue = program.service(Catalogue.class);
    }

    @AfterEach
    void stop() throws Exception {
        program.close();
    }

    private AddOn.State state(String id) {
        return addOns.all().stream()
                .filter(addOn -> addOn.id().equals(id))
                .findFirst()
                .orElseThrow()
                .state();
    }

    private void turn(String id, boolean on) throws Exception {
        addOns.turn(id, on);
        assertEquals(List.of(), addOns.takeEffect());
        assertEquals(on ? AddOn.State.ON : AddOn.State.OFF, state(id));
    }

    @Test
    void aBundleThatIsTurnedOffIsGoneAtOnceAndComesBack() throws Exception {
        assertTrue(catalogue.find("strap-width").isPresent());
        turn(STRAPS, false);
        assertTrue(catalogue.find("strap-width").isEmpty());
        assertFalse(catalogue.ids().contains("strap-width"));
        turn(STRAPS, true);
        assertTrue(catalogue.find("strap-width").isPresent());
    }

    @Test
    void aTemplateThatIsATextGoesToo() throws Exception {
        assertTrue(catalogue.find("key-fob").isPresent());
        turn("org.hidewright.key-fob", false);
        assertTrue(catalogue.find("key-fob").isEmpty());
        turn("org.hidewright.key-fob", true);
        assertTrue(catalogue.find("key-fob").isPresent());
    }

    @Test
    void slipsOfABundleThatIsGoneAreDormantAndComeBackWhole() throws Exception {
        var project = ProjectReader.read(
                        Files.readString(Path.of("..", "..", "samples", "projects", "binocular-neck-strap.json")))
                .project()
                .orElseThrow();
        WorkedProject before = new Bench(catalogue).work(project);
        assertTrue(before.slips().values().stream().anyMatch(slip -> slip.state() == State.WORKED));
        turn(STRAPS, false);
        WorkedProject without = new Bench(catalogue).work(project, before);
        assertTrue(without.slips().values().stream().anyMatch(slip -> slip.state() == State.DORMANT));
        turn(STRAPS, true);
        WorkedProject after = new Bench(catalogue).work(project, without);
        before.slips().forEach((id, slip) -> {
            assertEquals(slip.state(), after.slips().get(id).state(), id);
            assertEquals(slip.answers(), after.slips().get(id).answers(), id);
        });
    }

    @Test
    void aStrangersBundleIsInstalledAndTakenAwayWhileTheProgramRuns() throws Exception {
        Path jar;
        try (Stream<Path> files = Files.list(Path.of("..", "..", "samples", "jar-sleeve", "target"))) {
            jar = files.filter(file -> file.toString().endsWith(".jar"))
                    .findFirst()
                    .orElseThrow();
        }
        addOns.install(List.of(jar), false, false);
        assertTrue(catalogue.find("jar-sleeve").isEmpty(), "nothing of it runs yet");
        assertEquals(List.of(), addOns.takeEffect());
        assertTrue(catalogue.find("jar-sleeve").isPresent());
        addOns.remove("net.example.fieldkit.jar-sleeve");
        assertEquals(List.of(), addOns.takeEffect());
        assertTrue(catalogue.find("jar-sleeve").isEmpty());
    }

    @Test
    void aHundredRoundsLeaveNothingBehind() throws Exception {
        int bundles = program.context().getBundles().length;
        for (int i = 0; i < 100; i++) {
            turn(STRAPS, false);
            turn(STRAPS, true);
        }
        assertEquals(bundles, program.context().getBundles().length);
        assertTrue(catalogue.find("strap-width").isPresent());
    }
}
