package org.hidewright.core.expression;

import java.util.List;
import java.util.Set;
import org.hidewright.core.Nearest;

/** A part of an expression that gives something. */
sealed interface Term {
    /** Where it stands, and what it reads, for what is said of it. */
    Symbol symbol();

    /** What it gives, by what the names give; trouble where things do not go together. */
    Sort sort(Judge judge) throws ExpressionTrouble;

    /** What it gives; only asked where the sorts are right. */
    Worth worth(Judge judge) throws ExpressionTrouble;

    /** A number or a word, as it is written. */
    record Written(Symbol symbol) implements Term {
        @Override
        public Sort sort(Judge judge) {
            return symbol.worth() instanceof Worth.Word word
                    ? new Sort.OneOf(Set.of(word.text()))
                    : symbol.worth().sort();
        }

        @Override
        public Worth worth(Judge judge) {
            return symbol.worth();
        }
    }

    /** What a name stands for. */
    record Named(Symbol symbol) implements Term {
        @Override
        public Sort sort(Judge judge) throws ExpressionTrouble {
            Sort sort = judge.sorts().get(symbol.text());
            if (sort == null) {
                throw unknown(judge);
            }
            return sort;
        }

        private ExpressionTrouble unknown(Judge judge) {
            List<String> known = judge.sorts().keySet().stream().sorted().toList();
            return judge.trouble(
                    symbol,
                    Nearest.to(symbol.text(), known)
                            .map(near -> ExpressionNotices.EXPRESSION_UNKNOWN_NAME_NEAREST.with(symbol.text(), near))
                            .orElseGet(() -> ExpressionNotices.EXPRESSION_UNKNOWN_NAME.with(
                                    symbol.text(), String.join(", ", known))));
        }

        @Override
        public Worth worth(Judge judge) {
            return judge.worths().get(symbol.text());
        }
    }

    /** The same amount below nothing, or the other of yes and no. */
    record Turned(Symbol symbol, Term of) implements Term {
        @Override
        public List<Term> parts() {
            return List.of(of);
        }

        @Override
        public Sort sort(Judge judge) throws ExpressionTrouble {
            return symbol.is("not") ? judge.truth(symbol, of) : judge.measure(symbol, of);
        }

        @Override
        public Worth worth(Judge judge) throws ExpressionTrouble {
            Worth worth = of.worth(judge);
            if (worth instanceof Worth.Truth truth) {
                return new Worth.Truth(!truth.yes());
            }
            Worth.Amount amount = (Worth.Amount) worth;
            return new Worth.Amount(amount.measure(), -amount.number());
        }
    }

    /** Two amounts added, subtracted, multiplied or divided. */
    record Reckoned(Symbol symbol, Term left, Term right) implements Term {
        @Override
        public List<Term> parts() {
            return List.of(left, right);
        }

        @Override
        public Sort sort(Judge judge) throws ExpressionTrouble {
            Measure one = judge.measure(symbol, left);
            Measure other = judge.measure(symbol, right);
            return switch (symbol.text()) {
                case "*" -> one.times(other);
                case "/" -> one.over(other);
                default -> judge.alike(symbol, one, other);
            };
        }

        @Override
        public Worth worth(Judge judge) throws ExpressionTrouble {
            Worth.Amount one = (Worth.Amount) left.worth(judge);
            Worth.Amount other = (Worth.Amount) right.worth(judge);
            if (symbol.is("/") && other.number() == 0) {
                throw judge.trouble(
                        right.symbol(),
                        ExpressionNotices.EXPRESSION_DIVIDES_BY_NOTHING.with(
                                judge.text().strip()));
            }
            return switch (symbol.text()) {
                case "+" -> judge.amount(symbol, one.measure(), one.number() + other.number());
                case "-" -> judge.amount(symbol, one.measure(), one.number() - other.number());
                case "*" -> judge.amount(symbol, one.measure().times(other.measure()), one.number() * other.number());
                default -> judge.amount(symbol, one.measure().over(other.measure()), one.number() / other.number());
            };
        }
    }

    /** Whether one is less, more or the same. */
    record Compared(Symbol symbol, Term left, Term right) implements Term {
        /** Of amounts that came by different ways, the last digits say nothing. */
        private static final double SAME = 1e-9;

        @Override
        public List<Term> parts() {
            return List.of(left, right);
        }

        @Override
        public Sort sort(Judge judge) throws ExpressionTrouble {
            if (symbol.is("is")) {
                judge.canBeTheSame(symbol, left, right);
            } else {
                judge.alike(symbol, judge.measure(symbol, left), judge.measure(symbol, right));
            }
            return Sort.Plain.TRUTH;
        }

        @Override
        public Worth worth(Judge judge) throws ExpressionTrouble {
            Worth one = left.worth(judge);
            Worth other = right.worth(judge);
            if (!(one instanceof Worth.Amount a && other instanceof Worth.Amount b)) {
                return new Worth.Truth(one.equals(other));
            }
            double more = a.number() - b.number();
            double same = SAME * Math.max(Math.abs(a.number()), Math.abs(b.number()));
            return new Worth.Truth(
                    switch (symbol.text()) {
                        case "<" -> more < -same;
                        case "<=" -> more <= same;
                        case ">" -> more > same;
                        case ">=" -> more >= -same;
                        default -> Math.abs(more) <= same;
                    });
        }
    }

    /** Both, or one at least. */
    record Joined(Symbol symbol, Term left, Term right) implements Term {
        @Override
        public List<Term> parts() {
            return List.of(left, right);
        }

        @Override
        public Sort sort(Judge judge) throws ExpressionTrouble {
            judge.truth(symbol, left);
            return judge.truth(symbol, right);
        }

        @Override
        public Worth worth(Judge judge) throws ExpressionTrouble {
            boolean first = ((Worth.Truth) left.worth(judge)).yes();
            return first == symbol.is("or") ? new Worth.Truth(first) : right.worth(judge);
        }
    }

    /** One of two, by whether something is so. */
    record Chosen(Symbol symbol, Term whether, Term yes, Term no) implements Term {
        @Override
        public List<Term> parts() {
            return List.of(whether, yes, no);
        }

        @Override
        public Sort sort(Judge judge) throws ExpressionTrouble {
            judge.truth(symbol, whether);
            return judge.either(symbol, yes.sort(judge), no.sort(judge));
        }

        @Override
        public Worth worth(Judge judge) throws ExpressionTrouble {
            return ((Worth.Truth) whether.worth(judge)).yes() ? yes.worth(judge) : no.worth(judge);
        }
    }

    /** What a function makes of some amounts. */
    record Called(Symbol symbol, Function function, List<Term> of) implements Term {
        @Override
        public List<Term> parts() {
            return of;
        }

        @Override
        public Sort sort(Judge judge) throws ExpressionTrouble {
            Measure first = null;
            for (Term term : of) {
                Measure measure = judge.measure(symbol, term);
                first = first == null ? measure : judge.alike(symbol, first, measure);
            }
            return function.gives(judge, symbol, first);
        }

        @Override
        public Worth worth(Judge judge) throws ExpressionTrouble {
            double[] numbers = new double[of.size()];
            Measure measure = Measure.NUMBER;
            for (int i = 0; i < numbers.length; i++) {
                Worth.Amount amount = (Worth.Amount) of.get(i).worth(judge);
                measure = amount.measure();
                numbers[i] = amount.number();
            }
            return judge.amount(symbol, function.gives(judge, symbol, measure), function.of(numbers));
        }
    }

    /** The terms it is made of. */
    default List<Term> parts() {
        return List.of();
    }
}
