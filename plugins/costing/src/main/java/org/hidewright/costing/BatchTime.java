package org.hidewright.costing;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Duration;
import org.osgi.service.component.annotations.Component;

/** How long a batch takes when the hands learn from piece to piece. */
@Calculates("batch-time")
@Component(service = Calculator.class)
public final class BatchTime implements Calculator<BatchTime.Batch, BatchTime.Times> {
    private static final Formula AVERAGE = Formula.of("time-average", "a = T / n", Origins.ARITHMETIC);
    private static final Formula LAST = Formula.of("time-last", "l = T - V", Origins.ARITHMETIC);

    /** What is asked. */
    public record Batch(
            @Asked(unit = "min", min = "1 s", max = "1000 h", usual = "5 min-40 h", example = "3 h")
            Duration firstPiece,

            @Asked(min = "1", max = "100000", usual = "1-200", example = "8")
            int pieces,

            @Asked(example = "{\"cumulative-average\":{\"rate\":\"85 %\"}}")
            Learning learning) {}

    /** What is answered. */
    public record Times(
            @Answered(unit = "h", step = "0.1 h", by = "time-steady", lead = true)
            Duration together,

            @Answered(unit = "min", step = "1 min", by = "time-average")
            Duration average,

            @Answered(unit = "min", step = "1 min", by = "time-last")
            Duration lastPiece) {}

    @Override
    public Outcome<Times> calculate(Batch batch, Working working) {
        Duration first = batch.firstPiece();
        int count = batch.pieces();
        Duration together = first.times(batch.learning().pieces(count));
        step(batch.learning(), together, first, count, working);
        working.source("together", batch.learning().formula().source());
        Duration average = together.times(1.0 / count);
        working.step(AVERAGE, average, "T", together, "n", count);
        Duration before = first.times(batch.learning().pieces(count - 1));
        Duration last = together.minus(before);
        working.step(LAST, last, "T", together, "V", before);
        return Outcome.of(new Times(together, average, last));
    }

    /** Takes down how the time of a batch follows from that of its first piece. */
    static void step(Learning learning, Duration together, Duration first, int count, Working working) {
        if (learning instanceof Learning.CumulativeAverage average) {
            working.step(learning.formula(), together, "n", count, "t", first, "q", average.rate());
        } else if (learning instanceof Learning.EachPiece each) {
            working.step(learning.formula(), together, "t", first, "n", count, "q", each.rate());
        } else {
            working.step(learning.formula(), together, "n", count, "t", first);
        }
    }

    @Override
    public List<Formula> formulas() {
        return List.of(Learning.STEADY, Learning.CUMULATIVE, Learning.EACH, AVERAGE, LAST);
    }
}
