package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** docs/words.md lists every word of a label or key as the trade’s, a standard’s, everyday or ours. */
class VisibleWordsTest {
    private static final Path ROOT = Path.of("../..");

    @Test
    void everyVisibleWordIsListed() throws IOException {
        Set<String> listed = VisibleWords.listed(Files.readAllLines(ROOT.resolve("docs/words.md")));
        List<Path> files = VisibleWords.messagesFiles(ROOT);
        assertTrue(files.size() >= 4, "messages files found: " + files);
        Map<String, String> missing = new TreeMap<>();
        for (Path file : files) {
            VisibleWords.in(file).forEach((word, key) -> {
                if (!listed.contains(word)) {
                    missing.put(word, key + " in " + ROOT.relativize(file));
                }
            });
        }
        List<Path> templates = VisibleWords.templates(ROOT);
        assertTrue(templates.size() >= 4, "templates found: " + templates);
        for (Path file : templates) {
            VisibleWords.inTemplate(file).forEach((word, where) -> {
                if (!listed.contains(word)) {
                    missing.put(word, where);
                }
            });
        }
        assertEquals(Map.of(), missing, "not in docs/words.md");
    }

    @Test
    void aPlantedWordIsFound(@TempDir Path folder) throws IOException {
        Path planted = Files.writeString(
                folder.resolve("messages.properties"),
                "strap.gizmo = Frobnicator {0}\nstrap.gizmo.help = Not looked at\nnotice.x.what = Nor this\n");
        assertEquals(
                Set.of("strap", "gizmo", "frobnicator", "help"),
                VisibleWords.in(planted).keySet());
        Path template = Files.writeString(
                folder.resolve("x.json"),
                "{\"id\": \"gizmo-{nth}\",\n    \"thing\": \"2 mm\",\n \"label\": \"Frob\", \"help\": \"not\", \"options\": {\"a\": \"Nut\"}}");
        assertEquals(
                Set.of("gizmo", "frob", "a", "nut", "thing"),
                VisibleWords.inTemplate(template).keySet());
        assertEquals(
                Set.of("strap", "hide", "all", "and"),
                VisibleWords.listed(List.of(
                        "| strap | trade |",
                        "| hide | trade |",
                        "## Everyday",
                        "",
                        "Plain English:",
                        "",
                        "all, and.")));
    }
}
