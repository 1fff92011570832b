package org.hidewright.api.measure;

import java.util.Optional;
import java.util.OptionalInt;

/** Reads one quantity as written: a number, a range or a spread, each number with its unit if it has one. */
final class AmountReader {
    private final Cursor cursor;
    private final UnitReader units;
    private final NumberReader numbers;

    AmountReader(Cursor cursor, Dimension asked) {
        this.cursor = cursor;
        this.units = new UnitReader(cursor, asked);
        this.numbers = new NumberReader(cursor);
    }

    /** Reads the quantity under the cursor and leaves the cursor at the next sign after it. */
    Amount read() throws Unclear {
        cursor.skipSpaces();
        Side first = side(false);
        cursor.skipSpaces();
        int link = cursor.at();
        Spelling spelling = spelling();
        if (spelling == Spelling.EXACT) {
            return new Amount(spelling, first, null);
        }
        cursor.skipSpaces();
        refuseMissingNumber(link);
        Side second = side(spelling == Spelling.PLUS_MINUS);
        if (spelling == Spelling.PLUS_MINUS && second.count().value() < 0) {
            throw new Unclear(
                    Trouble.NEGATIVE_SPREAD,
                    second.start(),
                    cursor.replaced(second.start(), cursor.afterSpaces(second.start() + 1), ""),
                    cursor.typed(second.start(), second.end()));
        }
        cursor.skipSpaces();
        return new Amount(spelling, first, second);
    }

    /** Refuses a text or part that ends where a number should follow a sign. */
    void refuseMissingNumber(int sign) throws Unclear {
        if (cursor.atEnd() || cursor.peek() == ';' || cursor.crossAt(cursor.at())) {
            throw new Unclear(
                    Trouble.MISSING_NUMBER,
                    sign,
                    null,
                    cursor.typed(sign, cursor.at()).strip());
        }
    }

    private Spelling spelling() {
        String[] spreads = {"±", "+-", "+/-"};
        for (String sign : spreads) {
            if (accept(sign)) {
                return Spelling.PLUS_MINUS;
            }
        }
        if (accept("-")) {
            return Spelling.FROM_TO;
        }
        OptionalInt after = cursor.afterTo();
        after.ifPresent(cursor::moveTo);
        return after.isPresent() ? Spelling.FROM_TO : Spelling.EXACT;
    }

    private boolean accept(String sign) {
        for (int i = 0; i < sign.length(); i++) {
            if (cursor.see(cursor.at() + i) != sign.charAt(i)) {
                return false;
            }
        }
        cursor.moveTo(cursor.at() + sign.length());
        return true;
    }

    private Side side(boolean percentToo) throws Unclear {
        if (Currencies.isSign(cursor.peek())) {
            return afterSign();
        }
        Count count = numbers.read();
        cursor.skipSpaces();
        Optional<Unit> unit = units.read(percentToo);
        if (unit.isEmpty()) {
            cursor.moveTo(count.end());
            return new Side(count, null, count.end());
        }
        int end = cursor.at();
        int next = cursor.afterSpaces(end);
        if (!cursor.numberAt(next)) {
            return new Side(count, unit.get(), end);
        }
        cursor.moveTo(next);
        return withSmallUnit(count, unit.get());
    }

    /** Reads an amount of money with its sign before it. */
    private Side afterSign() throws Unclear {
        Optional<Unit> currency = units.read(false);
        cursor.skipSpaces();
        Count count = numbers.read();
        cursor.moveTo(count.end());
        return new Side(count, currency.orElseThrow(), count.end());
    }

    /** Reads the inches after the feet, the ounces after the pounds, or the minutes after the hours. */
    private Side withSmallUnit(Count big, Unit bigUnit) throws Unclear {
        int start = cursor.at();
        Unit smallUnit = smallUnit(bigUnit);
        Count small = numbers.read();
        if (smallUnit == null) {
            throw new Unclear(
                    Trouble.TWO_NUMBERS,
                    start,
                    null,
                    cursor.typed(big.start(), start).strip(),
                    cursor.typed(start, small.end()));
        }
        cursor.skipSpaces();
        Optional<Unit> unit = units.read(false);
        if (unit.isEmpty()) {
            throw new Unclear(
                    Trouble.NO_UNIT,
                    start,
                    cursor.replaced(small.end(), small.end(), " " + smallUnit.symbol()),
                    cursor.typed(start, small.end()),
                    smallUnit.symbol());
        }
        if (!unit.get().equals(smallUnit)) {
            throw new Unclear(
                    Trouble.TWO_NUMBERS,
                    start,
                    null,
                    cursor.typed(big.start(), start).strip(),
                    cursor.typed(start, cursor.at()));
        }
        double perBig = Math.rint(bigUnit.inBase() / smallUnit.inBase());
        if (small.value() >= perBig) {
            throw new Unclear(
                    Trouble.TOO_MANY_SMALL_UNITS,
                    start,
                    null,
                    cursor.typed(start, cursor.at()),
                    Long.toString((long) perBig),
                    smallUnit.symbol());
        }
        double bigPart = big.value() * perBig;
        boolean negative = cursor.see(big.start()) == '-';
        double value = negative ? bigPart - small.value() : bigPart + small.value();
        return new Side(new Count(value, big.start(), small.end()), smallUnit, cursor.at());
    }

    private static Unit smallUnit(Unit bigUnit) {
        if (bigUnit.equals(Units.FOOT)) {
            return Units.INCH;
        }
        if (bigUnit.equals(Units.HOUR)) {
            return Units.MINUTE;
        }
        return bigUnit.equals(Units.POUND) ? Units.OUNCE_MASS : null;
    }
}
