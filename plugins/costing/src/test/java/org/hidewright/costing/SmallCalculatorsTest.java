package org.hidewright.costing;

import static org.hidewright.costing.Worked.answers;
import static org.hidewright.costing.Worked.eur;
import static org.hidewright.costing.Worked.hours;
import static org.hidewright.costing.Worked.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

/** Hours, machines, leather and break-even, worked by hand. */
class SmallCalculatorsTest {
    private static final Money DOLLAR = Money.of(1, Units.currency("USD"));

    @Test
    void anHourPaysForThoseNobodyIsChargedFor() {
        BenchHour.Hour hour = answers(new BenchHour(), new BenchHour.Year(eur(24000), eur(6000), hours(1600), 0.6));
        assertEquals(960, hour.hoursCharged().in(Units.HOUR), 1e-9);
        assertEquals(eur(31.25), hour.perHour().rounded());
        assertEquals(
                "costing-two-currencies at [24000.00 EUR, 1.00 USD]",
                refusal(new BenchHour(), new BenchHour.Year(eur(24000), DOLLAR, hours(1600), 0.6)));
    }

    private static MachineHour.Machine machine(Optional<Money> setUp, Optional<Money> after, List<Money> running) {
        return new MachineHour.Machine(
                eur(1000),
                setUp,
                after,
                hours(400),
                Optional.of(running.stream()
                        .map(amount -> new MachineHour.Running("r", amount))
                        .toList()));
    }

    @Test
    void aMachineWearsByTheHour() {
        MachineHour.Hour hour = answers(
                new MachineHour(), machine(Optional.of(eur(100)), Optional.of(eur(300)), List.of(eur(0.5), eur(0.25))));
        assertEquals(eur(2), hour.wear());
        assertEquals(eur(0.75), hour.running());
        assertEquals(eur(2.75), hour.perHour());
        MachineHour.Hour plain = answers(
                new MachineHour(),
                new MachineHour.Machine(eur(1000), Optional.empty(), Optional.empty(), hours(400), Optional.empty()));
        assertEquals(eur(2.5), plain.perHour());
    }

    @Test
    void aMachineThatGainsIsRefused() {
        assertEquals(
                "machine-worth-more at worth-afterwards [1000.01 EUR, 1000.00 EUR]",
                refusal(new MachineHour(), machine(Optional.empty(), Optional.of(eur(1000.01)), List.of())));
        assertEquals(
                eur(0),
                answers(new MachineHour(), machine(Optional.empty(), Optional.of(eur(1000)), List.of()))
                        .wear());
        for (MachineHour.Machine mixed : List.of(
                machine(Optional.of(DOLLAR), Optional.empty(), List.of()),
                machine(Optional.empty(), Optional.of(DOLLAR), List.of()),
                machine(Optional.empty(), Optional.empty(), List.of(DOLLAR)))) {
            assertEquals("costing-two-currencies at [1000.00 EUR, 1.00 USD]", refusal(new MachineHour(), mixed));
        }
    }

    private static LeatherBought.Bought bought(double net, double waste, WasteOf of) {
        return answers(
                new LeatherBought(),
                new LeatherBought.Need(Area.of(net, Units.FT2), waste, of, Area.of(10, Units.FT2), eur(80)));
    }

    @Test
    void leatherIsBoughtWhole() {
        LeatherBought.Bought bought = bought(12, 0.25, WasteOf.BOUGHT);
        assertEquals(16, bought.taken().in(Units.FT2), 1e-9);
        assertEquals(2, bought.toBuy());
        assertEquals(eur(160), bought.paid());
        assertEquals(eur(128), bought.worthTaken().rounded());
        assertEquals(4, bought.left().in(Units.FT2), 1e-9);
        assertEquals(15, bought(12, 0.25, WasteOf.USED).taken().in(Units.FT2), 1e-9);
    }

    /** 7.5 / 0.75 is ten in decimals and may not be in binary: no second side is bought for the last bit. */
    @Test
    void aSideThatIsJustEnoughIsEnough() {
        assertEquals(1, bought(7.5, 0.25, WasteOf.BOUGHT).toBuy());
        assertEquals(2, bought(7.51, 0.25, WasteOf.BOUGHT).toBuy());
        assertEquals(1, bought(10, 0, WasteOf.USED).toBuy());
    }

    @Test
    void wasteOfAllThatIsBoughtIsRefused() {
        assertEquals(
                "leather-all-waste at waste [0.951, 0.95]",
                refusal(
                        new LeatherBought(),
                        new LeatherBought.Need(
                                Area.of(1, Units.FT2), 0.951, WasteOf.BOUGHT, Area.of(10, Units.FT2), eur(80))));
        assertEquals(20, bought(1, 0.95, WasteOf.BOUGHT).taken().in(Units.FT2), 1e-9);
        assertEquals(2.5, bought(1, 1.5, WasteOf.USED).taken().in(Units.FT2), 1e-9);
    }

    private static BreakEven.Plan plan(double once, double price, double each, Optional<Money> wanted) {
        return new BreakEven.Plan(eur(once), eur(price), eur(each), wanted);
    }

    @Test
    void breakEvenRoundsUpAndMayHoldAProfit() {
        BreakEven.Count count = answers(new BreakEven(), plan(1200, 85, 37, Optional.of(eur(500))));
        assertEquals(36, count.pieces()); // 1700 / 48 = 35.4
        assertEquals(eur(48), count.leftByEach());
        assertEquals(
                0, answers(new BreakEven(), plan(0, 85, 37, Optional.empty())).pieces());
    }

    @Test
    void whatNeverComesBackIsRefused() {
        assertEquals(
                "break-even-nothing-left at price [37.00 EUR, 37.00 EUR]",
                refusal(new BreakEven(), plan(1200, 37, 37, Optional.empty())));
        assertEquals(
                "break-even-too-many at price [0.01 EUR]",
                refusal(new BreakEven(), plan(10_000_000.01, 1.01, 1, Optional.empty())));
        assertEquals(
                1_000_000_000,
                answers(new BreakEven(), plan(10_000_000, 1.01, 1, Optional.empty()))
                        .pieces());
        assertEquals(
                "costing-two-currencies at [85.00 EUR, 1.00 USD]",
                refusal(new BreakEven(), plan(1, 85, 3, Optional.of(DOLLAR))));
    }

    @Test
    void aBatchKnowsItsLastPiece() {
        BatchTime.Times times = answers(
                new BatchTime(), new BatchTime.Batch(Duration.of(100, Units.MINUTE), 2, new Learning.EachPiece(0.8)));
        assertEquals(180, times.together().in(Units.MINUTE), 1e-9);
        assertEquals(90, times.average().in(Units.MINUTE), 1e-9);
        assertEquals(80, times.lastPiece().in(Units.MINUTE), 1e-9);
        BatchTime.Times steady = answers(new BatchTime(), new BatchTime.Batch(hours(3), 4, new Learning.Steady()));
        assertEquals(12, steady.together().in(Units.HOUR), 1e-9);
        assertEquals(3, steady.lastPiece().in(Units.HOUR), 1e-9);
        BatchTime.Times one =
                answers(new BatchTime(), new BatchTime.Batch(hours(3), 1, new Learning.CumulativeAverage(0.8)));
        assertEquals(3, one.lastPiece().in(Units.HOUR), 1e-9);
    }
}
