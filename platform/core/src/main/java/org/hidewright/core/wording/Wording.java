package org.hidewright.core.wording;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.declaration.Field;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.CoreTexts;

/** Puts keys, values and remarks into the maker's language and units. Immutable. */
public final class Wording {
    private final Locale language;
    private final UnitSystem system;
    private final ValueText values;

    public Wording(Locale language, UnitSystem system) {
        this.language = language;
        this.system = system;
        this.values = new ValueText(language, system);
    }

    public Locale language() {
        return language;
    }

    /** The units that things are shown in. */
    public UnitSystem units() {
        return system;
    }

    /** Whether lengths are shown in inches. */
    public boolean inches() {
        return system == UnitSystem.INCH;
    }

    /** A day written out, in English by the habit that goes with the units: 1 March 2026, or March 1, 2026 with inches. */
    public String date(LocalDate day) {
        boolean anyEnglish =
                language.getLanguage().equals("en") && (language.getCountry().isEmpty() || PseudoLanguage.is(language));
        Locale habit = !anyEnglish ? language : system == UnitSystem.METRIC ? Locale.UK : Locale.US;
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(habit)
                .format(day);
    }

    public ValueText values() {
        return values;
    }

    /** A text of the host. */
    public String host(String key, Object... args) {
        return text(CoreTexts.TEXTS, key, args);
    }

    /**
     * A text by key with its arguments; a key without a text is shown in guillemets, so that it is seen and the rest
     * still works.
     */
    public String text(Texts texts, String key, Object... args) {
        Locale lookUp = PseudoLanguage.is(language) ? Locale.ENGLISH : language;
        return texts.find(key, lookUp)
                .map(pattern -> PseudoLanguage.is(language) ? PseudoLanguage.of(pattern) : pattern)
                .map(pattern -> filled(texts, pattern, args))
                .orElse("«" + key + "»");
    }

    /** A word of an item. */
    public String said(Said said) {
        return PseudoLanguage.is(language) ? PseudoLanguage.of(said.in(Locale.ENGLISH)) : said.in(language);
    }

    /** The label of a question or answer of a bundle; the facts of an item are the host’s to name. */
    public String label(Texts texts, Field field) {
        return field.labelKey().startsWith("item-fact.") ? host(field.labelKey()) : text(texts, field.labelKey());
    }

    /** Whether a text for the key exists. */
    public boolean has(Texts texts, String key) {
        return texts.find(key, Locale.ENGLISH).isPresent();
    }

    /** A question or answer by its label, or by its key where it has none. */
    String called(Called called) {
        return has(called.texts(), called.field().labelKey())
                ? label(called.texts(), called.field())
                : called.field().key();
    }

    private String filled(Texts texts, String pattern, Object... args) {
        Object[] words = new Object[args.length];
        for (int i = 0; i < args.length; i++) {
            words[i] = argument(texts, args[i]);
        }
        try {
            return new MessageFormat(pattern, Locale.ROOT).format(words);
        } catch (IllegalArgumentException e) {
            return pattern; // a slip of its author must not take the rest of the page with it
        }
    }

    private String argument(Texts texts, Object arg) {
        if (arg instanceof Phrase phrase) {
            return phrase(texts, phrase);
        } else if (arg instanceof Said word) {
            return said(word);
        } else if (arg instanceof InWords words) {
            return words.in(this);
        } else if (arg instanceof Quantity<?> quantity) {
            return quantity(quantity);
        } else if (arg instanceof Called called) {
            return called(called);
        } else if (arg instanceof InUnit number) {
            return values.of(number.base(), number.unit()).inline();
        } else if (arg instanceof Bound bound) {
            return values.bound(bound).inline();
        } else if (arg instanceof Money money) {
            return values.money(money).inline();
        } else if (arg instanceof LocalDate day) {
            return date(day);
        } else if (arg instanceof Size size) {
            return size(size, Units.MM);
        } else if (arg instanceof Number number) {
            return values.plain(number);
        } else if (arg instanceof Enum<?> constant) {
            return option(texts, constant);
        }
        return String.valueOf(arg);
    }

    private String option(Texts texts, Enum<?> constant) {
        String type = kebab(constant.getDeclaringClass().getSimpleName());
        return text(texts, type + "." + kebab(constant.name()));
    }

