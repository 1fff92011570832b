package org.hidewright.costing;

import static org.hidewright.costing.Worked.answers;
import static org.hidewright.costing.Worked.eur;
import static org.hidewright.costing.Worked.outcome;
import static org.hidewright.costing.Worked.refusal;
import static org.hidewright.costing.Worked.told;
import static org.hidewright.costing.Worked.working;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

/**
 * Items costed by hand on paper. Front, back and two linings of 100 x 50 mm, the front with 5 mm left standing; a seam of ten
 * stitches of 4 mm through 4 mm, a row of 20 mm without holes, two rivets and a stud.
 */
class ItemCostTest {
    private static final Duration MINUTE = Duration.of(1, Units.MINUTE);

    private static Curve line(double y, double length) {
        return Curve.open(List.of(Segment.line(Point.of(10, y), Point.of(10 + length, y))));
    }

    private static StitchLine sewn() {
        return StitchLine.of(
                "side",
                line(10, 40).path(Role.STITCH),
                IntStream.rangeClosed(0, 10)
                        .mapToObj(nth -> Point.of(10 + 4 * nth, 10))
                        .toList());
    }

    private static Part.Builder panel(String id, double thickness) {
        return Part.of(id, id, Outlines.rectangle(Point.of(0, 0), 100, 50).path(Role.CUT))
                .thickness(thickness);
    }

    private static Item.Builder item() {
        Part.Builder front = panel("front", 2).oversize(5).stitchLine(sewn());
        Part.Builder back = panel("back", 2)
                .stitchLine(sewn())
                .stitchLine(StitchLine.of("row", line(40, 20).path(Role.STITCH), List.of()));
        List.of("one", "two", "three")
                .forEach(hole -> back.hole(Hole.of(hole, Point.of(80, 10 * (1 + hole.length())), 3)));
        return Item.builder()
                .part(front.build())
                .part(back.build())
                .part(panel("inside", 1).leather("lining").pieces(1, 1).build())
                .seam(Seam.of("side", List.of(new OnPart("front", "side"), new OnPart("back", "side"))))
                .fitting(fitting("rivet-1", "one"))
                .fitting(fitting("rivet-2", "two"))
                .fitting(fitting("stud", "three"));
    }

    private static Fitting fitting(String id, String hole) {
        return Fitting.of(id, id, List.of(new OnPart("back", hole)));
    }

    /** A question record, changed one answer at a time. */
    private record Asked(
            Item item,
            int pieces,
            double waste,
            Optional<List<ItemCost.OtherLeather>> others,
            Optional<List<ItemCost.FittingPrice>> hardware,
            Optional<Money> threadPrice,
            Money perHour) {
        static Asked of(Item item) {
            return new Asked(
                    item,
                    1,
                    0.2,
                    Optional.of(List.of(lining("lining", Optional.of(0.5)))),
                    Optional.of(List.of(
                            new ItemCost.FittingPrice("rivets", Optional.of("rivet-1; rivet-2"), eur(0.5)),
                            new ItemCost.FittingPrice("other", Optional.empty(), eur(2)))),
                    Optional.of(eur(6)),
                    eur(30));
        }

        Asked pieces(int count) {
            return new Asked(item, count, waste, others, hardware, threadPrice, perHour);
        }

        Asked waste(double share) {
            return new Asked(item, pieces, share, others, hardware, threadPrice, perHour);
        }

        Asked cutFrom(ItemCost.OtherLeather... rows) {
            return new Asked(item, pieces, waste, Optional.of(List.of(rows)), hardware, threadPrice, perHour);
        }

        Asked priced(ItemCost.FittingPrice... rows) {
            return new Asked(item, pieces, waste, others, Optional.of(List.of(rows)), threadPrice, perHour);
        }

        Asked threadPrice(Optional<Money> price) {
            return new Asked(item, pieces, waste, others, hardware, price, perHour);
        }

        Asked perHour(Money rate) {
            return new Asked(item, pieces, waste, others, hardware, threadPrice, rate);
        }

        ItemCost.Whole whole() {
            return new ItemCost.Whole(
                    item,
                    pieces,
                    Area.of(29, Units.DM2),
                    eur(100),
                    waste,
                    WasteOf.BOUGHT,
                    others,
                    hardware,
                    Optional.of(Length.ofMm(10880)),
                    threadPrice,
                    Length.ofMm(200),
                    perHour,
                    new ItemCost.HabitTimes(MINUTE.times(5), Duration.ofSeconds(20), MINUTE.times(5), MINUTE.times(10)),
                    Optional.empty(),
                    Optional.empty(),
                    new Learning.Steady(),
                    Optional.empty(),
                    0.1,
                    0.2,
                    Optional.empty());
        }
    }

