package org.hidewright.distribution;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The words of a paper, read off its pages. */
final class PrintedText {
    private PrintedText() {}

    /** In the order they are read, lines and pages joined. */
    static String of(Path paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(paper.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\h]+", " ");
        }
    }
}
