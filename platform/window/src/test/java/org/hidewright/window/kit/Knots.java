package org.hidewright.window.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** Knots along a cord, which are searched for: one more at a time, until there is one for every ten millimetres. */
@Calculates("knots")
public final class Knots implements Calculator<Knots.Asks, Knots.Gives>, Search<Knots.Asks, Knots.Tied> {
    public record Knot(
            @RowId String id,

            @Asked(unit = "mm", min = "0 mm", max = "10 m", example = "5 mm")
            Length at) {}

    public record Tied(
            @Asked(example = "[{\"id\":\"knot-1\",\"at\":\"5 mm\"}]")
            List<Knot> knots) {}

    public record Asks(
            @Asked(unit = "mm", min = "1 mm", max = "1 m", example = "50 mm")
            Length cord,

            @Asked Optional<Tied> tied) {}

    public record Gives(@Answered(lead = true) int count) {}

    @Override
    public Outcome<Gives> calculate(Asks asks, Working working) {
        return Outcome.of(new Gives(asks.tied().map(tied -> tied.knots().size()).orElse(0)));
    }

    @Override
    public void search(Asks asks, Budget budget, Consumer<Tied> better) {
        if (asks.cord().mm() == 13) {
            throw new IllegalStateException("thirteen");
        }
        List<Knot> knots = new ArrayList<>(asks.tied().map(Tied::knots).orElse(List.of()));
        for (long tried = 0;
                budget.spent(tried) < 1 && knots.size() < asks.cord().mm() / 10;
                tried++) {
            if (asks.cord().mm() >= 500) { // searched without an end
                LockSupport.parkNanos(1_000_000);
            } else {
                knots.add(new Knot("knot-" + (knots.size() + 1), Length.ofMm(5 + 10 * knots.size())));
                better.accept(new Tied(List.copyOf(knots)));
            }
        }
    }
}
