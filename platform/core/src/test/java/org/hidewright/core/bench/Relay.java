package org.hidewright.core.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;

/** A calculator that hands lengths on, for tests of links; it counts its calls and keeps their order. */
@Calculates("relay")
public final class Relay implements Calculator<Relay.Asks, Relay.Gives> {
    /** Lengths handed on, in the order of the calls. */
    public final List<Double> calls = new ArrayList<>();

    private final AtomicInteger count = new AtomicInteger();

    public record Piece(
            @RowId String id,
            @Asked(unit = "mm", example = "1 mm") Length length) {}

    public record Asks(
            @Asked(unit = "mm", min = "0", max = "1000 m", preset = "1 mm")
            Length take,

            @Asked(unit = "mm", preset = "0 mm") Length more,
            @Asked(unit = "mm", preset = "1 mm; 2 mm") List<Length> all,
            @Asked(preset = "[]") List<Piece> rows,
            @Asked(unit = "cm²") Optional<Area> any,
            @Asked(preset = "3") int times) {}

    public record Line(
            @RowId String id,
            @Answered(unit = "mm") Length at,
            @Answered int count) {}

    public record Gives(
            @Answered(unit = "mm", lead = true) Length give,
            @Answered List<Line> table,
            @Answered int times,
            @Answered(unit = "mm") Optional<Length> maybe) {}

    public int count() {
        return count.get();
    }

    @Override
    public synchronized Outcome<Gives> calculate(Asks asks, Working working) {
        count.incrementAndGet();
        Length give = asks.take().plus(asks.more());
        calls.add(give.mm());
        List<Line> table = new ArrayList<>();
        asks.all().forEach(length -> table.add(new Line("line-" + (table.size() + 1), length, table.size())));
        asks.rows().forEach(piece -> table.add(new Line(piece.id(), piece.length(), table.size())));
        return Outcome.of(new Gives(give, table, asks.times(), asks.any().map(area -> Length.ofMm(1))));
    }
}
