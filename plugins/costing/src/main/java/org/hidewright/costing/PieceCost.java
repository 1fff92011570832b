package org.hidewright.costing;

import java.util.List;
import java.util.Optional;
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
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;
import org.osgi.service.component.annotations.Component;

/**
 * What a batch of one piece costs, line by line. Each line is rounded once, to whole coins, and the lines add up to the
 * total; what one piece costs is the total parted.
 */
@Calculates("cost")
@Component(service = Calculator.class)
public final class PieceCost implements Calculator<PieceCost.Piece, PieceCost.Sheet> {
    static final NoticeKind NOTHING_COSTS = NoticeKind.stop("cost-nothing");
    private static final NoticeKind WORK_UNPAID = NoticeKind.check("cost-work-unpaid");
    static final List<NoticeKind> NOTICES =
            List.of(Currencies.TWO, LeatherBought.ALL_WASTE, NOTHING_COSTS, WORK_UNPAID);

    /** What is asked: what goes into one piece, and how many are made. */
    public record Piece(
            @Asked(min = "1", max = "100000", usual = "1-200", preset = "1")
            int pieces,

            @Asked(
                    example =
                            "[{\"id\":\"body\",\"used\":\"6 dm²\",\"waste\":\"30 %\",\"area\":\"22 ft²\",\"price\":\"165 EUR\"}]")
            Optional<List<LeatherUsed>> leather,

            @Asked(example = "[{\"id\":\"stud\",\"count\":\"1\",\"price\":\"1.20 EUR\"}]")
            Optional<List<FittingUsed>> hardware,

            @Asked(example = "[{\"id\":\"linen\",\"used\":\"4 m\",\"length\":\"25 m\",\"price\":\"6.50 EUR\"}]")
            Optional<List<ThreadUsed>> thread,

            @Asked(example = "[{\"id\":\"dye\",\"used\":\"5 ml\",\"holds\":\"250 ml\",\"price\":\"14 EUR\"}]")
            Optional<List<LiquidUsed>> liquids,

            @Asked(example = "[{\"id\":\"laser\",\"time\":\"6 min\",\"per-hour\":\"6 EUR\"}]")
            Optional<List<MachineUsed>> machines,

            @Asked(
                    example =
                            "[{\"id\":\"cutting\",\"time\":\"25 min\"},{\"id\":\"stitching\",\"time\":\"1 h 10 min\"}]")
            List<WorkDone> handsOn,

            @Asked(min = "0", example = "28 EUR") Money perHour,

            @Asked(preset = "{\"steady\":{}}") Learning learning,

            @Asked(example = "[{\"id\":\"pattern\",\"time\":\"2 h\"}]")
            Optional<List<OnceOnly>> onceOnly,

            @Asked(unit = "%", min = "0 %", max = "300 %", usual = "0-40 %", preset = "10 %")
            double overhead,

            @Asked(unit = "%", min = "0 %", max = "90 %", usual = "0-15 %", preset = "3 %")
            double spoilage,

            @Asked(min = "0", example = "1.50 EUR") Optional<Money> packing) {

        /** All hands-on work on the first piece. */
        Duration firstPiece() {
            return handsOn.stream().map(WorkDone::time).reduce(Duration.ZERO, Duration::plus);
        }
    }

    /** One kind of work by hand on the first piece, without waiting. */
    public record WorkDone(
            @RowId String id,

            @Asked(unit = "min", min = "0", max = "1000 h", usual = "1 min-40 h", example = "25 min")
            Duration time) {}

    /** Leather in one piece, and what a side or panel of it costs. */
    public record LeatherUsed(
            @RowId String id,

            @Asked(unit = "dm²", min = "0", max = "10000 dm²", usual = "0.5-100 dm²", example = "6 dm²")
            Area used,

            @Asked(unit = "%", min = "0 %", max = "500 %", usual = "10-50 %", preset = "30 %")
            double waste,

            @Asked(preset = "bought") WasteOf wasteOf,

            @Asked(unit = "ft²", min = "0.01 ft²", max = "1000 ft²", usual = "1-60 ft²", example = "22 ft²")
            Area area,

            @Asked(min = "0", example = "165 EUR") Money price) {}

    /** Fittings on one piece. */
    public record FittingUsed(
            @RowId String id,

            @Asked(min = "0", max = "10000", usual = "1-20", preset = "1")
            int count,

            @Asked(min = "0", example = "1.20 EUR") Money price) {}

    /** Thread in one piece, and what a spool of it costs. */
    public record ThreadUsed(
            @RowId String id,

            @Asked(unit = "m", min = "0", max = "1000 m", usual = "0.5-30 m", example = "4 m")
            Length used,

            @Asked(unit = "m", min = "1 m", max = "5000 m", example = "25 m")
            Length length,

            @Asked(min = "0", example = "6.50 EUR") Money price) {}

