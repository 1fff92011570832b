package org.hidewright.testkit.faults;

import java.util.List;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;

/** Faults of refusals. */
public final class Refusing {
    private Refusing() {}

    /** It refuses what it calls usual. */
    @Calculates("choosy")
    public static final class Choosy implements Calculator<Strip.Asks, Strip.Takes> {
        public static final NoticeKind TOO_WIDE = NoticeKind.stop("too-wide");

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return asks.width().mm() > 50
                    ? Outcome.refuse(TOO_WIDE.at("width", asks.width()))
                    : Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }

        @Override
        public List<NoticeKind> notices() {
            return List.of(TOO_WIDE);
        }
    }

    /** It refuses its own example. */
    @Calculates("bad-example")
    public static final class BadExample implements Calculator<Strip.Asks, Strip.Takes> {
        public static final NoticeKind NOT_THIS = NoticeKind.stop("not-this");

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return asks.width().mm() == 25
                    ? Outcome.refuse(NOT_THIS.at("width"))
                    : Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }

        @Override
        public List<NoticeKind> notices() {
            return List.of(NOT_THIS);
        }
    }

    /** It refuses nearly everything. */
    @Calculates("unwilling")
    public static final class Unwilling implements Calculator<Strip.Asks, Strip.Takes> {
        public static final NoticeKind NO = NoticeKind.stop("no");

        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return asks.width().mm() != 25 || asks.length().mm() > 400
                    ? Outcome.refuse(NO.at("width"))
                    : Outcome.of(Strip.takes(asks, working));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }

        @Override
        public List<NoticeKind> notices() {
            return List.of(NO);
        }
    }
}