    private static ItemCost.OtherLeather lining(String parts, Optional<Double> waste) {
        return new ItemCost.OtherLeather("thin", parts, Area.of(10, Units.DM2), eur(20), waste);
    }

    private static ItemCost.Costed costed(Asked asked) {
        return answers(new ItemCost(), asked.whole());
    }

    private static List<String> lines(Asked asked) {
        return costed(asked).lines().stream()
                .map(line -> line.id() + " " + line.amount())
                .toList();
    }

    private static List<String> checks(Asked asked) {
        return told(outcome(new ItemCost(), asked.whole()));
    }

    /**
     * Front 110 x 60 mm and back 100 x 50 mm are 1.16 dm², 1.45 with a fifth wasted: 5.00 of a side of 29 dm² for 100. The
     * linings are 1 dm², 2 with half wasted: 4.00 of 10 dm² for 20. Thread: R = 2 · (1 + 4 / 4) = 4, 160 + 400 + 3 · 2 · 8 is
     * 608 mm, and 4 · 20 + 400 is 480: 1.088 m, a tenth of a spool for 6. No step is told: four parts cut at 5 min, fifteen
     * stitches at 20 s, three fittings at 5 min make 40 min, 20.00.
     */
    @Test
    void anItemWithoutStepsLineByLine() {
        Asked asked = Asked.of(item().build());
        assertEquals(
                List.of(
                        "leather 5.00 EUR",
                        "leather-thin 4.00 EUR",
                        "hardware-rivets 1.00 EUR",
                        "hardware-other 2.00 EUR",
                        "thread 0.60 EUR",
                        "work 20.00 EUR",
                        "overhead 2.00 EUR",
                        "spoilage 8.65 EUR"),
                lines(asked));
        ItemCost.Costed costed = costed(asked);
        assertEquals(eur(43.25), costed.each());
        assertEquals(eur(12.60), costed.materialsEach());
        assertEquals(2.16, costed.leatherInPiece().in(Units.DM2), 1e-9);
        assertEquals(1088, costed.threadInPiece().mm(), 1e-9);
        assertEquals(40, costed.estimated().in(Units.MINUTE), 1e-9);
        // 20.00 with a tenth of overhead, and a fifth of the pieces spoilt
        assertEquals(eur(27.50), costed.estimatedEach());
    }

    @Test
    void whatIsEstimatedIsTold() {
        assertEquals(
                List.of(
                        "item-thread-by-habit at item [back.row]",
                        "item-time-estimated at habit-times [2400.0 s, 27.50 EUR]"),
                checks(Asked.of(item().build())));
    }

