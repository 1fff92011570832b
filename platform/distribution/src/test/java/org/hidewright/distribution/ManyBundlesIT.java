package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two hundred add-ons at once. What each costs a start is measured in {@code platform/benchmarks/bundles}. */
class ManyBundlesIT {
    private static final List<String> IDS = IntStream.range(0, 200)
            .mapToObj(i -> String.format(Locale.ROOT, "%c%02d", 'p' + i / 100, i % 100))
            .toList();

    @TempDir
    Path scratch;

    private BuiltProgram program;

    private String done(String... arguments) throws Exception {
        Ended ended = program.run(arguments);
        assertEquals("", ended.told());
        assertEquals(0, ended.code());
        return ended.answer();
    }

    @Test
    void allOfTwoHundredStartAndAreOffered() throws Exception {
        program = BuiltProgram.inPlace(scratch);
        Path given = scratch.resolve("given");
        StrangeBundle one = StrangeBundle.odd(
                "@Answered(unit = \"mm\", by = \"s\", lead = true) Length length",
                "public List<Source> sources() { return List.of(Source.of(\"s\", Source.Kind.DEFINITION)); }",
                "return Outcome.of(new A(asked.thickness().times(2)));");
        for (String id : IDS) {
            one.again(id).pack(given, id + ".jar");
        }
        done("addons", "install", given.toString());
        for (String start : List.of("the first start", "one that finds the notes of the first")) {
            String offered = done("explain");
            for (String id : IDS) {
                assertTrue(offered.contains("\n  " + id + " "), start + " offers " + id + ": " + offered);
            }
        }
        String on = done("addons");
        assertEquals(
                200,
                Pattern.compile("net\\.example\\.[pq]\\d\\d 1\\.0\\.0, installed by you: on\\n")
                        .matcher(on)
                        .results()
                        .count());
        for (String id : List.of(IDS.get(0), IDS.get(99), IDS.get(199))) {
            assertTrue(done("work", id, "thickness=3 mm").contains("6\u00a0mm"), id);
        }
    }
}
