package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Calculators of strangers that fail in every way: the slip says so, and everything else works on. */
class BrokenTest {
    private static final Source HABIT = Source.of("habit", Source.Kind.COMMON_PRACTICE);
    private static final Formula DOUBLE = Formula.of("double", "L = 2 · t", HABIT);

    record Asks(@Asked(preset = "1") int number) {}

    record Cell(
            @RowId String id,
            @Answered double factor,
            @Answered(unit = "mm") Length at) {}

    record Gives(
            @Answered(unit = "mm") Length length,
            @Answered double ratio,
            @Answered List<Cell> table,
            @Answered List<String> texts) {}

    @Calculates("faulty")
    static final class Faulty implements Calculator<Asks, Gives> {
        final AtomicInteger calls = new AtomicInteger();
        private final BiFunction<Asks, Working, Outcome<Gives>> way;

        Faulty(BiFunction<Asks, Working, Outcome<Gives>> way) {
            this.way = way;
        }

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            calls.incrementAndGet();
            return way.apply(asks, working);
        }
    }

    private static Gives gives(double ratio, Cell... cells) {
        return new Gives(Length.ofMm(1), ratio, List.of(cells), List.of());
    }

    private static Outcome<Gives> forEver(int depth) {
        return depth < 0 ? Outcome.of(gives(1)) : forEver(depth + 1);
    }

    /** Throws a checked exception that its signature does not declare, as compilers of other languages allow. */
    @SuppressWarnings("unchecked")
    private static <E extends Exception> void sneak(Exception exception) throws E {
        throw (E) exception;
    }

    private static Named<BiFunction<Asks, Working, Outcome<Gives>>> way(
            String name, BiFunction<Asks, Working, Outcome<Gives>> way) {
        return Named.of(name, way);
    }

    static Stream<Named<BiFunction<Asks, Working, Outcome<Gives>>>> waysToFail() {
        return Stream.of(
                way("an exception", (asks, working) -> {
                    throw new IllegalStateException("out of thread");
                }),
                way("an assertion", (asks, working) -> {
                    throw new AssertionError("never");
                }),
                way("a checked exception in disguise", (asks, working) -> {
                    BrokenTest.<RuntimeException>sneak(new java.io.IOException("no file"));
                    return null;
                }),
                way("a class that is not there", (asks, working) -> {
                    throw new NoClassDefFoundError("org/example/Gone");
                }),
                way("no end of calls", (asks, working) -> forEver(1)),
                way("no outcome", (asks, working) -> null),
                way("an answer that is null", (asks, working) -> Outcome.of(new Gives(null, 1, List.of(), List.of()))),
                way("a table that is null", (asks, working) -> Outcome.of(new Gives(Length.ZERO, 1, null, List.of()))),
                way(
                        "a row that is null",
                        (asks, working) -> Outcome.of(new Gives(
                                Length.ZERO, 1, Arrays.asList(new Cell("a", 1, Length.ZERO), null), List.of()))),
                way("a cell that is null", (asks, working) -> Outcome.of(gives(1, new Cell("a", 1, null)))),
                way(
                        "an item that is null",
                        (asks, working) -> Outcome.of(new Gives(Length.ZERO, 1, List.of(), Arrays.asList("a", null)))),
                way("not a number", (asks, working) -> Outcome.of(gives(Double.NaN))),
                way("infinity", (asks, working) -> Outcome.of(gives(Double.POSITIVE_INFINITY))),
                way(
                        "not a number in a cell",
                        (asks, working) -> Outcome.of(gives(1, new Cell("a", 0.0 / 0, Length.ZERO)))),
                way(
                        "a length that is none",
                        (asks, working) -> Outcome.of(new Gives(Length.ofMm(Double.NaN), 1, List.of(), List.of()))),
                way("a symbol without a value", (asks, working) -> {
                    working.step(DOUBLE, Length.ZERO, "t");
                    return Outcome.of(gives(1));
                }),
                way("a step without a result", (asks, working) -> {
                    working.step(DOUBLE, null, "t", 1);
                    return Outcome.of(gives(1));
                }),
                way("a source that is null", (asks, working) -> {
                    working.source("length", null);
                    return Outcome.of(gives(1));
                }),
                way(
                        "a stop among answers",
                        (asks, working) -> Outcome.of(
                                gives(1), List.of(NoticeKind.stop("x").with()))),
                way(
                        "a refusal without a reason",
                        (asks, working) -> Outcome.refuse(NoticeKind.note("x").with())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("waysToFail")
    void aFailureStaysOnItsSlip(BiFunction<Asks, Working, Outcome<Gives>> way) {
        WorkedProject worked = new Shop(new Faulty(way), new Relay())
                .work(
                        slip("a", "relay", ""),
                        slip("bad", "faulty", ""),
                        slip("behind", "relay", json("'take': {'from': 'bad', 'answer': 'length'}")),
                        slip("c", "relay", json("'take': {'from': 'a', 'answer': 'give'}")));
        assertEquals(State.BROKEN, worked.slips().get("bad").state());
        assertEquals(List.of("broken"), keys(worked.slips().get("bad").remarks()));
        String said = said(worked.remarks(worked.slips().get("bad")).get(0));
        assertTrue(
                said.startsWith("The calculator “faulty” has failed. | line 3") && said.contains("org.example.kit"),
                said);
        assertEquals(Optional.empty(), worked.slips().get("bad").answers());
        assertEquals(State.WORKED, worked.slips().get("a").state());
        assertEquals(State.WAITING, worked.slips().get("behind").state());
        assertEquals(State.WORKED, worked.slips().get("c").state());
    }

    @Test
    void aBrokenSlipIsTriedAgain() {
        List<Boolean> tried = new ArrayList<>();
        Faulty faulty = new Faulty((asks, working) -> {
            tried.add(true);
            if (tried.size() == 1) {
                throw new IllegalStateException("once");
            }
            return Outcome.of(gives(1));
        });
        Shop shop = new Shop(faulty);
        WorkedProject first = shop.work(slip("a", "faulty", ""));
        assertEquals(State.BROKEN, first.slips().get("a").state());
        assertEquals(
                State.WORKED,
                shop.bench().work(first.project(), first).slips().get("a").state());
        assertEquals(2, faulty.calls.get());
    }

    @Calculates("bad-preset")
    static final class BadPreset implements Calculator<BadPreset.Asks, BadPreset.Gives> {
        record Row(@Asked(unit = "mm") Length length) {}

        record Asks(
                @Asked(preset = "[{\"length\": }]") List<Row> rows,
                @Asked(preset = "1") int number) {}

        record Gives(@Answered int number) {}

        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            return Outcome.of(new Gives(asks.rows().size() + asks.number()));
        }
    }

    @Test
    void aPresetThatIsNoJsonBreaksItsOwnSlipAlone() {
        WorkedProject worked = new Shop(new BadPreset(), new Relay())
                .work(
                        slip("bad", "bad-preset", ""),
                        slip("good", "bad-preset", json("'rows': []")),
                        slip("a", "relay", ""));
        assertEquals(State.BROKEN, worked.slips().get("bad").state());
        assertEquals(List.of("broken"), keys(worked.slips().get("bad").remarks()));
        assertEquals(State.WORKED, worked.slips().get("good").state());
        assertEquals(State.WORKED, worked.slips().get("a").state());
    }

    @Test
    void aRefusalOfTheCalculatorIsPlacedAtItsQuestion() {
        NoticeKind kind = NoticeKind.stop("x");
        WorkedSlip slip = new Shop(new Faulty((asks, working) -> Outcome.refuse(kind.at("number", asks.number()))))
                .work("{\"id\": \"a\", \"calculator\": \"faulty\",\n \"questions\": {\n \"number\": 4}}")
                .slips()
                .get("a");
        assertEquals(State.REFUSED, slip.state());
        assertEquals(3, slip.remarks().get(0).place().line());
        assertEquals("number", slip.remarks().get(0).question());
        assertEquals("a", slip.remarks().get(0).slip());
    }
}
