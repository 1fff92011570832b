package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Kind;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A sample project of every template makes its packet on the program as built, with patterns and nothing to be looked at twice. */
class TemplatePacketsIT {
    private static final Path SAMPLES = Path.of("../../samples/templates").toAbsolutePath();

    @TempDir
    Path scratch;

    static List<Path> samples() throws IOException {
        try (Stream<Path> found = Files.list(SAMPLES)) {
            return found.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void everyTemplateHasASample() throws Exception {
        Catalogue catalogue = BundledCalculators.catalogue();
        Set<String> templates = new TreeSet<>();
        for (String id : catalogue.ids()) {
            Declaration declaration =
                    catalogue.find(id).orElseThrow().calculator().declaration();
            if (declaration.answers().stream().anyMatch(answer -> answer.kind() == Kind.ITEM)
                    && declaration.questions().stream().noneMatch(question -> question.kind() == Kind.ROWS)) {
                templates.add(id);
            }
        }
        assertEquals(
                templates,
                samples().stream()
                        .map(file -> file.getFileName().toString().replace(".json", ""))
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void itMakesAPacket(Path sample) throws Exception {
        BuiltProgram program = BuiltProgram.copyInto(scratch);
        Path out = scratch.resolve("out");
        Ended ended = program.run("make", sample.toString(), "--into", out.toString());
        String told = ended.told() + ended.answer();
        assertEquals(0, ended.code(), told);
        assertFalse(told.contains("Stop"), told);
        assertFalse(told.contains("Check"), told);
        assertTrue(Files.size(out.resolve("patterns.pdf")) > 2000);
        assertTrue(Files.size(out.resolve("job-card.pdf")) > 2000);
        try (Stream<Path> files = Files.list(out)) {
            List<String> names =
                    files.map(file -> file.getFileName().toString()).toList();
            assertTrue(
                    names.stream().anyMatch(name -> name.startsWith("patterns-") && name.endsWith(".svg")),
                    names.toString());
            assertTrue(
                    names.stream().anyMatch(name -> name.startsWith("patterns-") && name.endsWith(".dxf")),
                    names.toString());
        }
    }
}
