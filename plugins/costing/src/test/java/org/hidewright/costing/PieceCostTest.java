package org.hidewright.costing;

import static org.hidewright.costing.Worked.answers;
import static org.hidewright.costing.Worked.eur;
import static org.hidewright.costing.Worked.hours;
import static org.hidewright.costing.Worked.refusal;
import static org.hidewright.costing.Worked.told;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;
import org.junit.jupiter.api.Test;

/** Cost sheets worked by hand on paper, line by line. */
class PieceCostTest {
    private static final Area SIDE = Area.of(20, Units.FT2);

    static PieceCost.LeatherUsed leather(double waste, WasteOf of) {
        return new PieceCost.LeatherUsed("body", Area.of(2, Units.FT2), waste, of, SIDE, eur(100));
    }

    static PieceCost.Piece piece(
            int pieces, Learning learning, double overhead, double spoilage, PieceCost.LeatherUsed leather) {
        return new PieceCost.Piece(
                pieces,
                Optional.of(List.of(leather)),
                Optional.of(List.of(new PieceCost.FittingUsed("stud", 2, eur(1.25)))),
                Optional.of(List.of(
                        new PieceCost.ThreadUsed("linen", Length.of(5, Units.M), Length.of(25, Units.M), eur(6)))),
                Optional.of(List.of(
                        new PieceCost.LiquidUsed("dye", Volume.of(10, Units.ML), Volume.of(250, Units.ML), eur(14)))),
                Optional.of(List.of(new PieceCost.MachineUsed("laser", Duration.of(6, Units.MINUTE), eur(6)))),
                bench(hours(2)),
                eur(30),
                learning,
                Optional.of(List.of(
                        new PieceCost.OnceOnly("pattern", hours(1), Optional.empty()),
                        new PieceCost.OnceOnly("die", hours(0), Optional.of(eur(45))))),
                overhead,
                spoilage,
                Optional.of(eur(1.5)));
    }

    private static List<String> lines(PieceCost.Sheet sheet) {
        return sheet.lines().stream()
                .map(line -> line.id() + " " + line.amount())
                .toList();
    }

    /** One piece: 2 ft² of 20 for 100 with a fifth of what is bought wasted is 2.5 ft², 12.50. */
    @Test
    void onePieceLineByLine() {
        PieceCost.Sheet sheet =
                answers(new PieceCost(), piece(1, new Learning.Steady(), 0.1, 0.2, leather(0.2, WasteOf.BOUGHT)));
        assertEquals(
                List.of(
                        "leather-body 12.50 EUR",
                        "hardware-stud 2.50 EUR",
                        "thread-linen 1.20 EUR",
                        "liquids-dye 0.56 EUR",
                        "machines-laser 0.60 EUR",
                        "work-bench 60.00 EUR",
                        "once-only-pattern 30.00 EUR",
                        "once-only-die 45.00 EUR",
                        "overhead 6.06 EUR", // a tenth of 60.60
                        "spoilage 20.86 EUR", // a quarter of 16.76 + 60.60 + 6.06 = 83.42, to the even coin
                        "packing 1.50 EUR"),
                lines(sheet));
        assertEquals(eur(180.78), sheet.together());
        assertEquals(eur(180.78), sheet.each());
        assertEquals(eur(16.76), sheet.materialsEach());
        assertEquals(eur(75), sheet.onceOnly());
        assertEquals(eur(105.78), sheet.eachAfterwards());
        assertEquals(hours(2), sheet.handsOnTogether());
        assertEquals(eur(41.25), sheet.oneMoreHour()); // 30 · 1.1 / 0.8
        // 2 / 0.79 - 2 / 0.8 = 0.0316456 ft², at 5 a foot 0.158228, over 0.8
        assertEquals(eur(0.20), sheet.oneMoreOfWaste());
    }

