package org.hidewright.documents.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.document.Document;
import org.hidewright.core.paper.Paper;
import org.hidewright.documents.pdf.PrintedWords.Page;
import org.hidewright.documents.pdf.PrintedWords.Word;

/** What must hold of the pages of any document. */
final class PageChecks {
    static final double LEFT = 24;
    static final double RIGHT = 18;
    static final double TOP = 14;
    static final double BOTTOM = 14;
    private static final double DOT = 1 / PrintedInk.DOTS_PER_MM;

    private PageChecks() {}

    /** Checks all of it and returns the words found. */
    static PrintedWords hold(Document document, Paper paper, byte[] pdf) {
        PrintedWords words = PrintedWords.of(pdf);
        everyTextAppears(document, paper, pdf);
        int number = 0;
        for (Page page : words.pages()) {
            number++;
            assertEquals(paper.widthMm(), page.width(), 0.01);
            assertEquals(paper.heightMm(), page.height(), 0.01);
            framed(document, page, number, words.pages().size());
            tidy(paper, pdf, page, number);
        }
        return words;
    }

    /** Words and ink inside the margins, no word on another. */
    static void tidy(Paper paper, byte[] pdf, Page page, int number) {
        insideMargins(paper, page, number);
        nothingOverlaps(page, number);
        inkInsideMargins(pdf, number);
    }

    private static void everyTextAppears(Document document, Paper paper, byte[] pdf) {
        String body = PrintedWords.body(pdf, paper);
        List<String> texts = DocumentTexts.of(document);
        assertFalse(texts.isEmpty());
        for (String text : texts) {
            assertTrue(body.contains(text), () -> "missing on paper: " + text + "\nin " + body);
        }
    }

    private static void framed(Document document, Page page, int number, int pages) {
        String all = String.join("", page.words().stream().map(Word::text).toList());
        for (String text :
                List.of(document.project(), document.title(), document.dateText(), document.pageText(number, pages))) {
            String solid = text.replaceAll("[\\s\\p{Z}]", "");
            assertTrue(unescaped(all).contains(solid), () -> "page " + number + " lacks " + text);
        }
    }

    static String unescaped(String text) {
        return text.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
    }

    private static void insideMargins(Paper paper, Page page, int number) {
        for (Word word : page.words()) {
            boolean inside = word.left() >= LEFT - 0.05
                    && word.right() <= paper.widthMm() - RIGHT + 0.05
                    && word.top() >= TOP - 0.05
                    && word.bottom() <= paper.heightMm() - BOTTOM + 0.05;
            assertTrue(inside, () -> "outside the margins of page " + number + ": " + word);
        }
    }

    static void nothingOverlaps(Page page, int number) {
        List<Word> words = page.words();
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                Word one = words.get(i);
                Word other = words.get(j);
                assertFalse(one.meets(other), () -> "on page " + number + " " + one + " lies on " + other);
            }
        }
    }

    static void inkInsideMargins(byte[] pdf, int number) {
        double[] margins = PrintedInk.of(pdf, number).margins();
        double[] least = {LEFT, TOP, RIGHT, BOTTOM};
        for (int side = 0; side < 4; side++) {
            double margin = margins[side];
            double wanted = least[side] - 2 * DOT; // half a line's weight and the painter's soft edge
            assertTrue(margin >= wanted, () -> "ink " + margin + " mm from an edge of page " + number);
        }
    }
}