    /** The key made of a Java name, as declarations make theirs. */
    private static String kebab(String name) {
        if (name.equals(name.toUpperCase(Locale.ROOT))) {
            return name.toLowerCase(Locale.ROOT).replace('_', '-');
        }
        return name.replaceAll("(?<!^)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    public String phrase(Texts texts, Phrase phrase) {
        return text(texts, "phrase." + phrase.key(), phrase.args().toArray());
    }

    /** A quantity in the unit that suits it: one in which its number is neither very long nor very small. */
    public String quantity(Quantity<?> quantity) {
        return values.of(quantity.base(), unit(quantity)).inline();
    }

    private static Unit unit(Quantity<?> quantity) {
        return unit(quantity.dimension(), quantity.base());
    }

    static Unit unit(Dimension dimension, double base) {
        return switch (dimension) {
            case ANGLE -> Units.DEGREE;
            case DURATION -> from(1, Units.HOUR, base) ? Units.HOUR : Units.MINUTE;
            case AREA -> from(10, Units.DM2, base) ? Units.DM2 : Units.CM2;
            case LENGTH -> from(10, Units.M, base) ? Units.M : Units.MM;
            default -> Units.base(dimension);
        };
    }

    private static boolean from(double least, Unit unit, double base) {
        return Math.abs(unit.fromBase(base)) >= least;
    }

    /** Whether two quantities would read alike in a sentence, whichever units are chosen. */
    public static boolean alike(Dimension dimension, double base, double other) {
        return alike(unit(dimension, base), base, other);
    }

    /** The same of two numbers that are read in a unit. */
    public static boolean alike(Unit unit, double base, double other) {
        return Stream.of(UnitSystem.values())
                .map(system -> new ValueText(Locale.ROOT, system))
                .anyMatch(values -> values.same(base, other, unit));
    }

    /** A quantity beside a drawing: a length as finely as a rule is read, anything else as in a sentence. */
    public String drawn(Quantity<?> quantity) {
        return quantity instanceof Length length ? values.drawn(length.mm()).inline() : quantity(quantity);
    }

    /**
     * A quantity as it stands inside a formula: five digits and its unit, since lengths and areas stand beside each other
     * there; angles in radians, which can be multiplied by a radius as they are.
     */
    public String inFormula(Quantity<?> quantity) {
        return values.inFormula(quantity.base(), unitInFormula(quantity));
    }

    /** What a formula came to, in the unit of its numbers; an angle in degrees, as it is measured. */
    public String ofFormula(Quantity<?> quantity) {
        Unit unit = quantity.dimension() == Dimension.ANGLE ? Units.DEGREE : unitInFormula(quantity);
        return values.of(quantity.base(), unit).inline();
    }

    /** Of one unit whatever their size, as far as they can be, so that a formula can be worked with a pocket calculator. */
    private static Unit unitInFormula(Quantity<?> quantity) {
        return switch (quantity.dimension()) {
            case ANGLE -> Units.RADIAN;
            case LENGTH -> Units.MM;
            case AREA -> from(1, Units.CM2, quantity.base()) ? Units.CM2 : Units.MM2;
            default -> unit(quantity);
        };
    }

    /** A formula in symbols, its numbers with the decimal mark of the language. */
    public String formula(String symbols) {
        return values.formula(symbols);
    }

    public String size(Size size, Unit unit) {
        return values.of(size.width().mm(), unit).number() + " × "
                + values.of(size.height().mm(), unit).inline();
    }

    /** What is the matter; with where it stands, when told to somebody who reads the file. */
    public String what(Remark remark) {
        return text(remark.texts(), remark.key() + ".what", remark.args().toArray());
    }

    public String why(Remark remark) {
        return text(remark.texts(), remark.key() + ".why", remark.args().toArray());
    }

    public String next(Remark remark) {
        return text(remark.texts(), remark.key() + ".next", remark.args().toArray());
    }

    /** Where a remark belongs, in words: line, slip and question, as far as they are known. */
    public Optional<String> where(Remark remark) {
        StringBuilder where = new StringBuilder();
        if (remark.place() != null) {
            where.append(
                    host("where.line", remark.place().line(), remark.place().column()));
        }
        if (!remark.slip().isEmpty()) {
            where.append(where.isEmpty() ? "" : ", ").append(host("where.slip", remark.slip()));
        }
        if (!remark.question().isEmpty()) {
            where.append(where.isEmpty() ? "" : ", ").append(host("where.question", remark.question()));
        }
        if (!remark.cell().isEmpty()) {
            where.append(where.isEmpty() ? "" : ", ").append(host("where.cell", remark.cell()));
        }
        return where.isEmpty() ? Optional.empty() : Optional.of(where.toString());
    }
}
