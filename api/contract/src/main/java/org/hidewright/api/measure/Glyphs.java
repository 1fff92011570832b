package org.hidewright.api.measure;

/**
 * The many shapes of one sign, brought to one shape each: no-break spaces, typographic dashes and minus signs, primes,
 * full-width letters and digits, vulgar fractions.
 *
 * <p>One {@code char} becomes one {@code char}, so that places in the plain text are places in the typed text.
 */
final class Glyphs {
    static final char TIMES = '×';
    static final char PLUS_MINUS = '±';

    private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFE58\uFE63";
    private static final String SLASHES = "\u2044\u2215";
    private static final String SINGLE_QUOTES = "\u2018\u2019\u2032\u00B4\u02B9\u02BC";
    private static final String DOUBLE_QUOTES = "\u201C\u201D\u2033\u02BA\u02DD";
    private static final String DEGREES = "\u00BA\u02DA";
    private static final String CROSSES = "*\u2715\u2716\u2A2F\u2217";
    /** Marks without width: joiners, direction marks, byte order mark. */
    private static final String INVISIBLE = "\u200B\u200C\u200D\u200E\u200F\u2060\uFEFF\u00AD";

    private static final String VULGAR = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final int[][] VULGAR_VALUES = {
        {1, 4}, {1, 2}, {3, 4}, {1, 7}, {1, 9}, {1, 10}, {1, 3}, {2, 3}, {1, 5}, {2, 5}, {3, 5}, {4, 5}, {1, 6}, {5, 6},
        {1, 8}, {3, 8}, {5, 8}, {7, 8}
    };

    private Glyphs() {}

    /** The text with every sign in its plain shape; as long as the text given. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            plain.append(plain(text.charAt(i)));
        }
        return plain.toString();
    }

    private static char plain(char sign) {
        if (sign > '\uFF00' && sign < '\uFF5F') {
            return plain((char) (sign - '\uFF01' + '!'));
        }
        if (Character.isDigit(sign)) {
            return (char) ('0' + Character.digit(sign, 10));
        }
        if (Character.isWhitespace(sign) || Character.isSpaceChar(sign) || INVISIBLE.indexOf(sign) >= 0) {
            return ' ';
        }
        if (DASHES.indexOf(sign) >= 0) {
            return '-';
        }
        if (SLASHES.indexOf(sign) >= 0) {
            return '/';
        }
        if (SINGLE_QUOTES.indexOf(sign) >= 0) {
            return '\'';
        }
        if (DOUBLE_QUOTES.indexOf(sign) >= 0) {
            return '"';
        }
        if (DEGREES.indexOf(sign) >= 0) {
            return '°';
        }
        return CROSSES.indexOf(sign) >= 0 ? TIMES : sign;
    }

    /** Whether the sign is a fraction in one piece, such as ½. */
    static boolean isVulgarFraction(char sign) {
        return VULGAR.indexOf(sign) >= 0;
    }

    /** The value of a fraction in one piece. */
    static double vulgarFraction(char sign) {
        int[] parts = VULGAR_VALUES[VULGAR.indexOf(sign)];
        return (double) parts[0] / parts[1];
    }
}
