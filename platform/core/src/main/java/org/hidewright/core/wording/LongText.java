package org.hidewright.core.wording;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Texts that nobody reads to their end, such as the corners of a hide that was cut from: beside others they are told by their beginning. */
public final class LongText {
    private static final int READ = 160;

    /** Of one among several. */
    private static final int EACH = 40;

    private static final String BETWEEN = "; ";

    private LongText() {}

    /** The text, or its beginning with an ellipsis. */
    public static String cut(String text) {
        return cut(text, READ);
    }

    /**
     * Where a long text is mostly numbers, such as the flaws of a hide with their corners, the beginning of each part between semicolons; any
     * other is whole, since a note is to be read.
     */
    public static String cutNumbers(String text) {
        long digits = text.chars().filter(Character::isDigit).count();
        long letters = text.chars().filter(Character::isLetter).count();
        return text.length() <= READ || digits <= letters
                ? text
                : Stream.of(text.split(";"))
                        .map(part -> cut(part.strip(), EACH))
                        .collect(Collectors.joining(BETWEEN));
    }

    private static String cut(String text, int read) {
        return text.length() <= read
                ? text
                : text.substring(0, Math.max(read / 2, text.lastIndexOf(' ', read) + 1)) + "…";
    }
}