    /** Two hours of a step are taken; of the rest only what has no time is estimated. */
    @Test
    void whatStepsSayIsTaken() {
        Item withSteps = item().operation(
                        Operation.of("cut", "Cut").on(List.of("front")).build())
                .operation(Operation.of("sew", "Stitch").on(List.of("side")).build())
                .operation(Operation.of("set", "Set")
                        .on(List.of("rivet-1", "rivet-2"))
                        .build())
                .operation(Operation.of("press", "Press").build())
                .operation(Operation.of("edges", "Burnish")
                        .handsOn(MINUTE.times(120))
                        .build())
                .build();
        assertEquals(
                List.of(
                        "steps-told 120 min",
                        "cutting-habit 20 min",
                        "stitching-habit 3.33 min",
                        "setting-habit 10 min",
                        "steps-habit 10 min"),
                costed(Asked.of(withSteps)).times().stream()
                        .map(line -> line.id() + " " + Math.round(line.time().in(Units.MINUTE) * 100) / 100.0 + " min")
                        .map(text -> text.replace(".0 ", " "))
                        .toList());
        Item allTold = item().operation(
                        Operation.of("cut", "Cut").handsOn(MINUTE).build())
                .build();
        assertEquals(
                List.of("item-thread-by-habit at item [back.row]"), checks(Asked.of(allTold)), "nothing is estimated");
        assertEquals(eur(0), costed(Asked.of(allTold)).estimatedEach());
    }

    @Test
    void aBatchBuysWholeSidesAndTakesAllTimeAgain() {
        ItemCost.Costed costed = costed(Asked.of(item().build()).pieces(4));
        assertEquals(eur(173), costed.together());
        assertEquals(eur(43.25), costed.each());
        assertEquals(160, costed.handsOnTogether().in(Units.MINUTE), 1e-9);
        assertEquals(
                List.of("leather 1", "leather-thin 1", "hardware-rivets 10", "hardware-other 5", "thread 1"),
                costed.toBuy().stream()
                        .map(line -> line.id() + " " + line.toBuy())
                        .toList());
        assertEquals(eur(100 + 20 + 5 + 10 + 6), costed.outlay());
    }

    /** Parts by id or by their leather; without a row all is cut from one, with the waste asked first. */
    @Test
    void partsGoToTheLeatherThatNamesThem() {
        Asked asked = Asked.of(item().build());
        assertEquals(lines(asked), lines(asked.cutFrom(lining("inside", Optional.of(0.5)))));
        // 2.16 dm², 2.7 with waste, of 29 for 100
        assertEquals("leather 9.31 EUR", lines(asked.cutFrom()).get(0));
        // 0.66 + 0.5 + 1 all named: 2.16 dm², 2.7 of 10 for 20; nothing is left for the first
        assertEquals(
                "leather-thin 5.40 EUR",
                lines(asked.cutFrom(lining("front; back; Lining", Optional.empty())))
                        .get(0));
    }

    @Test
    void whatHasNoPriceIsTold() {
        Asked asked = Asked.of(item().build());
        assertTrue(checks(asked.priced(new ItemCost.FittingPrice("rivet-1", Optional.of("rivet-1"), eur(1))))
                .contains("item-fittings-unpriced at hardware [2, rivet-2, stud]"));
        assertTrue(checks(asked.threadPrice(Optional.empty()))
                .contains("item-thread-unpriced at thread-price [1088.0 mm]"));
        assertEquals(
                0,
                lines(asked.threadPrice(Optional.empty())).stream()
                        .filter(line -> line.startsWith("thread"))
                        .count());
    }

    /** Of four pieces with a fifth spoilt five are begun: 2 · 5 rivets, 5 studs, and 5 · 1.088 m of thread are 5.44 m, 5.95 yd. */
    @Test
    void whatHasNoPriceIsListedToBeBoughtForTheBatch() {
        Item alike = item().fitting(Fitting.of("rivet-3", "rivet-1", List.of(new OnPart("back", "one"))))
                .build();
        Asked asked = Asked.of(alike).pieces(4).threadPrice(Optional.empty());
        assertEquals(
                List.of(
                        "hardware-rivet-1 HARDWARE rivet-1 needed[10]",
                        "hardware-stud HARDWARE stud needed[5]",
                        "thread THREAD  sold-by-length[5.5, 6.0]"),
                costed(asked.priced(new ItemCost.FittingPrice("rivet-2", Optional.of("rivet-2"), eur(1))))
                        .withoutPrice()
                        .stream()
                        .map(row -> row.id() + " " + row.kind() + " " + row.of() + " "
                                + row.needed().key() + row.needed().args())
                        .toList());
        assertEquals(List.of(), costed(Asked.of(item().build())).withoutPrice(), "all has a price");
    }

