package org.hidewright.documents.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.TimeZone;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.documents.NeckStrapCard;
import org.hidewright.documents.OutsideTool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class JobCardPagesTest {
    private final PdfWriter writer = new PdfBoxWriter();

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void theJobCardStandsWholeAndTidyOnItsPages(Paper paper) {
        var card = NeckStrapCard.inEnglish();
        var words = PageChecks.hold(card, paper, writer.write(card, paper));
        assertTrue(words.pages().size() >= 4);
    }

    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void aLanguageOfLongerWordsChangesNothingOfThat(Paper paper) {
        var card = NeckStrapCard.inLongWords();
        PageChecks.hold(card, paper, writer.write(card, paper));
    }

    @Test
    void theSameDocumentGivesTheSameBytes() {
        byte[] first = writer.write(NeckStrapCard.inEnglish(), Paper.A4);
        TimeZone home = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            assertArrayEquals(first, new PdfBoxWriter().write(NeckStrapCard.inEnglish(), Paper.A4));
        } finally {
            TimeZone.setDefault(home);
        }
    }

    @Test
    void anotherRunOfTheProgramGivesTheSameBytesToo(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("card.pdf");
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        OtherRun.class.getName(),
                        file.toString())
                .inheritIO()
                .start();
        assertEquals(0, other.waitFor());
        assertEquals(digest(writer.write(NeckStrapCard.inEnglish(), Paper.A4)), digest(Files.readAllBytes(file)));
    }

    private static String digest(byte[] bytes) throws NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }

    /** Writes the card in a JVM of its own. */
    static final class OtherRun {
        public static void main(String[] arguments) throws IOException {
            Files.write(Path.of(arguments[0]), new PdfBoxWriter().write(NeckStrapCard.inEnglish(), Paper.A4));
        }
    }

    @Test
    void theFileNamesItsTitleAndDayAndNothingOfTheMachine() {
        byte[] pdf = writer.write(NeckStrapCard.inEnglish(), Paper.A4);
        List<String> told = OutsideTool.text(pdf, "pdfinfo", "-isodates", "FILE")
                .lines()
                .map(line -> line.replaceAll("\\s+", " "))
                .toList();
        assertTrue(told.contains("Title: Naturalist’s field kit – Binocular neck strap"), told::toString);
        assertTrue(told.contains("CreationDate: 2026-03-14T00:00:00Z"), told::toString);
        assertTrue(told.contains("ModDate: 2026-03-14T00:00:00Z"), told::toString);
    }

    @Test
    void theFileAsksThePrinterNotToScaleAndTellsItsLanguage() {
        byte[] pdf = writer.write(NeckStrapCard.inEnglish(), Paper.LETTER);
        String catalog = OutsideTool.text(pdf, "mutool", "show", "FILE", "trailer/Root/Lang");
        String viewer = OutsideTool.text(pdf, "mutool", "show", "FILE", "trailer/Root/ViewerPreferences");
        assertEquals("(en)", catalog.strip());
        assertTrue(viewer.contains("/PrintScaling /None"), viewer);
        assertTrue(viewer.contains("/DisplayDocTitle true"), viewer);
    }

    @Test
    void everyFontIsEmbeddedAsASubset() {
        String fonts = OutsideTool.text(writer.write(NeckStrapCard.inEnglish(), Paper.A4), "pdffonts", "FILE");
        List<String> rows = fonts.lines().skip(2).toList();
        assertEquals(2, rows.size(), fonts);
        rows.forEach(row -> assertTrue(row.matches("[A-Z]{6}\\+SourceSans3-.* yes +yes +yes .*"), row));
    }
}
