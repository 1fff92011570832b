package org.hidewright.api.measure;

/** Reads one number: decimal, fraction, or whole number with a fraction. */
final class NumberReader {
    private static final int GREATEST_EXPONENT = 30;

    private final Cursor cursor;

    NumberReader(Cursor cursor) {
        this.cursor = cursor;
    }

    /** Reads the number under the cursor and leaves the cursor after it. */
    Count read() throws Unclear {
        int start = cursor.at();
        boolean negative = cursor.peek() == '-';
        if (negative || cursor.peek() == '+') {
            cursor.moveTo(cursor.afterSpaces(start + 1));
        }
        if (!cursor.numberAt(cursor.at())) {
            throw new Unclear(Trouble.NOT_A_NUMBER, start, null, cursor.wordFrom(start));
        }
        double value = unsigned();
        int end = cursor.at();
        refuseSecondNumber(start, end);
        return new Count(negative ? -value : value, start, end);
    }

    private double unsigned() throws Unclear {
        int start = cursor.at();
        int afterWhole = cursor.afterDigits(start);
        if (afterWhole == start) {
            return Glyphs.isVulgarFraction(cursor.peek()) ? vulgar(start) : decimal(start);
        }
        new Grouping(cursor).refuse(start);
        if (cursor.see(cursor.afterSpaces(afterWhole)) == '/') {
            return fraction(start);
        }
        int fraction = fractionAfterWhole(start, afterWhole);
        if (fraction < 0) {
            return decimal(start);
        }
        double whole = Double.parseDouble(cursor.slice(start, afterWhole));
        if (Glyphs.isVulgarFraction(cursor.see(fraction))) {
            return whole + vulgar(fraction);
        }
        double part = fraction(fraction);
        if (part >= 1) {
            throw new Unclear(
                    Trouble.IMPROPER_MIXED,
                    fraction,
                    null,
                    cursor.typed(start, cursor.at()),
                    cursor.typed(fraction, cursor.at()));
        }
        return whole + part;
    }

    /**
     * Where the fraction of a mixed number begins, or -1. A hyphen joins them ({@code 1-1/2}) only between a whole
     * number above zero and a proper fraction, where a range would be reversed; {@code 0-1/2} and {@code 1-3/2} are
     * ranges.
     */
    private int fractionAfterWhole(int start, int afterWhole) {
        int next = cursor.afterSpaces(afterWhole);
        if (Glyphs.isVulgarFraction(cursor.see(next)) || next > afterWhole && slashAfterDigits(next)) {
            return next;
        }
        boolean joined = cursor.see(afterWhole) == '-' && Double.parseDouble(cursor.slice(start, afterWhole)) > 0;
        return joined && properFractionAt(afterWhole + 1) ? afterWhole + 1 : -1;
    }

    private boolean slashAfterDigits(int place) {
        int after = cursor.afterDigits(place);
        return after > place && cursor.see(cursor.afterSpaces(after)) == '/';
    }

    private boolean properFractionAt(int place) {
        if (Glyphs.isVulgarFraction(cursor.see(place))) {
            return true;
        }
        int slash = cursor.afterDigits(place);
        int after = cursor.afterDigits(slash + 1);
        if (slash == place || cursor.see(slash) != '/' || after == slash + 1) {
            return false;
        }
        return Double.parseDouble(cursor.slice(place, slash)) < Double.parseDouble(cursor.slice(slash + 1, after));
    }

    private double vulgar(int place) {
        cursor.moveTo(place + 1);
        return Glyphs.vulgarFraction(cursor.see(place));
    }

    /** Reads {@code 3/32} from a place where digits stand. */
    private double fraction(int start) throws Unclear {
        int afterTop = cursor.afterDigits(start);
        int bottom = cursor.afterSpaces(cursor.afterSpaces(afterTop) + 1);
        int end = cursor.afterDigits(bottom);
        if (end == bottom) {
            throw new Unclear(
                    Trouble.FRACTION, start, null, cursor.typed(start, bottom).strip());
        }
        double below = Double.parseDouble(cursor.slice(bottom, end));
        if (below == 0) {
            throw new Unclear(Trouble.ZERO_DENOMINATOR, start, null, cursor.typed(start, end));
        }
        cursor.moveTo(end);
        return Double.parseDouble(cursor.slice(start, afterTop)) / below;
    }

    /** Reads {@code 1.5}, {@code .5}, {@code 0,8} or {@code 1.5e-3}; that there is but one mark is seen to before. */
    private double decimal(int start) throws Unclear {
        int end = cursor.afterDigits(start);
        if (Cursor.isMark(cursor.see(end))) {
            end = cursor.afterDigits(end + 1);
        }
        String digits = cursor.slice(start, end).replace(',', '.');
        int exponent = end;
        if (cursor.see(end) == 'e' || cursor.see(end) == 'E') {
            char sign = cursor.see(end + 1);
            int first = sign == '-' || sign == '+' ? end + 2 : end + 1;
            end = cursor.afterDigits(first);
            if (end == first) {
                end = exponent;
            } else if (end - first > 3 || Integer.parseInt(cursor.slice(first, end)) > GREATEST_EXPONENT) {
                throw new Unclear(Trouble.TOO_LARGE, start, null, cursor.wordFrom(start));
            }
        }
        cursor.moveTo(end);
        return Double.parseDouble(digits + cursor.slice(exponent, end));
    }

    private void refuseSecondNumber(int start, int end) throws Unclear {
        int next = cursor.afterSpaces(end);
        if (cursor.see(next) == '/') {
            throw new Unclear(Trouble.FRACTION, start, null, cursor.typed(start, next + 1));
        }
        if (cursor.numberAt(next)) {
            throw new Unclear(Trouble.TWO_NUMBERS, next, null, cursor.typed(start, end), cursor.wordFrom(next));
        }
    }
}
