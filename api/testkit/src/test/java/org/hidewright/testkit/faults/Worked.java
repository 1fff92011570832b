package org.hidewright.testkit.faults;

import java.util.List;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;

/** Faults of how it is worked. */
public final class Worked {
    private Worked() {}

    /** It is right everywhere but at its example. */
    @Calculates("leaping")
    public static final class Leaping implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            return Outcome.of(
                    Strip.takes(asks.width().mm() == 25 ? 50 : asks.width().mm()));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }

    /** It adds up what it could have multiplied. */
    @Calculates("slow")
    public static final class Slow implements Calculator<Strip.Asks, Strip.Takes> {
        @Override
        public Outcome<Strip.Takes> calculate(Strip.Asks asks, Working working) {
            double sum = 0;
            for (int i = 0; i < 8_000_000; i++) {
                sum += Math.sin(i) * asks.width().mm();
            }
            return Outcome.of(Strip.takes(sum));
        }

        @Override
        public List<Formula> formulas() {
            return List.of(Strip.AREA);
        }
    }
}
