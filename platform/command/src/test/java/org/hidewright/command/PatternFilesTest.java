package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.command.kit.Plate;
import org.hidewright.core.paper.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Patterns in a packet: on paper and as files for machines, of the kinds asked for. */
class PatternFilesTest {
    private final Terminal terminal = new Terminal(new Plate());

    @TempDir
    Path folder;

    private int make(String... more) throws Exception {
        Path file = folder.resolve("project.json");
        Files.writeString(
                file,
                "{\"hidewright\": 1, \"name\": \"Kit\", \"slips\": [{\"id\": \"case\", \"calculator\": \"kit-plate\"}]}");
        List<String> arguments = new ArrayList<>(
                List.of("make", file.toString(), "--into", folder.resolve("out").toString(), "--language=en"));
        arguments.addAll(List.of(more));
        return terminal.run(arguments.toArray(String[]::new));
    }

    private List<String> patterns() throws Exception {
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("patterns"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void theyAreWrittenInTheUsualKindsAndListed() throws Exception {
        assertEquals(ExitCode.DONE, make());
        assertEquals(List.of("patterns-case.dxf", "patterns-case.svg", "patterns.pdf"), patterns());
        assertEquals("[front, front.turned-over]", Files.readString(folder.resolve("out/patterns-case.svg")));
        assertEquals(
                "[\"job-card.pdf\",\"patterns.pdf\",\"patterns-case.svg\",\"patterns-case.dxf\"]",
                new ObjectMapper()
                        .readTree(folder.resolve("out/job-card.json").toFile())
                        .get("documents")
                        .toString());
    }

    @Test
    void otherKindsOrNoneAreWrittenWhereTheyAreAskedFor() throws Exception {
        make();
        make("--drawings", "old, svg");
        assertEquals(List.of("patterns-case.old", "patterns-case.svg", "patterns.pdf"), patterns());
        assertTrue(terminal.err.contains("patterns-case.dxf was removed"), terminal.err);
        make("--drawings", "none");
        assertEquals(List.of("patterns-case.old", "patterns.pdf"), patterns(), "no kind of ours ends so");
    }

    @Test
    void aKindOrPaperThatIsNotKnownIsToldWithThoseThatAre() throws Exception {
        assertEquals(ExitCode.NOT_UNDERSTOOD, make("--drawings", "svg,dwf"));
        assertTrue(
                terminal.err.contains("There is no kind of drawing file “dwf”. There are: svg, dxf, old, none."),
                terminal.err);
        assertEquals(ExitCode.NOT_UNDERSTOOD, make("--pattern-paper", "B5"));
        assertTrue(
                terminal.err.contains("There is no paper “B5”. There are: A4, Letter, Tabloid, A3, A2, A1, A0."),
                terminal.err);
    }

    @Test
    void patternsCanHaveALargerPaper() throws Exception {
        make("--pattern-paper", "a2");
        assertEquals(Paper.A2, terminal.papers.get("Patterns"));
        assertEquals(Paper.A4, terminal.papers.get("Job card"));
        make("--paper", "letter");
        assertEquals(Paper.LETTER, terminal.papers.get("Patterns"));
    }
}