    /** Eight pieces at 80 %: the average falls to 0.512, so 8 · 2 h · 0.512 = 8.192 h. */
    @Test
    void aBatchSharesWhatIsSpentOnceAndLearns() {
        PieceCost.Sheet sheet = answers(
                new PieceCost(), piece(8, new Learning.CumulativeAverage(0.8), 0, 0, leather(0.25, WasteOf.USED)));
        assertEquals(
                List.of(
                        "leather-body 100.00 EUR", // 2.5 ft² of 20 for 100, eight times
                        "hardware-stud 20.00 EUR",
                        "thread-linen 9.60 EUR",
                        "liquids-dye 4.48 EUR",
                        "machines-laser 4.80 EUR",
                        "work-bench 245.76 EUR",
                        "once-only-pattern 30.00 EUR",
                        "once-only-die 45.00 EUR",
                        "packing 12.00 EUR"),
                lines(sheet));
        assertEquals(eur(471.64), sheet.together());
        assertEquals(eur(58.96), sheet.each()); // 58.955, to the even coin
        assertEquals(eur(49.58), sheet.eachAfterwards()); // 396.64 / 8
        assertEquals(eur(16.76), sheet.materialsEach()); // 134.08 / 8
        assertEquals(8.192, sheet.handsOnTogether().in(Units.HOUR), 1e-12);
        assertEquals(eur(30), sheet.oneMoreHour());
        assertEquals(eur(0.10), sheet.oneMoreOfWaste()); // a hundredth of 2 ft², at 5 a foot
    }

    /**
     * The same at 80 %: once only 75 and 60 for the hours of the first, 16.76 + 0.60 + 1.50 for the rest of one; two take 1.6
     * times 2 h each, 48. The size that is asked for stands among the usual ones.
     */
    @Test
    void whatAPieceCostsInBatchesOfOtherSizes() {
        PieceCost.Sheet sheet = answers(
                new PieceCost(), piece(8, new Learning.CumulativeAverage(0.8), 0, 0, leather(0.25, WasteOf.USED)));
        assertEquals(
                List.of(1, 2, 5, 8, 10, 20, 50),
                sheet.byBatch().stream().map(PieceCost.BatchLine::pieces).toList());
        assertEquals(eur(153.86), sheet.byBatch().get(0).each());
        assertEquals(eur(104.36), sheet.byBatch().get(1).each()); // 37.50 + 48 + 18.86
        assertEquals(sheet.each(), sheet.byBatch().get(3).each());
        assertEquals("of-8", sheet.byBatch().get(3).id());
    }

    /** Eight that can be sold are ten begun: 25 ft² of sides of 20, 20 studs, 50 m of spools of 25, 100 ml of bottles of 250. */
    @Test
    void theShoppingListHasWholeOnesAndEnoughForWhatIsSpoilt() {
        PieceCost.Sheet sheet =
                answers(new PieceCost(), piece(8, new Learning.Steady(), 0, 0.2, leather(0.2, WasteOf.BOUGHT)));
        assertEquals(
                List.of(
                        "leather-body LEATHER body 2 200.00 EUR",
                        "hardware-stud HARDWARE stud 20 25.00 EUR",
                        "thread-linen THREAD linen 2 12.00 EUR",
                        "liquids-dye LIQUIDS dye 1 14.00 EUR"),
                sheet.toBuy().stream()
                        .map(line -> line.id() + " " + line.kind() + " " + line.of() + " " + line.toBuy() + " "
                                + line.paid())
                        .toList());
        assertEquals(eur(251), sheet.outlay());
        // 25 ft² are 232.26 dm², 20 ft² are 185.81 dm²; 50 m are 54.68 yd, 25 m 27.34 yd; 100 ml are 3.38 fl oz
        assertEquals(
                List.of(
                        "sold-by-area[25.0, 232.3] of sold-by-area[20.0, 185.8]",
                        "needed[20] of sold-singly[]",
                        "sold-by-length[50.0, 54.7] of sold-by-length[25.0, 27.3]",
                        "sold-by-volume[100.0, 3.4] of sold-by-volume[250.0, 8.5]"),
                sheet.toBuy().stream()
                        .map(line -> line.needed() + " of " + line.soldIn())
                        .toList());
    }

