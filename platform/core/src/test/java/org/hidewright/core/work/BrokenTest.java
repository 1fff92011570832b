package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
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

    /** A record that does not belong there, as raw types allow. */
    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Outcome<Gives> other() {
        return (Outcome) Outcome.of(new Cell("a", 1, Length.ZERO));
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
                way("another record than is declared", (asks, working) -> other()),
                way("a step that is not finite", (asks, working) -> {
                    working.step(DOUBLE, Double.NaN, "t", 1);
                    return Outcome.of(gives(1));
                }),
                way("a step with an object of its own", (asks, working) -> {
                    working.step(DOUBLE, 1, "t", new Faulty(null));
                    return Outcome.of(gives(1));
                }),
                way(
                        "a notice with an object of its own",
                        (asks, working) -> Outcome.of(
                                gives(1), List.of(NoticeKind.note("x").with(Phrase.of("y", new Faulty(null)))))),
                way(
                        "a notice with a number of its own",
                        (asks, working) -> Outcome.of(
                                gives(1), List.of(NoticeKind.note("x").with(new AtomicInteger())))),
                way(
                        "a notice of a megabyte",
                        (asks, working) -> Outcome.of(
                                gives(1), List.of(NoticeKind.note("x").with("x".repeat(1 << 20))))),
                way(
                        "a table without end",
                        (asks, working) -> Outcome.of(gives(
                                1,
                                Stream.generate(() -> new Cell("a", 1, Length.ZERO))
                                        .limit(Completeness.MOST_ROWS + 1)
                                        .toArray(Cell[]::new)))),
                way(
                        "a text without end",
                        (asks, working) -> Outcome.of(
                                new Gives(Length.ZERO, 1, List.of(), List.of("x".repeat(Sayable.LONGEST_TEXT + 1))))),
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

    static Stream<Arguments> sentences() {
        return Stream.of(
                sentence("its answer “ratio” is NaN, which is no number", () -> Outcome.of(gives(Double.NaN))),
                sentence(
                        "its answer “factor” is -Infinity, which is no number",
                        () -> Outcome.of(gives(1, new Cell("a", -1 / 0.0, Length.ZERO)))),
                sentence("its answer “length” is missing", () -> Outcome.of(new Gives(null, 1, List.of(), List.of()))),
                sentence(
                        "its answer “texts” should be of the kind text and is a java.lang.Integer",
                        () -> Outcome.of(new Gives(Length.ZERO, 1, List.of(), numbersForTexts()))),
                sentence(
                        "its answer “table” has 5001 rows, and 5000 can be shown",
                        () -> Outcome.of(gives(
                                1,
                                Stream.generate(() -> new Cell("a", 1, Length.ZERO))
                                        .limit(5001)
                                        .toArray(Cell[]::new)))),
                sentence(
                        "it tells a java.util.concurrent.atomic.AtomicInteger, which cannot be put into words",
                        () -> Outcome.refuse(NoticeKind.stop("x").with(new AtomicInteger()))),
                sentence("calculate gave null where an outcome belongs", () -> null),
                sentence("org.hidewright.core.work.BrokenTest$Cell, and declared is", BrokenTest::other));
    }

    private static Arguments sentence(String said, Supplier<Outcome<Gives>> outcome) {
        return Arguments.of(said, outcome);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static List<String> numbersForTexts() {
        return (List) List.of(3);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sentences")
    void aFaultIsToldInWordsThatNameIt(String said, Supplier<Outcome<Gives>> outcome) {
        WorkedSlip slip = new Shop(new Faulty((asks, working) -> outcome.get())).one("faulty", "");
        assertEquals(State.BROKEN, slip.state());
        assertTrue(
                said(slip.remarks().get(0)).contains(said), said(slip.remarks().get(0)));
        assertTrue(said(slip.remarks().get(0)).contains("hidewright addons off org.example.kit"));
    }

    @Test
    void whatIsTheMostThatCanBeShownIsShown() {
        WorkedSlip slip = new Shop(new Faulty((asks, working) -> {
                    for (int i = 0; i < Notes.MOST_STEPS; i++) {
                        working.step(DOUBLE, 1, "t", 1.5, "s", "x".repeat(Sayable.LONGEST_TEXT));
                    }
                    Cell[] cells = Stream.generate(() -> new Cell("a", 1, Length.ZERO))
                            .limit(Completeness.MOST_ROWS)
                            .toArray(Cell[]::new);
                    return Outcome.of(
                            gives(1, cells),
                            Collections.nCopies(
                                    Notes.MOST_NOTICES, NoticeKind.note("x").with(1)));
                }))
                .one("faulty", "");
        assertEquals(State.WORKED, slip.state());
        assertEquals(Notes.MOST_STEPS, slip.steps().size());
        assertEquals(Collections.nCopies(Notes.MOST_NOTICES, "x"), keys(slip.remarks()));
    }

    @Test
    void aFloodBesideTheAnswersIsCutOffAndToldOnceAndWhatWeighsMostStays() {
        WorkedSlip slip = new Shop(new Faulty((asks, working) -> {
                    for (int i = 0; i < 1000; i++) {
                        working.step(DOUBLE, i, "t", 1);
                        working.source("answer-" + i, HABIT);
                    }
                    List<Notice> notices = new ArrayList<>(
                            Collections.nCopies(1000, NoticeKind.note("x").with()));
                    notices.add(NoticeKind.caution("sharp").with());
                    return Outcome.of(gives(1), notices);
                }))
                .one("faulty", "");
        assertEquals(State.WORKED, slip.state());
        assertEquals(Notes.MOST_STEPS, slip.steps().size());
        assertEquals(1, slip.otherSources().size());
        assertEquals(Notes.MOST_NOTICES + 1, slip.remarks().size());
        assertEquals("sharp", keys(slip.remarks()).get(0));
        String said = said(slip.remarks().get(Notes.MOST_NOTICES));
        assertTrue(said.startsWith("The calculator “faulty” tells more than anybody can read."), said);
        assertTrue(said.contains("It gave 1001 notices and 1000 steps of working"), said);
    }

    @Test
    void aBundleThatIsNotCalledAnyMoreIsToldWithAWayOut() {
        WorkedSlip slip = new Shop(new Faulty((asks, working) -> {
                    throw BundleFault.forGood(Phrase.of("fault-late", 5));
                }))
                .one("faulty", "");
        assertEquals(State.BROKEN, slip.state());
        assertEquals(List.of("left-alone"), keys(slip.remarks()));
        assertEquals(
                "The calculator “faulty” has failed, and its bundle is not called again until the next start. | line 1,"
                        + " column 1, slip “s” | This is a fault of bundle org.example.kit, not of your numbers: it had"
                        + " not come back after 5 s and was left to itself. | Tell the maker of the bundle, or turn it"
                        + " off: hidewright addons off org.example.kit. Everything else works on.",
                said(slip.remarks().get(0)));
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
