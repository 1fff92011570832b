package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the author’s guide shows as Java is the code of the samples and plug-ins, which are compiled and tested. */
class QuotedCodeTest {
    private static final Path ROOT = Path.of("../..");

    @Test
    void theGuideQuotesTheSamples() throws IOException {
        String guide = Files.readString(ROOT.resolve("docs/authors-guide.md"));
        List<String> quoted = QuotedCode.in(guide);
        assertTrue(quoted.size() >= 6, "quoted: " + quoted);
        List<String> sources = new ArrayList<>(QuotedCode.sources(ROOT.resolve("samples")));
        sources.addAll(QuotedCode.sources(ROOT.resolve("plugins")));
        assertEquals(List.of(), QuotedCode.missing(guide, sources));
    }

    @Test
    void whatIsChangedInAQuoteIsFound() {
        List<String> sources =
                List.of("record Jar(\n    @Asked(min = \"1 mm\")\n    Length diameter) {}\n\nint more() {}");
        assertEquals(List.of(), QuotedCode.missing(guide("record Jar(@Asked"), List.of("x record Jar(@Asked y")));
        assertEquals(
                List.of(),
                QuotedCode.missing(
                        guide("record Jar(\n @Asked(min = \"1 mm\") Length diameter) {}\n…\nint more() { … }"),
                        sources));
        assertEquals(
                List.of("record Jar( @Asked(min = \"2 mm\") Length diameter) {}"),
                QuotedCode.missing(
                        guide("record Jar(\n @Asked(min = \"2 mm\") Length diameter) {}\n\nint more()"), sources));
    }

    private static String guide(String code) {
        return "Text.\n\n```java\n" + code + "\n```\nMore.";
    }
}
