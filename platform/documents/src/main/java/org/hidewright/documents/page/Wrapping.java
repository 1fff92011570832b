package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks texts into lines. A line may end at a space, after a hyphen, dash or slash between letters, at a soft hyphen and at a zero-width
 * space; a word that is longer than a line is broken where the line is full, so that nothing is ever cut off.
 */
final class Wrapping {
    private static final char SOFT_HYPHEN = '\u00ad';
    private static final char ZERO_WIDTH_SPACE = '\u200b';
    private static final String BREAK_AFTER = "-\u2010\u2013\u2014/";

    private final Typeface typeface;

    Wrapping(Typeface typeface) {
        this.typeface = typeface;
    }

    /** At least one line, possibly empty. */
    List<String> lines(String text, Style style, double width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\\R", -1)) {
            wrap(paragraph, style, width, lines);
        }
        return lines;
    }

    /** Length of the longest stretch that is not broken unless it must be. */
    double longestWord(String text, Style style) {
        double longest = 0;
        for (String paragraph : text.split("\\R", -1)) {
            for (Chunk chunk : chunks(paragraph)) {
                longest = Math.max(longest, typeface.widthMm(style, chunk.withHyphen()));
            }
        }
        return longest;
    }

    /** Length of the longest line if nothing is broken. */
    double natural(String text, Style style) {
        double longest = 0;
        for (String paragraph : text.split("\\R", -1)) {
            longest = Math.max(
                    longest,
                    typeface.widthMm(
                            style, typeface.printable(visible(paragraph)).strip()));
        }
        return longest;
    }

    private void wrap(String paragraph, Style style, double width, List<String> lines) {
        String line = "";
        String space = "";
        Chunk last = null;
        for (Chunk chunk : chunks(paragraph)) {
            if (!line.isEmpty() && !fits(line + space + chunk.withHyphen(), style, width)) {
                lines.add(last != null && last.soft ? line + "-" : line);
                line = "";
                space = "";
            }
            String word = chunk.text;
            while (word.codePointCount(0, word.length()) > 1 && !fits(word, style, width)) {
                int end = fitting(word, style, width);
                lines.add(word.substring(0, end));
                word = word.substring(end);
            }
            line = line + space + word;
            space = chunk.spaceAfter ? " " : "";
            last = chunk;
        }
        lines.add(line);
    }

    private boolean fits(String text, Style style, double width) {
        return typeface.widthMm(style, text) <= width + 1e-6;
    }

    /** How many characters of a word fit, at least one letter. */
    private int fitting(String word, Style style, double width) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (!fits(word.substring(0, next), style, width)) {
                break;
            }
            end = next;
        }
        return end;
    }

    private List<Chunk> chunks(String paragraph) {
        List<Chunk> chunks = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        String text = paragraph.replace('\t', ' ');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ' ') {
                flush(word, chunks, true, false);
            } else if (c == SOFT_HYPHEN || c == ZERO_WIDTH_SPACE) {
                flush(word, chunks, false, c == SOFT_HYPHEN);
            } else {
                word.append(c);
                if (BREAK_AFTER.indexOf(c) >= 0 && betweenLetters(text, i)) {
                    flush(word, chunks, false, false);
                }
            }
        }
        flush(word, chunks, false, false);
        return chunks;
    }

    /** "2-3 oz" and "1/2 in" stay whole. */
    private static boolean betweenLetters(String text, int i) {
        return i > 0
                && i + 1 < text.length()
                && Character.isLetter(text.charAt(i - 1))
                && Character.isLetter(text.charAt(i + 1));
    }

    private void flush(StringBuilder word, List<Chunk> chunks, boolean spaceAfter, boolean soft) {
        if (word.length() > 0) {
            chunks.add(new Chunk(typeface.printable(word.toString()), spaceAfter, soft));
            word.setLength(0);
        } else if (spaceAfter && !chunks.isEmpty()) {
            Chunk last = chunks.remove(chunks.size() - 1); // "left - right": the space follows a mark that ends a chunk
            chunks.add(new Chunk(last.text, true, false));
        }
    }

    private static String visible(String text) {
        return text.replace('\t', ' ')
                .replace(String.valueOf(SOFT_HYPHEN), "")
                .replace(String.valueOf(ZERO_WIDTH_SPACE), "");
    }

    private record Chunk(String text, boolean spaceAfter, boolean soft) {
        String withHyphen() {
            return soft ? text + "-" : text;
        }
    }
}
