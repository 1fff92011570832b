package org.hidewright.core.expression;

import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.Nearest;

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

    /** What gives one or the other: a word of either where both are words. */
    Sort either(Symbol at, Sort one, Sort other) throws ExpressionTrouble {
        if (one instanceof Sort.OneOf some && other instanceof Sort.OneOf more) {
            Set<String> all = new HashSet<>(some.options());
            all.addAll(more.options());
            return new Sort.OneOf(all);
        }
        return one.fits(Sort.Plain.WORD) && other.fits(Sort.Plain.WORD) ? Sort.Plain.WORD : alike(at, one, other);
    }

    /** Compared words: a word that is none of a choice would never be met, and nobody would see it. */
    void canBeTheSame(Symbol at, Term left, Term right) throws ExpressionTrouble {
        Sort one = left.sort(this);
        Sort other = right.sort(this);
        either(at, one, other);
        if (one instanceof Sort.OneOf some
                && other instanceof Sort.OneOf more
                && Collections.disjoint(some.options(), more.options())) {
            boolean written = right instanceof Term.Written;
            throw noSuchWord(written ? right : left, written ? more : some, written ? some : more);
        }
    }

    private ExpressionTrouble noSuchWord(Term term, Sort.OneOf written, Sort.OneOf known) {
        String word = String.join(", ", written.options());
        return trouble(
                term.symbol(),
                Nearest.to(word, known.options())
                        .map(near -> ExpressionNotices.EXPRESSION_NO_SUCH_WORD_NEAREST.with(word, near))
                        .orElseGet(() -> ExpressionNotices.EXPRESSION_NO_SUCH_WORD.with(
                                word, String.join(", ", known.options()))));
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
            throw trouble(at, ExpressionNotices.EXPRESSION_NO_AMOUNT.with(at.text(), text.strip()));
        }
        return new Worth.Amount(measure, number);
    }
}
