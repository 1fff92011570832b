package org.hidewright.core.jobcard;

import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;

/** Always fails. */
@Calculates("faulty")
final class Faulty implements Calculator<Faulty.Asks, Faulty.Gives> {
    record Asks(@Asked(preset = "1") int number) {}

    record Gives(@Answered int number) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        throw new IllegalStateException("OUT OF THREAD");
    }
}
