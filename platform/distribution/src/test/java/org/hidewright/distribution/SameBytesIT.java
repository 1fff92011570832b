package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same project on the same day gives the same packet, byte for byte, in another process. */
class SameBytesIT {
    private static final Path SAMPLES = Path.of("../../samples/projects").toAbsolutePath();

    @TempDir
    Path scratch;

    @ParameterizedTest
    @ValueSource(strings = {"hand-lens-pouch.json", "field-notebook-cover.json"})
    void anotherProcessWritesTheSame(String sample) throws Exception {
        BuiltProgram program = BuiltProgram.inPlace(scratch.resolve("program"));
        List<Path> packets = List.of(scratch.resolve("one"), scratch.resolve("two"), scratch.resolve("three"));
        for (Path packet : packets) {
            var ended = program.run(
                    "make",
                    SAMPLES.resolve(sample).toString(),
                    "--into",
                    packet.toString(),
                    "--date",
                    "2026-03-01",
                    "--drawings",
                    "svg,dxf,dxf-r12",
                    "--language",
                    "en");
            assertEquals(0, ended.code(), ended.told());
        }
        try (Stream<Path> files = Files.list(packets.get(0))) {
            List<Path> all = files.toList();
            assertTrue(all.size() >= 8, all.toString());
            for (Path file : all) {
                for (Path other : packets.subList(1, 3)) {
                    assertArrayEquals(
                            Files.readAllBytes(file),
                            Files.readAllBytes(other.resolve(file.getFileName())),
                            file.toString());
                }
            }
        }
    }
}
