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
    private static final Path FOB = Path.of("../../samples/key-fob").toAbsolutePath();

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
        done("addons", "install", FOB.toString());
        assertTrue(done("addons").answer().contains("net.example.fieldkit.key-fob 0.1.0, installed by you: on\n"));
        String explained = done("explain", "key-fob").answer();
        assertTrue(explained.contains("Ring, inside"), explained);
        assertTrue(explained.contains("rivet | seam"), explained);
        // 2 · 80 mm and half a turn through the middle of 2.4 mm round a wire of 2.5 mm: π (1.25 + 1.2) = 7.70 mm
        String worked = done("work", "key-fob").answer();
        assertTrue(worked.contains("167.7\u00a0mm"), worked);
        assertTrue(worked.contains("4.8\u00a0mm"), "the rivet goes through both legs: " + worked);
        String seam =
                done("work", "key-fob", "closed-by=seam", "thickness=5-6 oz").answer();
        assertTrue(seam.contains("strip.left-front"), seam);
        assertFalse(seam.contains("\n  rivet "), "what is drawn for a rivet is not: " + seam);
    }

    @Test
    void itRefusesInItsOwnWords() throws Exception {
        done("addons", "install", FOB.toString());
        Ended ended = program.run("work", "key-fob", "width=40 mm");
        assertEquals(1, ended.code());
        String told = ended.told() + ended.answer();
        assertTrue(told.contains("A strip of 40\u00a0mm does not lie in a ring of 25\u00a0mm."), told);
    }

    @Test
    void itsPartsAreInThePacket() throws Exception {
        done("addons", "install", FOB.toString());
        Path project = Files.writeString(scratch.resolve("fob.json"), """
                {"hidewright": 1, "name": "Key fob", "slips": [
                  {"id": "fob", "calculator": "key-fob", "title": "Fob", "questions": {"length": "70 mm", "width": "20 mm"}}
                ]}
                """);
        Ended ended = program.run(
                "make", project.toString(), "--into", scratch.resolve("out").toString());
        assertEquals(0, ended.code(), ended.told());
        String svg = Files.readString(scratch.resolve("out/patterns-fob.svg"));
        assertTrue(svg.contains("147.69"), "140 mm and 7.697 mm");
        assertTrue(Files.size(scratch.resolve("out/patterns.pdf")) > 1000);
    }

    @Test
    void aSlipOfThePenIsToldWithLineAndColumn() throws Exception {
        Path spoilt = scratch.resolve("spoilt");
        try (Stream<Path> all = Files.walk(FOB)) {
            for (Path from : all.toList()) {
                Path to = spoilt.resolve(FOB.relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.writeString(to, Files.readString(from).replace("pi * (ring-wire", "pi * (ring-wier"));
                }
            }
        }
        done("addons", "install", spoilt.toString());
        Ended ended = program.run("work", "key-fob");
        assertFalse(ended.code() == 0);
        String told = ended.told() + ended.answer();
        assertTrue(told.contains("“ring-wier” is no name here; “ring-wire” is."), told);
        assertTrue(told.contains("line 26, column 20"), told);
        assertFalse(told.contains("line 27"), "what follows from it is not told again: " + told);
        assertFalse(told.contains("Exception"), told);
    }
}
