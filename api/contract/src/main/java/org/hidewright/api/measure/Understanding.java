package org.hidewright.api.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gives every amount of one text its unit, and turns it into limits in base units. */
final class Understanding {
    /** Far beyond anything on a bench, far below the end of the numbers: a thousand million kilometres in mm. */
    static final double GREATEST = 1e15;

    private static final Pattern LABEL = Pattern.compile("(\\d{1,2}) ?/ ?(\\d{1,2})");

    private final Cursor cursor;
    private final Dimension asked;
    private final Optional<Unit> assumed;

    Understanding(Cursor cursor, Dimension asked, Optional<Unit> assumed) {
        this.cursor = cursor;
        this.asked = asked;
        this.assumed = assumed;
    }

    /** Understands all amounts of a text; their texts are the parts they stand in. */
    List<Typed> of(List<Amount> amounts) throws Unclear {
        Unit[] written = written(amounts);
        List<Typed> understood = new ArrayList<>();
        for (int i = 0; i < written.length; i++) {
            Unit unit = written[i] == null
                    ? assumedAfter(i == 0 ? null : written[i - 1], amounts.get(i), amounts)
                    : written[i];
            understood.add(understand(amounts.get(i), unit, written[i] != null));
            written[i] = unit;
        }
        return understood;
    }

    /** The unit written for each amount: its own or the next one written after it; null where there is none. */
    private Unit[] written(List<Amount> amounts) {
        Unit[] written = new Unit[amounts.size()];
        Unit next = null;
        for (int i = written.length - 1; i >= 0; i--) {
            Unit own = amounts.get(i).unit(asked);
            next = own == null ? next : own;
            written[i] = next;
        }
        return written;
    }

    /** The unit of a number with none after it; where another unit stands before it, the maker must say which. */
    private Unit assumedAfter(Unit before, Amount amount, List<Amount> amounts) throws Unclear {
        Unit assumedUnit = assumed.orElse(asked == Dimension.NUMBER ? Units.ONE : null);
        String number = cursor.typed(amount.start(), amount.end());
        if (before != null && !before.equals(assumedUnit)) {
            throw new Unclear(Trouble.UNIT_BEFORE, amount.start(), withUnit(amount, before), number, before.symbol());
        }
        if (assumedUnit == null) {
            throw new Unclear(
                    Trouble.NO_UNIT,
                    amount.start(),
                    withUnit(amounts.get(amounts.size() - 1), UnitReader.usual(asked)),
                    number,
                    UnitReader.known(asked));
        }
        return assumedUnit;
    }

    private String withUnit(Amount amount, Unit unit) {
        return cursor.replaced(amount.unitPlace(asked), amount.unitPlace(asked), " " + unit.symbol());
    }

    private Typed understand(Amount amount, Unit unit, boolean unitTyped) throws Unclear {
        String text = cursor.typed(amount.start(), amount.end());
        Side first = amount.first();
        Side second = amount.second();
        double base = base(first, unit);
        if (amount.spelling() == Spelling.EXACT) {
            refuseLabel(first, unit);
            return Typed.of(text, Spelling.EXACT, Range.exact(base), unit, unitTyped);
        }
        if (amount.spelling() == Spelling.PLUS_MINUS) {
            double half = amount.relative(asked)
                    ? Math.abs(base)
                            * checked(Units.PERCENT.toBase(second.count().value()), second)
                    : base(second, unit);
            return Typed.of(text, Spelling.PLUS_MINUS, Range.plusMinus(base, half), unit, unitTyped);
        }
        double to = base(second, unit);
        if (base > to) {
            throw reversed(amount);
        }
        Unit last = second.hasUnit() ? second.unit() : unit;
        return Typed.of(text, Spelling.FROM_TO, Range.between(base, to), last, unitTyped);
    }

    /**
     * A label such as {@code 8/9 oz} means leather of 8 to 9 ounces; as a fraction it would be less than one ounce, which
     * nobody sells by the fraction.
     */
    private void refuseLabel(Side side, Unit unit) throws Unclear {
        Matcher label =
                LABEL.matcher(cursor.slice(side.count().start(), side.count().end()));
        if (!unit.equals(Units.OUNCE) || !label.matches()) {
            return;
        }
        int from = Integer.parseInt(label.group(1));
        if (Integer.parseInt(label.group(2)) == from + 1) {
            String range = from + "-" + (from + 1);
            throw new Unclear(
                    Trouble.LABEL_AS_FRACTION,
                    side.start(),
                    cursor.replaced(side.count().start(), side.count().end(), range),
                    cursor.typed(side.count().start(), side.count().end()),
                    range,
                    String.valueOf(Math.rint(side.count().value() * 1000) / 1000));
        }
    }

    private double base(Side side, Unit unit) throws Unclear {
        Unit own = side.hasUnit() ? side.unit() : unit;
        return checked(own.toBase(side.count().value()), side);
    }

    private double checked(double value, Side side) throws Unclear {
        if (Math.abs(value) > GREATEST) {
            throw new Unclear(Trouble.TOO_LARGE, side.start(), null, cursor.wordFrom(side.start()));
        }
        return value;
    }

    /** Suggests the limits the other way round; units change places too where each limit has its own. */
    private Unclear reversed(Amount amount) {
        Side first = amount.first();
        Side second = amount.second();
        boolean whole = first.hasUnit() && second.hasUnit();
        int firstEnd = whole ? first.end() : first.count().end();
        int secondEnd = whole ? second.end() : second.count().end();
        String low = cursor.typed(second.start(), secondEnd);
        String high = cursor.typed(first.start(), firstEnd);
        String between = cursor.typed(firstEnd, second.start());
        return new Unclear(
                Trouble.REVERSED_RANGE,
                amount.start(),
                cursor.replaced(first.start(), secondEnd, low + between + high),
                high,
                low);
    }
}
