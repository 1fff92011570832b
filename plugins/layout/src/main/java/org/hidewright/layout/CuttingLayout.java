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
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.osgi.service.component.annotations.Component;

/**
 * Where the parts of an item lie on panels and hides. The places are searched for, kept, and may be moved by hand; whatever they come from,
 * they are checked each time, so that a layout that cannot be cut is never shown as one that can.
 */
@Calculates("cutting-layout")
@Component(service = Calculator.class)
public final class CuttingLayout
        implements Calculator<CuttingLayout.Cut, CuttingLayout.LaidOut>,
                Search<CuttingLayout.Cut, CuttingLayout.Places> {
    /** What is asked. */
    public record Cut(
            @Asked Item item,

            @Asked(min = "1", max = "1000", usual = "1-50", preset = "1")
            int pieces,

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

            @Asked Optional<Places> layout) {}

    /** What leather is cut from. */
    public sealed interface SheetOfLeather permits Panel, Hide {
        /** Its name. */
        String id();

        /** How many there are; empty for as many as are needed. */
        Optional<Integer> count();

        /** What one costs. */
        Optional<Money> price();
    }

    /** A panel or a strip with straight edges. */
    public record Panel(
            @RowId String id,

            @Asked(unit = "mm", min = "5 mm", max = "10 m", usual = "50-3000 mm", example = "210 x 297 mm")
            Size size,

            @Asked(min = "1", max = "500", example = "2") Optional<Integer> count,
            @Asked(preset = "across-the-sheet") Backbone backbone,

            @Asked(min = "0", example = "14 EUR", stock = "leather.price")
            Optional<Money> price)
            implements SheetOfLeather {}

    /** A hide, a side or what is left of one. */
    public record Hide(
            @RowId String id,

            @Asked(example = "0,0 1200,0 1300,700 600,900 -100,600", stock = "hides.outline")
            String outline,

            @Asked(unit = "mm", min = "0 mm", max = "500 mm", usual = "0-50 mm", preset = "10 mm", stock = "hides.rim")
            Length rim,

            @Asked(preset = "up-the-sheet") Backbone backbone,

            @Asked(example = "marked 300,300 340,300 340,420")
            Optional<List<String>> flaws,

            @Asked(min = "0", example = "165 EUR", stock = "hides.price")
            Optional<Money> price)
            implements SheetOfLeather {
        @Override
        public Optional<Integer> count() {
            return Optional.of(1);
        }
    }

    /** What holds for a part in place of what holds for all. */
    public record PartRule(
            @RowId String id,
            @Asked(example = "at-any-angle") Optional<Lies> lies,

            @Asked(unit = "°", min = "0°", max = "90°", usual = "0-30°", example = "5°")
            Optional<Angle> within,

            @Asked(example = "sound") Optional<Leather> leather,

            @Asked(unit = "mm", min = "0 mm", max = "500 mm", usual = "0-30 mm", example = "8 mm")
            Optional<Length> hiddenRim,

            @Asked(example = "belly") Optional<String> neverOn,
            @Asked(example = "bend") Optional<String> onlyOn,
            @Asked(example = "back") Optional<String> matches) {}

    /** Where the pieces lie. */
    public record Places(
            @Asked(
                    example =
                            "[{\"id\":\"front\",\"sheet\":\"panel\",\"x\":\"105 mm\",\"y\":\"148 mm\",\"turned\":\"0°\"}]")
            List<Placed> pieces) {}

    /** Where one piece lies: its middle from the left and lower edge of the drawing of its sheet, turned counter-clockwise. */
    public record Placed(
            @RowId String id,
            @Asked(example = "panel") String sheet,

            @Asked(unit = "mm", min = "-100 m", max = "100 m", usual = "0-3000 mm", example = "105 mm")
            Length x,

            @Asked(unit = "mm", min = "-100 m", max = "100 m", usual = "0-3000 mm", example = "148 mm")
            Length y,

            @Asked(unit = "°", min = "-360°", max = "360°", usual = "-180-180°", example = "90°")
            Angle turned,

            @Asked(preset = "no") boolean held) {}

    /** What is answered. */
    public record LaidOut(
            @Answered(by = "layout-arithmetic", lead = true) int laid,
            @Answered(by = "layout-arithmetic") int toCut,
            @Answered(by = "layout-arithmetic", lead = true) int sheetsUsed,

            @Answered(unit = "%", step = "0.1 %", by = "layout-yield", lead = true)
            Optional<Double> yield,

            @Answered(unit = "%", step = "0.1 %", by = "layout-waste")
            Optional<Double> waste,

            @Answered(unit = "%", step = "0.1 %", by = "layout-waste-rest-kept")
            Optional<Double> wasteRestKept,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "layout-arithmetic")
            Area partsArea,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "layout-arithmetic")
            Optional<Area> taken,

            @Answered(by = "layout-arithmetic") Optional<Money> cost,
            @Answered List<SheetUsed> sheets,
            @Answered List<LeftOver> leftOver,
            @Answered List<LiesAt> lie,
            @Answered List<PairLaid> pairs,
            @Answered(stock = "hides") List<Rest> rest,
            @Answered(asFile = true) Optional<Drawing> drawing) {}

    /** One sheet that is cut from. */
    public record SheetUsed(
            @RowId String id,
            @Answered(by = "layout-arithmetic") int laid,

            @Answered(unit = "%", step = "0.1 %", by = "layout-yield")
            double yield,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "layout-arithmetic")
            Area left,

            @Answered(unit = "dm²", step = "0.1 dm²", by = "layout-in-one-piece")
            Area inOnePiece) {}

    /** Where a piece lies: how far its own left and lower end are from those of the sheet as it is drawn, turned counter-clockwise. */
    public record LiesAt(
            @RowId String id,
            @Answered String sheet,

            @Answered(unit = "mm", step = "1 mm", by = "layout-arithmetic")
            Length left,

            @Answered(unit = "mm", step = "1 mm", by = "layout-arithmetic")
            Length below,

            @Answered(unit = "°", step = "0.1°", by = "layout-arithmetic")
            Angle turned) {}

    /** A part some of whose pieces have no place. */
    public record LeftOver(
            @RowId String id,
            @Answered(by = "layout-arithmetic") int pieces) {}

    /** What is left of a sheet that is cut from, as a row of the workshop's table of hides: the sheet with the pieces as holes in it. */
    public record Rest(
            @RowId String id,
            @Answered String outline,

            @Answered(unit = "mm", by = "layout-arithmetic") Length rim,

            @Answered Backbone backbone,
            @Answered List<String> flaws,
            @Answered(by = "layout-in-one-piece") Optional<Money> price) {}

    /** Two pieces of one item that are seen together, and how far they lie from places that match: nothing where on two sheets. */
    public record PairLaid(
            @RowId String id,
            @Answered String other,

            @Answered(unit = "mm", step = "1 mm", by = "layout-arithmetic")
            Optional<Length> apart,

            @Answered boolean mirrored) {}

    @Override
    public Outcome<LaidOut> calculate(Cut cut, Working working) {
        try {
            return new LayoutAnswers(LayoutTask.of(cut), cut.layout()).outcome(working);
        } catch (Refusal refusal) {
            return refusal.outcome();
        }
    }

    @Override
    public void search(Cut cut, Budget budget, Consumer<Places> better) {
        try {
            new LayoutSearch(LayoutTask.of(cut), cut.layout()).run(budget, better);
        } catch (Refusal refusal) {
            // the calculation is refused for the same reason, and says so
        }
    }

    @Override
    public List<Formula> formulas() {
        return LayoutAnswers.FORMULAS;
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
