package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A template without Java, a folder with a manifest and one text, on the program as built. */
class TextTemplateIT {
    private static final Path TAG = Path.of("../../samples/specimen-tag").toAbsolutePath();

    @TempDir
    Path scratch;

    private BuiltProgram program;

    @BeforeEach
    void copy() throws IOException {
        program = BuiltProgram.copyInto(scratch);
    }

    private Ended done(String... arguments) throws Exception {
        Ended ended = program.run(arguments);
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
        return ended;
    }

    @Test
    void itAsksWorksAndIsDrawn() throws Exception {
        done("addons", "install", TAG.toString());
        assertTrue(done("addons").answer().contains("net.example.fieldkit.specimen-tag 0.1.0, installed by you: on\n"));
        String explained = done("explain", "specimen-tag").answer();
        assertTrue(explained.contains("From the lower edge to the upper."), explained);
        String worked = done("work", "specimen-tag", "tags=3").answer();
        assertTrue(worked.contains("750\u00a0mm"), worked);
        assertTrue(worked.contains("18\u00a0min"), "six minutes for each: " + worked);
    }

    @Test
    void theShippedFobTakesItsTurnFromTheStrapBundle() throws Exception {
        String explained = done("explain", "key-fob").answer();
        assertTrue(explained.contains("Ring, inside"), explained);
        assertTrue(explained.contains("rivet | seam"), explained);
        // 2 · 80 mm and half a turn round a wire of 2.5 mm, of 2.4 mm folded dry: π (1.25 + 0.6 · 2.4) = 8.45 mm
        String worked = done("work", "key-fob").answer();
        assertTrue(worked.contains("168.5\u00a0mm"), worked);
        assertTrue(worked.contains("\n  Rivet "), worked);
        assertTrue(worked.contains("4.8\u00a0mm"), "the rivet goes through both legs: " + worked);
        String seam =
                done("work", "key-fob", "closed-by=seam", "thickness=5-6 oz").answer();
        assertTrue(seam.contains("Strip, left front"), seam);
        assertFalse(seam.contains("\n  Rivet "), "what is drawn for a rivet is not: " + seam);
        done("addons", "off", "org.hidewright.straps");
        Ended without = program.run("work", "key-fob");
        assertEquals(1, without.code());
        assertTrue(
                (without.told() + without.answer()).contains("“bend” is asked here, and no such calculator is there."));
    }

    @Test
    void itRefusesInItsOwnWords() throws Exception {
        Ended ended = program.run("work", "key-fob", "width=40 mm");
        assertEquals(1, ended.code());
        String told = ended.told() + ended.answer();
        assertTrue(told.contains("A strip of 40\u00a0mm does not lie in a ring of 25\u00a0mm."), told);
    }

    @Test
    void itsPartsAreInThePacket() throws Exception {
        done("addons", "install", TAG.toString());
        Path project = Files.writeString(scratch.resolve("tags.json"), """
                {"hidewright": 1, "name": "Tags", "slips": [
                  {"id": "tags", "calculator": "specimen-tag", "title": "Tags", "questions": {"length": "91.25 mm", "width": "30 mm"}}
                ]}
                """);
        Ended ended = program.run(
                "make", project.toString(), "--into", scratch.resolve("out").toString());
        assertEquals(0, ended.code(), ended.told());
        String svg = Files.readString(scratch.resolve("out/patterns-tags.svg"));
        assertTrue(svg.contains("91.25"), "as it is cut");
        assertTrue(Files.size(scratch.resolve("out/patterns.pdf")) > 1000);
    }

    private Path copied(String was, String is) throws IOException {
        Path copy = scratch.resolve("copy");
        try (Stream<Path> all = Files.walk(TAG)) {
            for (Path from : all.toList()) {
                Path to = copy.resolve(TAG.relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.writeString(to, Files.readString(from).replace(was, is));
                }
            }
        }
        return copy;
    }

    @Test
    void aSlipOfThePenIsToldWithLineAndColumn() throws Exception {
        done("addons", "install", copied("min(width / 3", "min(widht / 3").toString());
        Ended ended = program.run("work", "specimen-tag");
        assertFalse(ended.code() == 0);
        String told = ended.told() + ended.answer();
        assertTrue(told.contains("“widht” is no name here; “width” is."), told);
        assertTrue(told.contains("line 18, column 20"), told);
        assertFalse(told.contains("line 46"), "what follows from it is not told again: " + told);
        assertFalse(told.contains("Exception"), told);
    }

    @Test
    void aChangeToItsFileShowsAtOnce() throws Exception {
        Path copy = copied("", "");
        done("addons", "install", copy.toString(), "--follow");
        assertTrue(done("work", "specimen-tag", "tags=2").answer().contains("500\u00a0mm"));
        Path text = copy.resolve("specimen-tag.json");
        Files.writeString(text, Files.readString(text).replace("tags * 250 mm", "tags * 300 mm"));
        assertTrue(done("work", "specimen-tag", "tags=2").answer().contains("600\u00a0mm"));
    }

    @Test
    void aNewTemplateMakesAPacket() throws Exception {
        Path own = scratch.resolve("lens-case");
        done("new", "template", own.toString());
        done("addons", "install", own.toString(), "--follow");
        Path project = scratch.resolve("lens-case-project.json");
        Ended begun = program.run(
                "new", "project", "--template", "lens-case", project.toString(), "--presets", "--language", "en");
        assertEquals(0, begun.code(), begun.told());
        assertTrue(begun.told().contains("Nobody has measured this yet"), begun.told());
        Ended made = program.run(
                "make", project.toString(), "--into", scratch.resolve("out").toString());
        assertEquals(0, made.code(), made.told());
        assertTrue(Files.exists(scratch.resolve("out/patterns-lens-case.svg")));
    }
}
