package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.spy;
import static org.mockito.Mockito.when;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.document.Section;
import org.hidewright.command.kit.Strap;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Contributor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents beside the job card: written and listed with it, never left behind old, never written over what is not of a packet. */
class PapersApartTest {
    private final Catalogue catalogue = spy(Catalogue.of("org.example.kit", RecordCalculator.of(new Strap())));
    private final Terminal terminal = new Terminal(catalogue);

    @TempDir
    Path folder;

    private static final String WORKED =
            "{'id': 'a', 'calculator': 'kit-strap', 'questions': {'thickness': '2 mm', 'core': {'flat-ring': {'inside': 20}}, 'edge': {'bevel': 1}, 'sections': []}}"
                    .replace('\'', '"');

    private int make(List<String> papers, String... more) throws Exception {
        return make(WORKED, papers, more);
    }

    private int make(String slips, List<String> papers, String... more) throws Exception {
        when(catalogue.contributors())
                .thenReturn(List.of(new Contributor(
                        "org.example.kit",
                        job -> papers.stream()
                                .map(name -> Section.of("org.example.kit." + name, name)
                                        .apart())
                                .toList())));
        Path file = folder.resolve("project.json");
        Files.writeString(file, "{\"hidewright\": 1, \"name\": \"Kit\", \"slips\": [" + slips + "]}");
        List<String> arguments = new ArrayList<>(
                List.of("make", file.toString(), "--into", folder.resolve("out").toString(), "--language=en"));
        arguments.addAll(List.of(more));
        return terminal.run(arguments.toArray(String[]::new));
    }

    private List<String> written() throws Exception {
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void eachIsWrittenAndTheDataListsThem() throws Exception {
        make(List.of("quote", "list"));
        assertEquals(List.of("job-card.csv", "job-card.json", "job-card.pdf", "list.pdf", "quote.pdf"), written());
        assertEquals(
                "[\"job-card.pdf\",\"quote.pdf\",\"list.pdf\"]",
                new ObjectMapper()
                        .readTree(folder.resolve("out/job-card.json").toFile())
                        .get("documents")
                        .toString());
    }

    @Test
    void onesThatAreNoLongerMadeAreRemovedAndTheOthersRenewed() throws Exception {
        make(List.of("quote", "list"));
        Files.writeString(folder.resolve("out/list.pdf"), "old");
        make(List.of("list"));
        assertEquals(List.of("job-card.csv", "job-card.json", "job-card.pdf", "list.pdf"), written());
        assertEquals("%PDF of a test", Files.readString(folder.resolve("out/list.pdf")));
        assertTrue(
                terminal.err.contains(folder.resolve("out/quote.pdf")
                        + " was removed: it was of the earlier packet, and nothing of this project makes it any more."),
                terminal.err);
    }

    /** What is turned off or half typed does not say that its papers are not wanted any more. */
    @Test
    void onesThatAreNotMadeWhileASlipIsNotWorkedAreKept() throws Exception {
        make(List.of("quote", "list"));
        String dormant = WORKED + ", {\"id\": \"b\", \"calculator\": \"nowhere\"}";
        make(dormant, List.of("list"));
        assertTrue(written().contains("quote.pdf"), written().toString());
        assertTrue(
                terminal.err.contains(folder.resolve("out/quote.pdf")
                        + " is kept from the earlier packet: not every slip is worked now."),
                terminal.err);
        make(dormant, List.of("list"));
        assertTrue(written().contains("quote.pdf"), "and stays the packet’s own");
        make(dormant, List.of("list", "quote"));
        assertFalse(terminal.err.contains("not of a packet"), terminal.err);
        make(WORKED.replace("2 mm", "half"), List.of("list"));
        assertTrue(written().contains("quote.pdf"), "half typed");
        make(List.of("list"));
        assertFalse(written().contains("quote.pdf"), written().toString());
    }

    @Test
    void aFileOfThatNameThatIsOfNoPacketIsKept() throws Exception {
        make(List.of());
        Files.writeString(folder.resolve("out/quote.pdf"), "mine");
        assertEquals(ExitCode.NOT_UNDERSTOOD, make(List.of("quote")));
        assertTrue(
                terminal.err.contains(
                        folder.resolve("out/quote.pdf")
                                + " is not of a packet. Name another folder with --into, or none, for one of its own in out/; or add --replace to write over it."),
                terminal.err);
        assertEquals("mine", Files.readString(folder.resolve("out/quote.pdf")));
        make(List.of("quote"), "--replace");
        assertEquals("%PDF of a test", Files.readString(folder.resolve("out/quote.pdf")));
        assertFalse(terminal.err.contains("not of a packet"), terminal.err);
    }

    @Test
    void aListThatNamesFilesElsewhereRemovesNone() throws Exception {
        make(List.of());
        Path elsewhere = Files.writeString(folder.resolve("kept.pdf"), "mine");
        Path data = folder.resolve("out/job-card.json");
        Files.writeString(
                data,
                Files.readString(data)
                        .replace("\"job-card.pdf\"", "\"../kept.pdf\", \"" + elsewhere + "\", 7, \"job-card.csv\""));
        make(List.of());
        assertEquals("mine", Files.readString(elsewhere));
        assertEquals(List.of("job-card.csv", "job-card.json", "job-card.pdf"), written());
    }
}
