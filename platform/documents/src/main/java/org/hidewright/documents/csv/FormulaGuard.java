package org.hidewright.documents.csv;

/**
 * Puts an apostrophe before whatever a spreadsheet could take for a formula, after the advice on "CSV injection" of the
 * OWASP community pages: a text that begins with {@code = + - @}, tab or carriage return. Beyond that, full-width and other
 * look-alike signs count as well, signs are found behind spaces, quotes and invisible characters, and a text is looked at
 * again after each semicolon, tab, bar and line end in it, since a spreadsheet set to another separator parts it there.
 */
final class FormulaGuard {
    private static final String SIGNS = "=+-@\uff1d\uff0b\uff0d\uff20\ufe66\ufe62\ufe63\ufe6b\u2212";
    private static final String SEPARATORS = ";|\t\r\n\u000b\f\u0085\u2028\u2029";
    private static final String QUOTES = "\"'`\u2018\u2019\u201c\u201d";

    private static final String BAD_BEGINNINGS = "\t\r\n";

    private FormulaGuard() {}

    /** The cell, which must not be empty, made harmless. */
    static String guarded(String cell) {
        StringBuilder safe = new StringBuilder();
        if (BAD_BEGINNINGS.indexOf(cell.charAt(0)) >= 0 && !looksLikeFormula(cell)) {
            safe.append('\'');
        }
        boolean atStart = true;
        for (int i = 0; i < cell.length(); i++) {
            if (atStart && looksLikeFormula(cell.substring(i))) {
                safe.append('\'');
            }
            safe.append(cell.charAt(i));
            atStart = SEPARATORS.indexOf(cell.charAt(i)) >= 0;
        }
        return safe.toString();
    }

    /** Judged to the end of the cell, since nobody knows at which separators it will be parted. */
    private static boolean looksLikeFormula(String rest) {
        int first = 0;
        while (first < rest.length() && isPassedOver(rest.charAt(first))) {
            first++;
        }
        return first < rest.length()
                && SIGNS.indexOf(rest.charAt(first)) >= 0
                && !PlainNumber.is(rest.substring(first).strip());
    }

    private static boolean isPassedOver(char c) {
        return Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.isISOControl(c)
                || Character.getType(c) == Character.FORMAT
                || QUOTES.indexOf(c) >= 0;
    }
}
