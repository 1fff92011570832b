package org.hidewright.testkit.faults;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;

/** Faults of what is answered and told. */
public final class Answering {
    private Answering() {}

    /** It draws the root of less than nothing on a wide strip. */
    @Calculates("not-a-number")
    public static final class NotANumber implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            double share = Math.sqrt(50 - asks.width().mm());
            return Outcome.of(new Strip.Takes(Area.ZERO, share, List.of()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It divides by nothing on a narrow strip. */
    @Calculates("endless")
    public static final class Endless implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            double share = 1 / (asks.width().mm() - 10);
            return Outcome.of(new Strip.Takes(Area.ZERO, share, List.of()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It leaves an answer out. */
    @Calculates("missing")
    public static final class Missing implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(new Strip.Takes(null, 1, List.of()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It answers nothing at all. */
    @Calculates("no-outcome")
    public static final class NoOutcome implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return null;
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It breaks on a wide strip. */
    @Calculates("breaks")
    public static final class Breaks implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            if (asks.width().mm() > 50) {
                throw new IllegalStateException("too wide");
            }
            return Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It goes round until it is interrupted. */
    @Calculates("never-ends")
    public static final class NeverEnds implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            while (!Thread.interrupted()) {
                Thread.onSpinWait();
            }
            return Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It refuses with what it does not declare. */
    @Calculates("secret-refusal")
    public static final class SecretRefusal implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return asks.length().mm() > 2500
                    ? Outcome.refuse(Strip.TOO_LONG.at("length", asks.length()))
                    : Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It works by a formula it does not declare. */
    @Calculates("secret-formula")
    public static final class SecretFormula implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Formula.of("strip-area", "A = l · w", Strip.PLANE));
        }
    }

    /** It fills a symbol that its formula does not have. */
    @Calculates("secret-symbol")
    public static final class SecretSymbol implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            working.step(Strip.AREA, asks.width(), "w", asks.width(), "q", 2);
            return Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It stands on a source it does not declare. */
    @Calculates("secret-source")
    public static final class SecretSource implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            working.source("area", Source.of("hearsay", Source.Kind.FROM_MEMORY));
            return Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It tells of a class of its own. */
    @Calculates("own-words")
    public static final class OwnWords implements Calculator<Strip.Asks, Strip.Takes> {
        private static final NoticeKind TOLD = NoticeKind.note("own-words");

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks, working), List.of(TOLD.with(new Object())));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }

        @Override
        public List<NoticeKind> notices() {
            return List.of(TOLD);
        }
    }

    /** It answers a phrase it does not declare. */
    @Calculates("secret-phrase")
    public static final class SecretPhrase implements Calculator<Strip.Asks, SecretPhrase.Takes> {
        public record Takes(@Answered Phrase said) {}

        @Override
        public Outcome<SecretPhrase.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(new Takes(Phrase.of("wide-enough")));
        }

        @Override
        public List<Formula> formulas() {
            return List.of();
        }
    }

    /** It answers with more than a page holds. */
    @Calculates("long-winded")
    public static final class LongWinded implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(1, "word ".repeat(1000)));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It declares a notice and never raises it. */
    @Calculates("never-raised")
    public static final class NeverRaised implements Calculator<Strip.Asks, Strip.Takes> {
        private static final NoticeKind FORGOTTEN = NoticeKind.note("forgotten");

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }

        @Override
        public List<NoticeKind> notices() {
            return List.of(FORGOTTEN);
        }
    }
}