    /** 250 ml are 8.4535 fl oz: what is needed is told up to the next tenth, what is on the label to the nearest. */
    @Test
    void needsAreRoundedUp() {
        assertEquals(
                "sold-by-volume[250.0, 8.5]",
                SoldBy.VOLUME.label(Volume.ofMl(250)).toString());
        assertEquals(
                "sold-by-volume[31.1, 1.1]",
                SoldBy.VOLUME.atLeast(Volume.ofMl(31.01)).toString());
        assertEquals(
                "sold-by-length[6.6, 7.3]",
                SoldBy.LENGTH.atLeast(Length.ofMm(6600)).toString());
    }

    @Test
    void whatNoPieceTakesIsNotBought() {
        PieceCost.Piece all = piece(1, new Learning.Steady(), 0, 0, leather(0.2, WasteOf.BOUGHT));
        PieceCost.Sheet sheet = answers(
                new PieceCost(),
                with(
                        all,
                        Optional.empty(),
                        Optional.of(List.of(new PieceCost.FittingUsed("stud", 0, eur(1)))),
                        Optional.of(List.of(
                                new PieceCost.ThreadUsed("linen", Length.ZERO, Length.of(25, Units.M), eur(6)))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        assertEquals(List.of(), sheet.toBuy());
        assertEquals(eur(0), sheet.outlay());
    }

    /** Two hours of work in rows; nothing is done to the edges. */
    static final List<PieceCost.WorkDone> PARTED = List.of(
            new PieceCost.WorkDone("cutting", hours(0.5)),
            new PieceCost.WorkDone("edges", hours(0)),
            new PieceCost.WorkDone("stitching", hours(1.5)));

    /** All work in one row. */
    static List<PieceCost.WorkDone> bench(Duration time) {
        return List.of(new PieceCost.WorkDone("bench", time));
    }

    private static PieceCost.Piece bare(Duration handsOn, Money perHour, Optional<Money> packing) {
        return new PieceCost.Piece(
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                bench(handsOn),
                perHour,
                new Learning.Steady(),
                Optional.empty(),
                0,
                0,
                packing);
    }

    @Test
    void workAloneIsAPieceToo() {
        PieceCost.Sheet sheet = answers(new PieceCost(), bare(hours(1.5), eur(28), Optional.empty()));
        assertEquals(List.of("work-bench 42.00 EUR"), lines(sheet));
        assertEquals(eur(0), sheet.materialsEach());
        assertEquals(eur(0), sheet.oneMoreOfWaste());
    }

    @Test
    void eachKindOfWorkHasItsLine() {
        PieceCost.Piece all = piece(8, new Learning.CumulativeAverage(0.8), 0.1, 0.2, leather(0.2, WasteOf.BOUGHT));
        PieceCost.Sheet sheet = answers(new PieceCost(), working(all, PARTED));
        assertEquals(
                List.of("work-cutting 61.44 EUR", "work-stitching 184.32 EUR"),
                lines(sheet).stream().filter(line -> line.startsWith("work")).toList());
        assertEquals(8.192, sheet.handsOnTogether().in(Units.HOUR), 1e-12);
        assertEquals(answers(new PieceCost(), all).together(), sheet.together());
        assertEquals(
                List.of(),
                lines(answers(new PieceCost(), working(all, List.of()))).stream()
                        .filter(line -> line.startsWith("work"))
                        .toList());
    }

    static PieceCost.Piece working(PieceCost.Piece all, List<PieceCost.WorkDone> handsOn) {
        return new PieceCost.Piece(
                all.pieces(),
                all.leather(),
                all.hardware(),
                all.thread(),
                all.liquids(),
                all.machines(),
                handsOn,
                all.perHour(),
                all.learning(),
                all.onceOnly(),
                all.overhead(),
                all.spoilage(),
                all.packing());
    }

    @Test
    void aPieceOfNothingIsRefused() {
        assertEquals("cost-nothing at hands-on []", refusal(new PieceCost(), bare(hours(1), eur(0), Optional.empty())));
    }

    @Test
    void workForNothingIsTold() {
        assertEquals(
                List.of("cost-work-unpaid at per-hour [7200.0 s]"),
                told(Worked.outcome(new PieceCost(), bare(hours(2), eur(0), Optional.of(eur(3))))));
        assertEquals(
                List.of(),
                told(Worked.outcome(new PieceCost(), bare(hours(0), eur(0), Optional.of(eur(3))))),
                "no work");
    }

    @Test
    void leatherThatIsAllWasteIsRefusedWhereItStands() {
        assertEquals(
                "leather-all-waste at leather[body].waste [0.96, 0.95]",
                refusal(new PieceCost(), piece(1, new Learning.Steady(), 0, 0, leather(0.96, WasteOf.BOUGHT))));
        answers(new PieceCost(), piece(1, new Learning.Steady(), 0, 0, leather(0.95, WasteOf.BOUGHT)));
        answers(new PieceCost(), piece(1, new Learning.Steady(), 0, 0, leather(3, WasteOf.USED)));
    }

    @Test
    void twoCurrenciesAreRefusedWhereverTheyStand() {
        Money dollars = Money.of(1, Units.currency("USD"));
        PieceCost.Piece all = piece(1, new Learning.Steady(), 0, 0, leather(0.2, WasteOf.BOUGHT));
        List<PieceCost.Piece> mixed = List.of(
                bare(hours(1), eur(28), Optional.of(dollars)),
                with(
                        all,
                        Optional.of(List.of(new PieceCost.LeatherUsed("x", SIDE, 0, WasteOf.USED, SIDE, dollars))),
                        all.hardware(),
                        all.thread(),
                        all.liquids(),
                        all.machines(),
                        all.onceOnly()),
                with(
                        all,
                        all.leather(),
                        Optional.of(List.of(new PieceCost.FittingUsed("x", 1, dollars))),
                        all.thread(),
                        all.liquids(),
                        all.machines(),
                        all.onceOnly()),
                with(
                        all,
                        all.leather(),
                        all.hardware(),
                        Optional.of(List.of(new PieceCost.ThreadUsed("x", Length.ofMm(1), Length.ofMm(1), dollars))),
                        all.liquids(),
                        all.machines(),
                        all.onceOnly()),
                with(
                        all,
                        all.leather(),
                        all.hardware(),
                        all.thread(),
                        Optional.of(List.of(new PieceCost.LiquidUsed(
                                "x", Volume.of(1, Units.ML), Volume.of(1, Units.ML), dollars))),
                        all.machines(),
                        all.onceOnly()),
                with(
                        all,
                        all.leather(),
                        all.hardware(),
                        all.thread(),
                        all.liquids(),
                        Optional.of(List.of(new PieceCost.MachineUsed("x", hours(1), dollars))),
                        all.onceOnly()),
                with(
                        all,
                        all.leather(),
                        all.hardware(),
                        all.thread(),
                        all.liquids(),
                        all.machines(),
                        Optional.of(List.of(new PieceCost.OnceOnly("x", hours(0), Optional.of(dollars))))));
        for (PieceCost.Piece piece : mixed) {
            String said = refusal(new PieceCost(), piece);
            assertEquals("costing-two-currencies at", said.substring(0, "costing-two-currencies at".length()));
            assertEquals(true, said.endsWith(" EUR, 1.00 USD]"), said);
        }
    }

    private static PieceCost.Piece with(
            PieceCost.Piece all,
            Optional<List<PieceCost.LeatherUsed>> leather,
            Optional<List<PieceCost.FittingUsed>> hardware,
            Optional<List<PieceCost.ThreadUsed>> thread,
            Optional<List<PieceCost.LiquidUsed>> liquids,
            Optional<List<PieceCost.MachineUsed>> machines,
            Optional<List<PieceCost.OnceOnly>> onceOnly) {
        return new PieceCost.Piece(
                all.pieces(),
                leather,
                hardware,
                thread,
                liquids,
                machines,
                all.handsOn(),
                all.perHour(),
                all.learning(),
                onceOnly,
                all.overhead(),
                all.spoilage(),
                all.packing());
    }
}
