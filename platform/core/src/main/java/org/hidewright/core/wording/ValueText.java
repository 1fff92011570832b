package org.hidewright.core.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.InchFraction;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;

/**
 * Numbers as they are shown: in the unit chosen, rounded once, with the decimal mark of the language. An answer with a step
 * keeps the zeros at its end, in inches to three decimals; without a step a number keeps them only where it is rounded.
 */
public final class ValueText {
    /** Hides the last bits of a conversion, so that an exact 146.1 is not rounded up to 146.2. */
    private static final MathContext EXACT_DIGITS = new MathContext(12);

    private static final int MOST_DECIMALS = 3;
    private static final int INCH_DECIMALS = 3;
    private static final int INCH_PARTS = 64;
    /** What is less than this share of a part is left over from a conversion. */
    private static final double NO_PART = 1e-9;

    /**
     * A fraction further off than this share of the value is another size and would mislead beside it. Punches, needles and
     * threads follow each other by a tenth or more, so that within half of that both readings lead to the same one.
     */
    private static final double SAME_SIZE_SHARE = 0.05;

    private static final int WORKING_DIGITS = 5;
    private static final double DRAWN_STEP_MM = 0.1;

    private static final String DEGREES = "°";

    /** A point between two digits. */
    private static final Pattern POINT = Pattern.compile("(?<=[0-9])\\.(?=[0-9])");

    private final Locale language;
    private final UnitSystem system;

    ValueText(Locale language, UnitSystem system) {
        this.language = PseudoLanguage.is(language) ? Locale.ENGLISH : language;
        this.system = system;
    }

    /**
     * A number with its unit apart, as large answers are shown.
     *
     * @param number ready to print
     * @param unit symbol, empty for a plain number
     * @param beside a second way to read it, such as the nearest fraction of an inch; may be empty
     */
    public record Shown(String number, String unit, String beside) {
        /** Number and unit in one piece. */
        public String inline() {
            return unit.isEmpty() || unit.equals(DEGREES)
                    ? number + unit // the sign stands at its number (DIN 1301)
                    : unit.equals("%") ? number + "\u202F%" : number + "\u00A0" + unit;
        }
    }

    /** “deg” is English. */
    private String sign(Unit unit) {
        return unit.equals(Units.DEGREE) && !language.getLanguage().equals("en") ? DEGREES : unit.symbol();
    }

    /** An answer's number, rounded as it declares. */
    public Shown answer(Answer answer, double base) {
        Unit declared = answer.unit().orElse(Units.ONE);
        Unit unit = answer.keepUnit() ? declared : system.shown(declared);
        return shown(base, declared, unit, answer.step(), answer.rounding());
    }

    /** A value in the unit a question or answer declares, or in the currency it came to. */
    public Shown of(double base, Unit declared) {
        return declared.dimension() == Dimension.MONEY
                ? money(Money.of(base, declared))
                : shown(base, declared, system.shown(declared), OptionalDouble.empty(), Rounding.NEAREST);
    }

    /** A limit, on the side of it that is within. */
    Shown bound(Bound bound) {
        return shown(bound.base(), bound.unit(), system.shown(bound.unit()), OptionalDouble.empty(), bound.inward());
    }

    /** Whether two values in the unit of a sentence read as the same number. */
    boolean same(double base, double other, Unit declared) {
        Unit unit = system.shown(declared);
        return told(base, unit).compareTo(told(other, unit)) == 0;
    }

    private static BigDecimal told(double base, Unit unit) {
        return new BigDecimal(unit.fromBase(base)).round(EXACT_DIGITS).setScale(MOST_DECIMALS, RoundingMode.HALF_UP);
    }

    /** A length beside a drawing: to a tenth of a millimetre, as finely as a rule is read. */
    Shown drawn(double mm) {
        return shown(mm, Units.MM, system.shown(Units.MM), OptionalDouble.of(DRAWN_STEP_MM), Rounding.NEAREST);
    }