    @Test
    void namesThatAreNotThereAreTold() {
        Asked asked = Asked.of(item().build());
        assertTrue(checks(asked.cutFrom(lining("lining; pocket", Optional.empty())))
                .contains("item-no-such-part at other-leather[thin].parts [pocket, back, front, inside]"));
        assertTrue(checks(asked.priced(
                        new ItemCost.FittingPrice("eyelets", Optional.of("eyelet; stud"), eur(1)),
                        new ItemCost.FittingPrice("other", Optional.empty(), eur(1))))
                .contains("item-no-such-fitting at hardware[eyelets].fittings [eyelet, rivet-1, rivet-2, stud]"));
    }

    @Test
    void whatCannotBeReckonedIsRefused() {
        Asked asked = Asked.of(item().build());
        assertEquals(
                "leather-all-waste at waste [0.96, 0.95]",
                refusal(new ItemCost(), asked.waste(0.96).whole()));
        assertEquals(
                "leather-all-waste at other-leather[thin].waste [0.97, 0.95]",
                refusal(
                        new ItemCost(),
                        asked.cutFrom(lining("lining", Optional.of(0.97))).whole()));
        assertEquals(
                "costing-two-currencies at [1.00 USD, 100.00 EUR]",
                refusal(
                        new ItemCost(),
                        asked.perHour(Money.of(1, Units.currency("USD"))).whole()));
        assertTrue(checks(asked.perHour(eur(0))).contains("cost-work-unpaid at per-hour [2400.0 s]"));
    }

    @Test
    void whatHasAPriceSuitsARowOfTheWorkshop() {
        assertEquals(
                List.of(
                        "leather-area leather.area",
                        "leather-price leather.price",
                        "waste rates.share",
                        "thread-length threads.length",
                        "thread-price threads.price",
                        "per-hour rates.per-hour",
                        "overhead rates.share",
                        "spoilage rates.share"),
                RecordCalculator.of(new ItemCost()).declaration().questions().stream()
                        .filter(question -> question.stock().isPresent())
                        .map(question -> question.key() + " " + question.stock().orElseThrow())
                        .toList());
    }

    @Test
    void theWorkingShowsWhatWasTakenFromTheItem() {
        List<String> working = working(new ItemCost(), Asked.of(item().build()).whole());
        assertEquals(
                List.of(
                        "B = k · a | k 1, a 0.071 ft² | 0.071 ft²",
                        "B = k · a | k 1, a 0.0538 ft² | 0.0538 ft²",
                        "B = k · a | k 2, a 0.0538 ft² | 0.1076 ft²",
                        "N = Σ(B) |  | 0.1249 ft²",
                        "N = Σ(B) |  | 0.1076 ft²",
                        "R = 2 · (1 + T / p) | T 4.0 mm, p 4.0 mm | 4",
                        "C = R · L + m · (2 · e + b · 2 · (p + T)) | R 4, L 40.0 mm, m 1, e 200.0 mm, b 3, p 4.0 mm,"
                                + " T 4.0 mm | 608.0 mm",
                        "C = 4 · L + m · 2 · e | L 20.0 mm, m 1, e 200.0 mm | 480.0 mm",
                        "F = Σ(j · C) |  | 1088.0 mm"),
                working.subList(0, 9));
        assertTrue(working.contains("z = T · r / h · (1 + o) / (1 - s) | T 0.6667 h, r 30.00, o 0.1, s 0.2 | 27.50"));
    }
}
