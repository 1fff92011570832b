package org.hidewright.core.expression;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.Nearest;

/** Reads the symbols of an expression into terms, by recursive descent; deeper than a bound it does not go. */
final class TermReader {
    private static final int DEEPEST = 50;

    private final String text;
    private final List<Symbol> symbols;
    private int at;
    private int depth;

    private TermReader(String text, List<Symbol> symbols) {
        this.text = text;
        this.symbols = symbols;
    }

    static Term read(String text) throws ExpressionTrouble {
        TermReader reader = new TermReader(text, SymbolReader.read(text));
        Term term = reader.whole();
        if (reader.symbol().type() != Symbol.Type.END) {
            throw reader.unexpected("expression-sign-or-end");
        }
        return term;
    }

    private Symbol symbol() {
        return symbols.get(at);
    }

    /** The symbol here if it is one of some, and goes on. */
    private Optional<Symbol> take(String... signs) {
        Symbol here = symbol();
        if (Arrays.stream(signs).noneMatch(here::is)) {
            return Optional.empty();
        }
        at++;
        return Optional.of(here);
    }

    private Symbol must(String sign) throws ExpressionTrouble {
        Optional<Symbol> taken = take(sign);
        if (taken.isEmpty()) {
            throw unexpected("expression-sign", sign);
        }
        return taken.get();
    }

    private ExpressionTrouble unexpected(String wanted, Object... args) {
        Symbol here = symbol();
        if (here.type() == Symbol.Type.WORD) {
            return SymbolReader.trouble(text, here.from(), ExpressionNotices.EXPRESSION_MISSING_IS.with(here.text()));
        }
        Object found = here.type() == Symbol.Type.END ? Phrase.of("expression-end") : here.text();
        return SymbolReader.trouble(
                text, here.from(), ExpressionNotices.EXPRESSION_UNEXPECTED.with(found, Phrase.of(wanted, args)));
    }

    private void goDeeper() throws ExpressionTrouble {
        if (++depth > DEEPEST) {
            throw SymbolReader.trouble(text, symbol().from(), ExpressionNotices.EXPRESSION_TOO_DEEP.with(DEEPEST));
        }
    }

    private Term whole() throws ExpressionTrouble {
        goDeeper();
        Optional<Symbol> chosen = take("if");
        Term term;
        if (chosen.isPresent()) {
            Term whether = whole();
            must("then");
            Term yes = whole();
            must("else");
            term = new Term.Chosen(chosen.get(), whether, yes, whole());
        } else {
            term = either();
        }
        depth--;
        return term;
    }

    private Term either() throws ExpressionTrouble {
        Term term = both();
        for (Optional<Symbol> or = take("or"); or.isPresent(); or = take("or")) {
            term = new Term.Joined(or.get(), term, both());
        }
        return term;
    }

    private Term both() throws ExpressionTrouble {
        Term term = compared();
        for (Optional<Symbol> and = take("and"); and.isPresent(); and = take("and")) {
            term = new Term.Joined(and.get(), term, compared());
        }
        return term;
    }

    private Term compared() throws ExpressionTrouble {
        Optional<Symbol> not = take("not");
        if (not.isPresent()) {
            goDeeper();
            Term turned = compared();
            depth--;
            return new Term.Turned(not.get(), turned);
        }
        Term left = sum();
        Optional<Symbol> sign = take("<", "<=", ">", ">=", "is");
        if (sign.isEmpty()) {
            return left;
        }
        Optional<Symbol> isNot = sign.get().is("is") ? take("not") : Optional.empty();
        Term compared = new Term.Compared(sign.get(), left, sum());
        return isNot.isPresent() ? new Term.Turned(isNot.get(), compared) : compared;
    }

    private Term sum() throws ExpressionTrouble {
        Term term = product();
        for (Optional<Symbol> sign = take("+", "-"); sign.isPresent(); sign = take("+", "-")) {
            term = new Term.Reckoned(sign.get(), term, product());
        }
        return term;
    }

    private Term product() throws ExpressionTrouble {
        Term term = one();
        for (Optional<Symbol> sign = take("*", "/"); sign.isPresent(); sign = take("*", "/")) {
            term = new Term.Reckoned(sign.get(), term, one());
        }
        return term;
    }

    private Term one() throws ExpressionTrouble {
        Optional<Symbol> less = take("-");
        if (less.isPresent()) {
            return new Term.Turned(less.get(), one());
        }
        Symbol here = symbol();
        if (take("(").isPresent()) {
            Term inside = whole();
            must(")");
            return inside;
        }
        switch (here.type()) {
            case AMOUNT, WORD:
                at++;
                return new Term.Written(here);
            case NAME:
                if (SymbolReader.BETWEEN.contains(here.text())) {
                    throw unexpected("expression-value");
                }
                at++;
                return symbol().is("(") ? called(here) : named(here);
            default:
                throw unexpected("expression-value");
        }
    }

    private static Term named(Symbol symbol) {
        return switch (symbol.text()) {
            case "yes", "no" -> written(symbol, new Worth.Truth(symbol.is("yes")));
            case "pi" -> written(symbol, Worth.number(Math.PI));
            default -> new Term.Named(symbol);
        };
    }

    private static Term written(Symbol symbol, Worth worth) {
        return new Term.Written(new Symbol(symbol.type(), symbol.text(), worth, symbol.from()));
    }

    private Term called(Symbol symbol) throws ExpressionTrouble {
        List<String> known =
                Arrays.stream(Function.values()).map(Function::word).toList();
        if (!known.contains(symbol.text())) {
            throw SymbolReader.trouble(
                    text,
                    symbol.from(),
                    Nearest.to(symbol.text(), known)
                            .map(near -> ExpressionNotices.EXPRESSION_UNKNOWN_NAME_NEAREST.with(symbol.text(), near))
                            .orElseGet(() -> ExpressionNotices.EXPRESSION_UNKNOWN_NAME.with(
                                    symbol.text(), String.join(", ", known))));
        }
        Function function = Function.values()[known.indexOf(symbol.text())];
        must("(");
        List<Term> of = new ArrayList<>();
        do {
            of.add(whole());
        } while (take(",").isPresent());
        must(")");
        if (!function.takes(of.size())) {
            throw SymbolReader.trouble(
                    text,
                    symbol.from(),
                    ExpressionNotices.EXPRESSION_HOW_MANY.with(symbol.text(), function.takes(), of.size()));
        }
        return new Term.Called(symbol, function, of);
    }
}
