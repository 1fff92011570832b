package org.hidewright.costing;

import java.util.ArrayList;
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
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.costing.PieceCost.BatchLine;
import org.hidewright.costing.PieceCost.BuyLine;
import org.hidewright.costing.PieceCost.CostLine;
import org.hidewright.costing.PieceCost.LiquidUsed;
import org.hidewright.costing.PieceCost.MachineUsed;
import org.hidewright.costing.PieceCost.OnceOnly;
import org.hidewright.costing.PieceCost.Piece;
import org.osgi.service.component.annotations.Component;

/**
 * What an item costs, taken from its parts, seams, fittings and steps, so that nobody types what is drawn already. The sums
 * are those of {@link PieceCost}.
 */
@Calculates("item-cost")
@Component(service = Calculator.class)
public final class ItemCost implements Calculator<ItemCost.Whole, ItemCost.Costed> {
    private static final Formula ESTIMATED =
            Formula.of("cost-estimated", "z = T · r / h · (1 + o) / (1 - s)", Origins.COST_SHEET);

    private static final NoticeKind TIME_ESTIMATED = NoticeKind.check("item-time-estimated");

    /** What is asked: the item, and what of it has a price. */
    public record Whole(
            @Asked Item item,

            @Asked(min = "1", max = "100000", usual = "1-200", preset = "1")
            int pieces,

            @Asked(
                    unit = "ft²",
                    min = "0.01 ft²",
                    max = "1000 ft²",
                    usual = "1-60 ft²",
                    example = "22 ft²",
                    stock = "leather.area")
            Area leatherArea,

            @Asked(min = "0", example = "165 EUR", stock = "leather.price")
            Money leatherPrice,

            @Asked(unit = "%", min = "0 %", max = "500 %", usual = "10-50 %", preset = "30 %", stock = "rates.share")
            double waste,

            @Asked(preset = "bought") WasteOf wasteOf,

            @Asked(example = "[{\"id\":\"lining\",\"parts\":\"front\",\"area\":\"9 ft²\",\"price\":\"60 EUR\"}]")
            Optional<List<OtherLeather>> otherLeather,

            @Asked(example = "[{\"id\":\"rivet\",\"price\":\"0.30 EUR\"}]")
            Optional<List<FittingPrice>> hardware,

            @Asked(unit = "m", min = "1 m", max = "5000 m", example = "25 m", stock = "threads.length")
            Optional<Length> threadLength,

            @Asked(min = "0", example = "6.50 EUR", stock = "threads.price")
            Optional<Money> threadPrice,

            @Asked(unit = "mm", min = "20 mm", max = "1 m", usual = "100-400 mm", preset = "200 mm")
            Length tail,

            @Asked(min = "0", example = "28 EUR", stock = "rates.per-hour")
            Money perHour,

            @Asked HabitTimes habitTimes,

            @Asked(example = "[{\"id\":\"dye\",\"used\":\"5 ml\",\"holds\":\"250 ml\",\"price\":\"14 EUR\"}]")
            Optional<List<LiquidUsed>> liquids,

            @Asked(example = "[{\"id\":\"laser\",\"time\":\"6 min\",\"per-hour\":\"6 EUR\"}]")
            Optional<List<MachineUsed>> machines,

            @Asked(preset = "{\"steady\":{}}") Learning learning,

            @Asked(example = "[{\"id\":\"pattern\",\"time\":\"2 h\"}]")
            Optional<List<OnceOnly>> onceOnly,

            @Asked(unit = "%", min = "0 %", max = "300 %", usual = "0-40 %", preset = "10 %", stock = "rates.share")
            double overhead,

            @Asked(unit = "%", min = "0 %", max = "90 %", usual = "0-15 %", preset = "3 %", stock = "rates.share")
            double spoilage,

            @Asked(min = "0", example = "1.50 EUR") Optional<Money> packing) {}

    /** Another leather, and which parts are cut from it. */
    public record OtherLeather(
            @RowId String id,

            @Asked(example = "lining", from = "item.leather")
            String parts,

            @Asked(
                    unit = "ft²",
                    min = "0.01 ft²",
                    max = "1000 ft²",
                    usual = "1-60 ft²",
                    example = "9 ft²",
                    stock = "leather.area")
            Area area,

            @Asked(min = "0", example = "60 EUR", stock = "leather.price")
            Money price,

            @Asked(unit = "%", min = "0 %", max = "500 %", usual = "10-50 %", example = "25 %", stock = "rates.share")
            Optional<Double> waste) {}

    /** What one of some fittings costs. */
    public record FittingPrice(
            @RowId String id,
            @Asked(example = "rivet") Optional<String> fittings,

            @Asked(min = "0", example = "0.30 EUR", stock = "hardware.price")
            Money price) {}

    /** How long is taken for what the item does not say itself. */
    public record HabitTimes(
            @Asked(unit = "min", min = "0", max = "10 h", usual = "1-30 min", preset = "5 min")
            Duration cutting,

            @Asked(unit = "s", min = "0", max = "1 h", usual = "5-90 s", preset = "25 s")
            Duration stitch,

            @Asked(unit = "min", min = "0", max = "10 h", usual = "1-30 min", preset = "3 min")
            Duration fitting,

            @Asked(unit = "min", min = "0", max = "100 h", usual = "2-60 min", preset = "10 min")
            Duration step) {}

