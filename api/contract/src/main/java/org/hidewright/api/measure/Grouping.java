package org.hidewright.api.measure;

/** Finds numbers with marks between their thousands, which are refused, and numbers with two decimal marks. */
final class Grouping {
    private static final String BETWEEN_THOUSANDS = ".,'_ ";

    private final Cursor cursor;

    Grouping(Cursor cursor) {
        this.cursor = cursor;
    }

    /**
     * Refuses a number that begins at a place with digits if it is grouped or has two marks.
     *
     * <p>One point or comma alone is a decimal mark; only a comma before exactly three digits could as well part
     * thousands, and a strap cut a thousand times too short cannot be uncut: {@code 1,234} is refused, {@code 0,794} and
     * {@code 1.234} are not.
     */
    void refuse(int start) throws Unclear {
        int afterWhole = cursor.afterDigits(start);
        char mark = cursor.see(afterWhole);
        int end = afterWhole;
        int groups = 0;
        if (afterWhole - start <= 3 && cursor.see(start) != '0' && BETWEEN_THOUSANDS.indexOf(mark) >= 0) {
            while (cursor.see(end) == mark && threeDigitsAt(end + 1)) {
                end += 4;
                groups++;
            }
        }
        boolean decimals = Cursor.isMark(cursor.see(end)) && cursor.see(end) != mark;
        int tail = decimals ? cursor.afterDigits(end + 1) : end;
        boolean markMeansDecimal = Cursor.isMark(mark) && groups == 1 && tail == end;
        if (groups > 0 && !markMeansDecimal && ends(tail) && !fractionFollows(end, mark)) {
            String plain = cursor.slice(start, end).replace(String.valueOf(mark), "") + cursor.slice(end, tail);
            throw new Unclear(
                    Trouble.GROUPING,
                    start,
                    cursor.replaced(start, tail, plain.replace(',', '.')),
                    cursor.typed(start, tail));
        }
        if (groups == 1 && mark == ',' && tail == end && ends(tail)) {
            String whole = cursor.slice(start, afterWhole);
            String three = cursor.slice(afterWhole + 1, end);
            throw new Unclear(
                    Trouble.COMMA_BEFORE_THREE,
                    start,
                    cursor.replaced(start, end, whole + three),
                    cursor.typed(start, end),
                    whole + three,
                    whole + "." + three);
        }
        refuseTwoMarks(start, afterWhole);
    }

    private boolean threeDigitsAt(int place) {
        return cursor.afterDigits(place) - place == 3;
    }

    private boolean ends(int place) {
        return !Cursor.isMark(cursor.see(place)) && cursor.see(place) != '/';
    }

    /** {@code 1 100/128} is a whole number and a fraction, not one thousand one hundred. */
    private boolean fractionFollows(int end, char mark) {
        return mark == ' ' && cursor.see(cursor.afterSpaces(end)) == '/';
    }

    private void refuseTwoMarks(int start, int afterWhole) throws Unclear {
        int end = afterWhole;
        int marks = 0;
        while (Cursor.isMark(cursor.see(end))) {
            end = cursor.afterDigits(end + 1);
            marks++;
        }
        if (marks > 1) {
            throw new Unclear(Trouble.TWO_MARKS, start, null, cursor.typed(start, end));
        }
    }
}
