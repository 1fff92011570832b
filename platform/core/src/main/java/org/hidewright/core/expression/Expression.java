package org.hidewright.core.expression;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An expression that was read.
 *
 * <p>Amounts have units ({@code 3/8 in}, {@code 12 mm}, {@code 90 deg}), names are those of questions
 * ({@code held.thickness}); {@code + - * /}, brackets, {@code < <= > >= is} and {@code is not}, {@code and or not},
 * {@code if … then … else …}; words of choices stand in single quotes ({@code closure is 'snap'}).
 */
public final class Expression {
    private static final int LONGEST = 1000;

    private final String text;
    private final Term term;

    private Expression(String text, Term term) {
        this.text = text;
        this.term = term;
    }

    /** @throws ExpressionTrouble if it cannot be read */
    public static Expression read(String text) throws ExpressionTrouble {
        if (text.length() > LONGEST) {
            throw SymbolReader.trouble(
                    text, LONGEST, ExpressionNotices.EXPRESSION_TOO_LONG.with(text.length(), LONGEST));
        }
        return new Expression(text, TermReader.read(text));
    }

    /** The functions by name, and how many amounts each takes. */
    public static Map<String, String> functions() {
        Map<String, String> functions = new LinkedHashMap<>();
        for (Function function : Function.values()) {
            functions.put(function.word(), function.takes());
        }
        return functions;
    }

    public String text() {
        return text;
    }

    /** The names in it, in their order. */
    public Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        all(term)
                .filter(Term.Named.class::isInstance)
                .forEach(part -> names.add(part.symbol().text()));
        return names;
    }

    /** The amounts and words that are written in it. */
    public Set<Worth> written() {
        Set<Worth> written = new LinkedHashSet<>();
        all(term)
                .filter(Term.Written.class::isInstance)
                .forEach(part -> written.add(part.symbol().worth()));
        return written;
    }

    private static Stream<Term> all(Term term) {
        return Stream.concat(Stream.of(term), term.parts().stream().flatMap(Expression::all));
    }

    /**
     * What it gives, known before any name has a value.
     *
     * @throws ExpressionTrouble if a name is not known, or things do not go together
     */
    public Sort sort(Map<String, Sort> names) throws ExpressionTrouble {
        return term.sort(new Judge(text, names, Map.of()));
    }

    /**
     * What it is worth.
     *
     * @throws ExpressionTrouble if a name is not known, things do not go together, something is divided by nothing, or there is
     *     no such amount
     */
    public Worth worth(Map<String, Worth> names) throws ExpressionTrouble {
        Map<String, Sort> sorts = new HashMap<>();
        names.forEach((name, worth) -> sorts.put(name, worth.sort()));
        Judge judge = new Judge(text, sorts, names);
        term.sort(judge);
        return term.worth(judge);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Expression expression && text.equals(expression.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
