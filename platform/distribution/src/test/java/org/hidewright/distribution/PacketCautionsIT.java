package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What could hurt somebody is on the paper that lies at the bench: the words are looked for in the pages as they are printed,
 * not in what was meant to be printed.
 */
class PacketCautionsIT {
    private static final Path SAMPLES = Path.of("../../samples/projects").toAbsolutePath();

    /** Some words of each caution: the risk, and who or what comes before our advice. */
    private static final Map<String, List<String>> RISKS = Map.ofEntries(
            Map.entry("dye", List.of("Dyes, paints and finishes", "label and the safety data sheet", "air moves")),
            Map.entry("solvent", List.of("vapour that burns", "melt no thread ends", "rags", "local rules come first")),
            Map.entry("dust", List.of("leather dust", "Draw the dust off", "Local rules come first")),
            Map.entry("edge tools", List.of("Bevelers and skiving knives", "Cut away from the hand")),
            Map.entry("laser", List.of("leaves char and smoke", "never leave the machine alone")),
            Map.entry("struck tools", List.of("Punches and setters are struck", "before the eyes")),
            Map.entry("knife", List.of("keen blade", "sheathe it")),
            Map.entry("chrome", List.of("chromium(VI)", "ask the tanner for a test")),
            Map.entry("nickel", List.of("may hold nickel", "test by EN 1811", "rules where you sell")),
            Map.entry("small parts", List.of("small parts come off", "those who may", "local rules come first")),
            Map.entry("load", List.of("No load is worked out", "qualified person")));

    @TempDir
    static Path scratch;

    private static BuiltProgram program;

    @BeforeAll
    static void copy() {
        program = BuiltProgram.inPlace(scratch);
    }

    @Test
    void thePouchWarnsOfAllItsRisks() throws Exception {
        Path packet = packet("hand-lens-pouch.json");
        assertEquals(new TreeSet<>(RISKS.keySet()), warned(packet.resolve("job-card.pdf")));
        assertEquals(
                new TreeSet<>(List.of("dye", "solvent", "dust", "edge tools", "laser")),
                warned(packet.resolve("finishing-schedule.pdf")));
    }

    @Test
    void theCoverWarnsOfWhatIsDoneToItAndNoMore() throws Exception {
        Path packet = packet("field-notebook-cover.json");
        assertEquals(
                new TreeSet<>(List.of("dye", "solvent", "dust", "edge tools", "knife", "struck tools")),
                warned(packet.resolve("job-card.pdf")));
        assertEquals(
                new TreeSet<>(List.of("dye", "solvent", "dust", "edge tools")),
                warned(packet.resolve("finishing-schedule.pdf")));
    }

    /** A customer is handed the quote and not the maker’s workings. */
    @Test
    void theQuoteHasNeitherCostNorWorkings() throws Exception {
        String quote = PrintedText.of(packet("hand-lens-pouch.json").resolve("quote.pdf"));
        assertTrue(quote.contains("Belt pouch for a folding hand lens"), quote);
        for (String secret : List.of("Cost", "Margin", "Markup", "Profit", "Per hour", "Hands-on", "=")) {
            assertTrue(!quote.contains(secret), secret + " in " + quote);
        }
    }

    private static Path packet(String sample) throws Exception {
        Path packet = scratch.resolve(sample + " packet");
        if (!Files.exists(packet)) {
            var ended = program.run(
                    "make", SAMPLES.resolve(sample).toString(), "--into", packet.toString(), "--language", "en");
            assertEquals(0, ended.code(), ended.told());
        }
        return packet;
    }

    private static TreeSet<String> warned(Path paper) throws Exception {
        String text = PrintedText.of(paper);
        TreeSet<String> risks = new TreeSet<>();
        RISKS.forEach((risk, words) -> {
            if (text.contains(words.get(0))) {
                words.forEach(some -> assertTrue(text.contains(some), risk + " without “" + some + "”"));
                risks.add(risk);
            }
        });
        return risks;
    }
}
