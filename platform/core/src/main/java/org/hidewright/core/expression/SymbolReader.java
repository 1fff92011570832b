package org.hidewright.core.expression;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.core.Nearest;
import org.hidewright.core.json.Place;

/** Parts the text of an expression into its symbols. */
final class SymbolReader {
    /** Words that stand between others and are no units. */
    static final Set<String> BETWEEN = Set.of("is", "not", "and", "or", "if", "then", "else");

    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?|\\.\\d+");
    /** Whole inches and a fraction, or the fraction alone; only before a unit, else the stroke divides. */
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,6}) )?(\\d{1,6})/(\\d{1,6})(?= ?[a-z])");

    /** A hyphen or point between letters belongs to the name, as in the keys of questions. */
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(?:[-.][a-z0-9]+)*");

    private static final Pattern LETTERS = Pattern.compile("\\p{L}+[²³23]?");
    private static final Pattern WORD = Pattern.compile("'([a-z][a-z0-9-]*)'");
    private static final Pattern SIGN = Pattern.compile("<=|>=|[-+*/(),<>]");

    private record Spelt(String spelling, Unit unit) {}

    /** The longest first; an ounce is one of leather, since templates ask for thickness more than for weight. */
    private static final List<Spelt> UNITS = Units.all().stream()
            .filter(unit -> Measure.of(unit.dimension()).isPresent())
            .flatMap(unit -> Stream.concat(Stream.of(unit.symbol()), unit.spellings().stream())
                    .filter(spelling -> !spelling.isEmpty() && "'\"".indexOf(spelling.charAt(0)) < 0)
                    .map(spelling -> new Spelt(spelling, unit)))
            .sorted(Comparator.comparingInt(spelt -> -spelt.spelling().length()))
            .toList();

    private final String text;
    private final List<Symbol> symbols = new ArrayList<>();
    private int at;

    private SymbolReader(String text) {
        this.text = text;
    }

    /** The last one is the end. */
    static List<Symbol> read(String text) throws ExpressionTrouble {
        SymbolReader reader = new SymbolReader(text);
        reader.skip(SPACE);
        while (reader.at < text.length()) {
            reader.next();
            reader.skip(SPACE);
        }
        reader.symbols.add(new Symbol(Symbol.Type.END, "", null, text.length()));
        return reader.symbols;
    }

    static ExpressionTrouble trouble(String text, int from, Notice notice) {
        return new ExpressionTrouble(notice, Place.START.behind(text.substring(0, from)));
    }

    private void next() throws ExpressionTrouble {
        int from = at;
        Optional<Matcher> found = match(FRACTION).filter(fraction -> Integer.parseInt(fraction.group(3)) > 0);
        if (found.isPresent()) {
            Matcher fraction = found.get();
            double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            amount(from, whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3)));
        } else if (match(NUMBER).isPresent()) {
            amount(from, Double.parseDouble(text.substring(from, at)));
        } else if (match(NAME).isPresent()) {
            add(Symbol.Type.NAME, from, null);
        } else if (match(WORD).isPresent()) {
            add(Symbol.Type.WORD, from, new Worth.Word(text.substring(from + 1, at - 1)));
        } else if (match(SIGN).isPresent()) {
            add(Symbol.Type.SIGN, from, null);
        } else if (text.charAt(from) == '^') {
            throw trouble(text, from, ExpressionNotices.EXPRESSION_NO_POWER.with());
        } else {
            String odd = text.substring(from, text.offsetByCodePoints(from, 1));
            throw trouble(text, from, ExpressionNotices.EXPRESSION_UNEXPECTED.with(odd, Phrase.of("expression-any")));
        }
    }

    /** A number, with the unit that follows it. */
    private void amount(int from, double number) throws ExpressionTrouble {
        int end = at;
        if (!(number <= Judge.MOST)) {
            throw trouble(
                    text, from, ExpressionNotices.EXPRESSION_NO_AMOUNT.with(text.substring(from, end), text.strip()));
        }
        skip(SPACE);
        int start = at;
        Optional<Spelt> unit =
                UNITS.stream().filter(spelt -> stands(spelt.spelling())).findFirst();
        Optional<String> word = match(LETTERS).map(Matcher::group);
        if (unit.isPresent()) {
            at = start + unit.get().spelling().length();
            Unit read = unit.get().unit();
            Measure measure = Measure.of(read.dimension()).orElseThrow();
            add(Symbol.Type.AMOUNT, from, new Worth.Amount(measure, Measure.amount(number, read)));
        } else if (word.isPresent() && !BETWEEN.contains(word.get())) {
            List<String> known = Units.all().stream().map(Unit::symbol).toList();
            throw trouble(
                    text,
                    start,
                    ExpressionNotices.EXPRESSION_UNKNOWN_UNIT.with(
                            word.get(), Nearest.to(word.get(), known).orElse("mm")));
        } else {
            at = end;
            add(Symbol.Type.AMOUNT, from, Worth.number(number));
        }
    }

    private void add(Symbol.Type type, int from, Worth worth) {
        symbols.add(new Symbol(type, text.substring(from, at), worth, from));
    }

    private boolean stands(String spelling) {
        int end = at + spelling.length();
        boolean inWord = end < text.length()
                && (Character.isLetterOrDigit(text.charAt(end)) || "²³".indexOf(text.charAt(end)) >= 0)
                && Character.isLetterOrDigit(text.charAt(end - 1));
        return text.startsWith(spelling, at) && !inWord;
    }

    private void skip(Pattern pattern) {
        match(pattern);
    }

    private Optional<Matcher> match(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(at, text.length());
        matcher.useTransparentBounds(true);
        if (!matcher.lookingAt()) {
            return Optional.empty();
        }
        at = matcher.end();
        return Optional.of(matcher);
    }
}
