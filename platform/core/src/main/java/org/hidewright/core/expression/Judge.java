package org.hidewright.core.expression;

import java.util.Map;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;

/**
 * Judges whether things go together, and says where they do not.
 *
 * @param text the whole expression
 * @param sorts what every name gives
 * @param worths what every name is worth; empty while only sorts are judged
 */
record Judge(String text, Map<String, Sort> sorts, Map<String, Worth> worths) {
    /** More than the largest hide or the longest wait, whatever they are counted in. */
    static final double MOST = 1e15;

    ExpressionTrouble trouble(Symbol at, Notice notice) {
        return SymbolReader.trouble(text, at.from(), notice);
    }

    <S extends Sort> S alike(Symbol at, S one, S other) throws ExpressionTrouble {
        if (!one.equals(other)) {
            throw trouble(at, ExpressionNotices.EXPRESSION_NOT_ALIKE.with(at.text(), one.words(), other.words()));
        }
        return one;
    }

    Measure measure(Symbol by, Term term) throws ExpressionTrouble {
        if (term.sort(this) instanceof Measure measure) {
            return measure;
        }
        throw wrong(by, Phrase.of("sort-amount"), term);
    }

    Sort truth(Symbol by, Term term) throws ExpressionTrouble {
        Sort sort = term.sort(this);
        if (sort != Sort.Plain.TRUTH) {
            throw wrong(by, Sort.Plain.TRUTH.words(), term);
        }
        return sort;
    }

    private ExpressionTrouble wrong(Symbol by, Phrase wanted, Term term) throws ExpressionTrouble {
        return trouble(
                term.symbol(),
                ExpressionNotices.EXPRESSION_WRONG_SORT.with(
                        by.text(), wanted, term.sort(this).words()));
    }

    Worth.Amount amount(Symbol at, Measure measure, double number) throws ExpressionTrouble {
        if (!(Math.abs(number) <= MOST)) {
            throw trouble(at, ExpressionNotices.EXPRESSION_NO_AMOUNT.with(at.text()));
        }
        return new Worth.Amount(measure, number);
    }
}