    /** What is answered; the cost sheet as {@link PieceCost.Sheet} has it, and what of it comes from the item. */
    public record Costed(
            @Answered(by = "cost-each", lead = true) Money each,

            @Answered(by = "cost-together", lead = true) Money together,

            @Answered(by = "cost-sheet") List<CostLine> lines,
            @Answered(by = "cost-each") Money materialsEach,
            @Answered(by = "cost-sheet") Money onceOnly,
            @Answered(by = "cost-each") Money eachAfterwards,

            @Answered(unit = "h", step = "0.1 h", by = "time-steady")
            Duration handsOnTogether,

            @Answered(by = "bench-times") List<TimeLine> times,

            @Answered(unit = "min", step = "1 min", by = "bench-times")
            Duration estimated,

            @Answered(by = "cost-estimated") Money estimatedEach,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "item-leather")
            Area leatherInPiece,

            @Answered(unit = "m", step = "0.1 m", by = "item-thread")
            Length threadInPiece,

            @Answered(by = "cost-one-more-hour") Money oneMoreHour,

            @Answered(by = "cost-one-more-waste") Money oneMoreOfWaste,
            @Answered(by = "buy-whole") List<BuyLine> toBuy,
            @Answered List<NoPriceLine> withoutPrice,
            @Answered(by = "buy-whole") Money outlay,
            @Answered(by = "cost-each") List<BatchLine> byBatch) {}

    /** How long hands are at one kind of work on one piece. */
    public record TimeLine(
            @RowId String id,
            @Answered Phrase work,

            @Answered(unit = "min", step = "1 min", by = "bench-times")
            Duration time) {}

    /** What the whole batch needs and has no price, so that it is in no sum. */
    public record NoPriceLine(
            @RowId String id,
            @Answered CostKind kind,
            @Answered String of,
            @Answered Phrase needed) {}

    @Override
    public Outcome<Costed> calculate(Whole whole, Working working) {
        List<Notice> notices = new ArrayList<>();
        ItemMaterials materials = new ItemMaterials(whole, working, notices);
        ItemTimes times = ItemTimes.of(whole.item(), whole.habitTimes());
        Piece piece = piece(whole, materials, times);
        Optional<Notice> refusal = Currencies.clash(Amounts.of(piece)).or(() -> allWaste(whole));
        if (refusal.isPresent()) {
            return Outcome.refuse(refusal.get());
        }
        CostSheet sheet = new CostSheet(piece);
        if (sheet.together().amount().signum() == 0) {
            return Outcome.refuse(PieceCost.NOTHING_COSTS.at("per-hour"));
        }
        sheet.takeDown(working);
        Money estimatedEach = PieceCost.over(times.estimated(), whole.perHour())
                .times((1 + whole.overhead()) / (1 - whole.spoilage()))
                .rounded();
        working.step(
                ESTIMATED,
                estimatedEach,
                "T",
                times.estimated(),
                "r",
                whole.perHour(),
                "o",
                whole.overhead(),
                "s",
                whole.spoilage());
        if (times.estimated().compareTo(Duration.ZERO) > 0) {
            notices.add(TIME_ESTIMATED.at("habit-times", times.estimated(), estimatedEach));
        }
        PieceCost.unpaid(piece).ifPresent(notices::add);
        List<BuyLine> toBuy = Shopping.of(piece, working);
        return Outcome.of(
                new Costed(
                        sheet.each(),
                        sheet.together(),
                        sheet.lines(),
                        sheet.materialsEach(),
                        sheet.onceOnly(),
                        sheet.eachAfterwards(),
                        sheet.handsOn(),
                        times.lines(),
                        times.estimated(),
                        estimatedEach,
                        materials.leatherInPiece(),
                        materials.threadInPiece(),
                        sheet.oneMoreHour(),
                        sheet.oneMoreOfWaste(),
                        toBuy,
                        materials.withoutPrice(),
                        Shopping.outlay(toBuy, piece),
                        sheet.byBatch()),
                notices);
    }

    private static Piece piece(Whole whole, ItemMaterials materials, ItemTimes times) {
        return new Piece(
                whole.pieces(),
                Optional.of(materials.leather()),
                Optional.of(materials.hardware()),
                Optional.of(materials.thread()),
                whole.liquids(),
                whole.machines(),
                List.of(new PieceCost.WorkDone("", times.together())),
                whole.perHour(),
                whole.learning(),
                whole.onceOnly(),
                whole.overhead(),
                whole.spoilage(),
                whole.packing());
    }

    private static Optional<Notice> allWaste(Whole whole) {
        if (whole.wasteOf() == WasteOf.USED) {
            return Optional.empty();
        }
        if (whole.waste() > LeatherBought.MOST_WASTE) {
            return Optional.of(LeatherBought.ALL_WASTE.at("waste", whole.waste(), LeatherBought.MOST_WASTE));
        }
        return whole.otherLeather().orElse(List.of()).stream()
                .filter(row -> row.waste().orElse(0.0) > LeatherBought.MOST_WASTE)
                .findFirst()
                .map(row -> LeatherBought.ALL_WASTE.at(
                        "other-leather[" + row.id() + "].waste", row.waste().orElseThrow(), LeatherBought.MOST_WASTE));
    }

    @Override
    public List<Formula> formulas() {
        List<Formula> formulas = new ArrayList<>(ItemMaterials.FORMULAS);
        formulas.addAll(CostSheet.FORMULAS);
        formulas.add(ESTIMATED);
        return List.copyOf(formulas);
    }

    @Override
    public List<NoticeKind> notices() {
        List<NoticeKind> notices = new ArrayList<>(ItemMaterials.NOTICES);
        notices.addAll(PieceCost.NOTICES);
        notices.add(TIME_ESTIMATED);
        return List.copyOf(notices);
    }

    @Override
    public List<String> phrases() {
        List<String> phrases = new ArrayList<>(Shopping.PHRASES);
        phrases.addAll(ItemTimes.PHRASES);
        return List.copyOf(phrases);
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.COST_SHEET,
                Origins.CONSUMPTION,
                Origins.TIMES_HABIT,
                Origins.SEWING_HABIT,
                Origins.BENCH_TIMES);
    }
}
