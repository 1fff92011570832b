package org.hidewright.core.bench;

import java.util.Optional;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Working;

/** A calculator whose search finds 1, and would find 2 after it has come back, as code does that was left alone. */
@Calculates("straggling")
public final class Straggling
        implements Calculator<Straggling.Asks, Straggling.Gives>, Search<Straggling.Asks, Straggling.Number> {
    public record Number(@Asked(example = "1") int number) {}

    public record Asks(@Asked Optional<Number> found) {}

    public record Gives(@Answered int number) {}

    private Consumer<Number> heard;

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        return Outcome.of(new Gives(asks.found().map(Number::number).orElse(0)));
    }

    @Override
    public void search(Asks asks, Budget budget, Consumer<Number> better) {
        heard = better;
        better.accept(new Number(1));
    }

    /** What it comes upon when nobody waits for it any more. */
    public void late() {
        heard.accept(new Number(2));
    }
}
