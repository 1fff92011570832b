package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An add-on of a stranger from its jar to its removal, on the program as built. */
class AddOnsIT {
    private static final String SLEEVE = "net.example.fieldkit.jar-sleeve";
    private static final String STRAPS = "org.hidewright.straps";

    @TempDir
    Path scratch;

    private BuiltProgram program;
    private String jar;

    @BeforeEach
    void copy() throws IOException {
        program = BuiltProgram.copyInto(scratch);
        jar = BuiltProgram.sample("jar-sleeve").toString();
    }

    private BuiltProgram.Ended done(String... arguments) throws Exception {
        var ended = program.run(arguments);
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
        return ended;
    }

    @Test
    void anAddOnIsInstalledWorksAndGoesWithoutATrace() throws Exception {
        String before = done("addons").answer();
        assertTrue(before.contains(STRAPS + " 0.1.0, came with the program: on\n"), before);
        assertFalse(before.contains(SLEEVE), before);
        assertTrue(done("addons", "install", jar).answer().contains("A bundle is code with full rights"));
        String with = done("addons").answer();
        assertTrue(with.contains(SLEEVE + " 0.1.0, installed by you: on\n"), with);
        // Pi times the 68 mm through the middle of the leather (65 + 1 + 2), and 12 mm of overlap: 225.63 mm
        assertTrue(done("work", "jar-sleeve", "diameter=65 mm", "thickness=2 mm")
                .answer()
                .contains("226.0\u00a0mm"));
        done("addons", "remove", SLEEVE);
        assertEquals(before, done("addons").answer());
        assertEquals(
                2,
                program.run("work", "jar-sleeve", "diameter=65 mm", "thickness=2 mm")
                        .code());
    }

    @Test
    void slipsOfABundleThatIsOffAreKeptAndWorkedAgainWhenItIsBack() throws Exception {
        done("addons", "install", jar);
        Path project = Files.writeString(scratch.resolve("kit.json"), """
                {"hidewright": 1, "name": "Kit", "slips": [
                  {"id": "jar", "calculator": "jar-sleeve", "questions": {"diameter": "65 mm",   "thickness": "2 mm"}},
                  {"id": "strap", "calculator": "strap-width", "questions": {"hardware-inside-width": "25 mm"}},
                  {"id": "side", "calculator": "thickness", "questions": {"thickness": "2 mm"}}]}
                """);
        byte[] asTyped = Files.readAllBytes(project);
        String into = scratch.resolve("out").toString();
        done("make", project.toString(), "--into", into);
        String card = Files.readString(Path.of(into, "job-card.json"));

        done("addons", "off", SLEEVE);
        done("addons", "off", STRAPS);
        var without = program.run("make", project.toString(), "--into", into);
        assertTrue(without.told().contains("jar-sleeve"), without.told());
        String half = Files.readString(Path.of(into, "job-card.json"));
        assertTrue(half.contains("\"dormant\"") && half.contains("\"millimetres\""), half);
        assertArrayEquals(asTyped, Files.readAllBytes(project));
        assertTrue(program.run("work", "strap-width", "hardware-inside-width=25 mm")
                .told()
                .startsWith("“strap-width” is a calculator of " + STRAPS + ", which is turned off."));

        done("addons", "on", SLEEVE);
        done("addons", "on", STRAPS);
        done("make", project.toString(), "--into", into);
        assertEquals(card, Files.readString(Path.of(into, "job-card.json")));
    }

    @Test
    void settingsCanLieElsewhere() throws Exception {
        String elsewhere = scratch.resolve("club settings").toString();
        done("addons", "install", jar, "--settings", elsewhere);
        assertFalse(done("addons").answer().contains(SLEEVE));
        assertTrue(done("--settings=" + elsewhere, "addons").answer().contains(SLEEVE));
        assertTrue(done("addons", "--settings", elsewhere, "--without-addons")
                .answer()
                .contains(SLEEVE + " 0.1.0, installed by you: left out of this start\n"));
    }
}
