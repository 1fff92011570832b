package org.hidewright.command.kit;

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
import org.hidewright.api.measure.Length;

/** A length nearest below another is searched for, a millimetre at each hundredth try. */
@Calculates("kit-guess")
public final class Guess implements Calculator<Guess.Asks, Guess.Gives>, Search<Guess.Asks, Guess.Nearest> {
    public record Nearest(
            @Asked(unit = "mm", example = "3 mm") Length length) {}

    public record Asks(
            @Asked(unit = "mm", min = "0 mm", example = "12 mm")
            Length below,

            @Asked Optional<Nearest> nearest) {}

    public record Gives(@Answered(unit = "mm", lead = true) Length left) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        double found = asks.nearest().map(nearest -> nearest.length().mm()).orElse(0.0);
        return Outcome.of(new Gives(Length.ofMm(asks.below().mm() - found)));
    }

    @Override
    public void search(Asks asks, Budget budget, Consumer<Nearest> better) {
        if (asks.below().mm() == 13) {
            throw new IllegalStateException("thirteen");
        }
        double length = asks.nearest().map(nearest -> nearest.length().mm()).orElse(0.0);
        long tried = 0;
        while (length < asks.below().mm() && budget.spent(tried) < 1) {
            tried++;
            if (tried % 100 == 0) {
                length++;
                better.accept(new Nearest(Length.ofMm(length)));
            }
        }
    }
}