    private Shown shown(double base, Unit declared, Unit unit, OptionalDouble step, Rounding rounding) {
        boolean converted = !unit.equals(declared);
        int decimals = converted
                ? INCH_DECIMALS
                : step.isPresent() ? decimalsOf(declared.fromBase(step.getAsDouble())) : MOST_DECIMALS;
        BigDecimal exact = new BigDecimal(unit.fromBase(base)).round(EXACT_DIGITS);
        BigDecimal rounded;
        if (step.isPresent() && !converted) {
            BigDecimal stepSize =
                    BigDecimal.valueOf(declared.fromBase(step.getAsDouble())).round(EXACT_DIGITS);
            rounded = exact.divide(stepSize, 0, mode(rounding))
                    .multiply(stepSize)
                    .setScale(decimals, RoundingMode.HALF_UP);
        } else {
            rounded = exact.setScale(decimals, mode(rounding));
        }
        boolean vanished = rounded.signum() == 0 && exact.signum() != 0;
        if (vanished && (step.isEmpty() || converted)) {
            rounded = trimmed(exact.round(new MathContext(2)));
        } else if (step.isEmpty()) {
            rounded = settled(exact, rounded);
        }
        return new Shown(format(rounded), sign(unit), beside(base, unit, converted, rounding));
    }

    private static String beside(double base, Unit unit, boolean converted, Rounding rounding) {
        if (!converted || !unit.equals(Units.INCH)) {
            return "";
        }
        InchFraction fraction = fraction(base, rounding);
        double mm = fraction.toLength().mm();
        boolean sameSize = Math.abs(mm - base) <= SAME_SIZE_SHARE * Math.abs(base);
        return mm == 0 || !sameSize ? "" : fraction.text() + " in";
    }

    /** The fraction of an inch nearest to a length on the safe side of it. */
    private static InchFraction fraction(double mm, Rounding rounding) {
        InchFraction nearest = InchFraction.nearest(Length.ofMm(mm), INCH_PARTS);
        double part = Units.INCH.toBase(1) / INCH_PARTS;
        double unsafe =
                rounding == Rounding.UP ? -nearest.errorMm() : rounding == Rounding.DOWN ? nearest.errorMm() : 0;
        if (unsafe <= part * NO_PART) {
            return nearest;
        }
        double safer = nearest.toLength().mm() + (rounding == Rounding.UP ? part : -part);
        return InchFraction.nearest(Length.ofMm(safer), INCH_PARTS);
    }

    /**
     * A number that is rounded keeps the zeros at its end, since they say how finely it is told; one that is exact, as
     * mostly what was typed, has none.
     */
    private static BigDecimal settled(BigDecimal exact, BigDecimal rounded) {
        return rounded.compareTo(exact) == 0 ? trimmed(rounded) : rounded;
    }

    private static BigDecimal trimmed(BigDecimal number) {
        return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    }

    private static RoundingMode mode(Rounding rounding) {
        return switch (rounding) {
            case NEAREST -> RoundingMode.HALF_UP;
            case DOWN -> RoundingMode.FLOOR;
            case UP -> RoundingMode.CEILING;
        };
    }

    private static int decimalsOf(double step) {
        return Math.max(
                0, new BigDecimal(step).round(EXACT_DIGITS).stripTrailingZeros().scale());
    }

    /** A quantity inside a formula: five digits, with the unit it is shown in. */
    String inFormula(double base, Unit declared) {
        Unit unit = system.shown(declared);
        BigDecimal exact = new BigDecimal(unit.fromBase(base)).round(EXACT_DIGITS);
        String number = format(settled(exact, exact.round(new MathContext(WORKING_DIGITS))));
        return new Shown(number, sign(unit), "").inline();
    }

    /** A formula with numbers in it, their points as the language marks decimals. */
    String formula(String symbols) {
        char mark = DecimalFormatSymbols.getInstance(language).getDecimalSeparator();
        return POINT.matcher(symbols).replaceAll(String.valueOf(mark));
    }

    /** An amount of money in the coins of its currency, with its code. */
    public Shown money(Money money) {
        return new Shown(format(money.rounded().amount()), money.currency().symbol(), "");
    }

    /** An amount inside a formula: five digits, and never fewer decimals than its currency has. */
    public String moneyInFormula(Money money) {
        BigDecimal coins = money.rounded().amount();
        BigDecimal fine = money.amount().round(new MathContext(WORKING_DIGITS));
        BigDecimal told = fine.stripTrailingZeros().scale() > coins.scale() ? fine.stripTrailingZeros() : coins;
        return new Shown(format(told), money.currency().symbol(), "").inline();
    }

    private String format(BigDecimal number) {
        DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(language));
        format.setMaximumFractionDigits(Math.max(0, number.scale()));
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        return format.format(number);
    }

    /** A number that is only a number: a count, a factor. */
    public String plain(Number number) {
        BigDecimal exact = new BigDecimal(number.toString()).round(EXACT_DIGITS);
        return format(settled(
                exact,
                exact.scale() > MOST_DECIMALS + 1 ? exact.setScale(MOST_DECIMALS + 1, RoundingMode.HALF_UP) : exact));
    }
}
