package org.hidewright.layout;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.layout.CuttingLayout.Cut;
import org.hidewright.layout.CuttingLayout.Panel;
import org.hidewright.layout.CuttingLayout.PartRule;
import org.hidewright.layout.CuttingLayout.Places;
import org.hidewright.layout.CuttingLayout.SheetOfLeather;
import org.hidewright.layout.CuttingLayout.SheetUsed;
import org.osgi.service.component.annotations.Component;

/** How many of an item the leather gives that is there, and what each of them and one more comes to. */
@Calculates("pieces-from-leather")
@Component(service = Calculator.class)
public final class PiecesFromLeather
        implements Calculator<PiecesFromLeather.Stock, PiecesFromLeather.Gives>,
                Search<PiecesFromLeather.Stock, Places> {
    /** What is asked. */
    public record Stock(
            @Asked Item item,

            @Asked(example = "front; back", from = "item.leather")
            Optional<String> leather,

            @Asked(unit = "mm", min = "0 mm", max = "50 mm", usual = "0-10 mm", preset = "2 mm")
            Length gap,

            @Asked(unit = "°", min = "0°", max = "90°", usual = "0-30°", preset = "10°")
            Angle within,

            @Asked(example = "[{\"id\":\"panel\",\"panel\":{\"size\":\"210 x 297 mm\",\"count\":1}}]")
            List<SheetOfLeather> sheets,

            @Asked(example = "[{\"id\":\"front\",\"lies\":\"at-any-angle\"}]")
            Optional<List<PartRule>> rules,

            @Asked Optional<Places> layout) {
        /** The same as what is asked of a layout of so many pieces that lie where they are said to. */
        Cut cut(int pieces, Optional<Places> lie) {
            List<SheetOfLeather> counted = sheets.stream().map(Stock::counted).toList();
            return new Cut(item, pieces, leather, gap, within, counted, rules, lie);
        }

        /** A panel of which it is not said how many there are is one. */
        private static SheetOfLeather counted(SheetOfLeather sheet) {
            return sheet instanceof Panel panel && panel.count().isEmpty()
                    ? new Panel(panel.id(), panel.size(), Optional.of(1), panel.backbone(), panel.price())
                    : sheet;
        }
    }

    /** What is answered. */
    public record Gives(
            @Answered(by = "layout-arithmetic", lead = true) int pieces,
            @Answered(by = "layout-most") int atMost,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "layout-each")
            Optional<Area> eachTakes,

            @Answered(by = "layout-each", lead = true) Optional<Money> eachCosts,
            @Answered(by = "layout-arithmetic") Optional<Money> oneMore,

            @Answered(unit = "%", step = "0.1 %", by = "layout-yield")
            Optional<Double> yield,

            @Answered List<SheetUsed> sheets,
            @Answered(asFile = true) Optional<Drawing> drawing) {}

    @Override
    public Outcome<Gives> calculate(Stock stock, Working working) {
        try {
            return new WholePieces(stock).outcome(working);
        } catch (Refusal refusal) {
            return refusal.outcome();
        }
    }

    @Override
    public void search(Stock stock, Budget budget, Consumer<Places> better) {
        try {
            new MostPieces(stock).search(budget, better);
        } catch (Refusal refusal) {
            // the calculation is refused for the same reason, and says so
        }
    }

    @Override
    public List<Formula> formulas() {
        return WholePieces.FORMULAS;
    }

    @Override
    public List<NoticeKind> notices() {
        return LayoutNotices.ALL;
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.ARITHMETIC, Origins.CUTTING_HABIT);
    }
}