    /** Dye, cement or finish in one piece, and what a bottle of it costs. */
    public record LiquidUsed(
            @RowId String id,

            @Asked(unit = "ml", min = "0", max = "10 l", usual = "0.5-100 ml", example = "5 ml")
            Volume used,

            @Asked(unit = "ml", min = "1 ml", max = "50 l", example = "250 ml")
            Volume holds,

            @Asked(min = "0", example = "14 EUR") Money price) {}

    /** Time of a machine on one piece. */
    public record MachineUsed(
            @RowId String id,

            @Asked(unit = "min", min = "0", max = "100 h", example = "6 min")
            Duration time,

            @Asked(min = "0", example = "6 EUR") Money perHour) {}

    /** Work and expense of the first piece alone: pattern, prototype, test pieces. */
    public record OnceOnly(
            @RowId String id,

            @Asked(unit = "min", min = "0", max = "1000 h", preset = "0 min")
            Duration time,

            @Asked(min = "0", example = "12 EUR") Optional<Money> expense) {}

    /** What is answered. */
    public record Sheet(
            @Answered(by = "cost-each", lead = true) Money each,

            @Answered(by = "cost-together", lead = true) Money together,

            @Answered(by = "cost-sheet") List<CostLine> lines,
            @Answered(by = "cost-each") Money materialsEach,
            @Answered(by = "cost-sheet") Money onceOnly,
            @Answered(by = "cost-each") Money eachAfterwards,

            @Answered(unit = "h", step = "0.1 h", by = "time-steady")
            Duration handsOnTogether,

            @Answered(by = "cost-one-more-hour") Money oneMoreHour,

            @Answered(by = "cost-one-more-waste") Money oneMoreOfWaste,
            @Answered(by = "buy-whole") List<BuyLine> toBuy,
            @Answered(by = "buy-whole") Money outlay,
            @Answered(by = "cost-each") List<BatchLine> byBatch) {}

    /** One line of the cost sheet, for the whole batch; {@code of} is the row it comes from, empty where it comes from none. */
    public record CostLine(
            @RowId String id,
            @Answered CostKind kind,
            @Answered String of,
            @Answered(by = "cost-sheet") Money amount) {}

    /** What a piece costs in a batch of a size. */
    public record BatchLine(
            @RowId String id,
            @Answered(by = "cost-each") int pieces,
            @Answered(by = "cost-each") Money each) {}

    /** One line of the shopping list: what the whole batch needs, in what it is sold, and how many of those. */
    public record BuyLine(
            @RowId String id,
            @Answered CostKind kind,
            @Answered String of,
            @Answered Phrase needed,
            @Answered Phrase soldIn,
            @Answered(by = "buy-whole") int toBuy,
            @Answered(by = "buy-whole") Money paid) {}

    @Override
    public Outcome<Sheet> calculate(Piece piece, Working working) {
        Optional<Notice> clash = Currencies.clash(Amounts.of(piece));
        if (clash.isPresent()) {
            return Outcome.refuse(clash.get());
        }
        for (LeatherUsed leather : piece.leather().orElse(List.of())) {
            if (leather.wasteOf() == WasteOf.BOUGHT && leather.waste() > LeatherBought.MOST_WASTE) {
                return Outcome.refuse(LeatherBought.ALL_WASTE.at(
                        "leather[" + leather.id() + "].waste", leather.waste(), LeatherBought.MOST_WASTE));
            }
        }
        CostSheet sheet = new CostSheet(piece);
        if (sheet.together().amount().signum() == 0) {
            return Outcome.refuse(NOTHING_COSTS.at("hands-on"));
        }
        sheet.takeDown(working);
        List<BuyLine> toBuy = Shopping.of(piece, working);
        return Outcome.of(
                new Sheet(
                        sheet.each(),
                        sheet.together(),
                        sheet.lines(),
                        sheet.materialsEach(),
                        sheet.onceOnly(),
                        sheet.eachAfterwards(),
                        sheet.handsOn(),
                        sheet.oneMoreHour(),
                        sheet.oneMoreOfWaste(),
                        toBuy,
                        Shopping.outlay(toBuy, piece),
                        sheet.byBatch()),
                unpaid(piece).stream().toList());
    }

    /** Work that nobody pays for. */
    static Optional<Notice> unpaid(Piece piece) {
        return piece.perHour().amount().signum() == 0 && piece.firstPiece().compareTo(Duration.ZERO) > 0
                ? Optional.of(WORK_UNPAID.at("per-hour", piece.firstPiece()))
                : Optional.empty();
    }

    /** What an amount for an hour comes to over a time. */
    static Money over(Duration time, Money perHour) {
        return perHour.times(time.in(Units.HOUR));
    }

    @Override
    public List<Formula> formulas() {
        return CostSheet.FORMULAS;
    }

    @Override
    public List<NoticeKind> notices() {
        return NOTICES;
    }

    @Override
    public List<String> phrases() {
        return Shopping.PHRASES;
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.COST_SHEET);
    }
}
