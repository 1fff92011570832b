package org.hidewright.thickness;

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
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** The area of hides and panels in the units they are sold by, and a price carried from one to another. */
@Calculates("leather-area")
@Component(service = Calculator.class)
public final class LeatherArea implements Calculator<LeatherArea.Bought, LeatherArea.Areas> {
    private static final Formula PANEL = Formula.of("panel-area", "A = w · h", Origins.GEOMETRY);
    private static final Formula TOGETHER = Formula.of("area-together", "S = n · A", Origins.ARITHMETIC);
    private static final Formula PRICE = Formula.of("price-per-area", "q = p · B / C", Origins.INCH_1959);
    private static final Formula PRICE_TOGETHER = Formula.of("price-together", "P = p · S / C", Origins.ARITHMETIC);
    private static final NoticeKind UNUSUAL = NoticeKind.note("area-unusual-for-piece");

    /** What is asked. */
    public record Bought(
            @Asked(example = "{\"measured\":{\"area\":\"22 ft²\"}}")
            AreaSold sold,

            @Asked(min = "1", max = "100000", usual = "1-50", preset = "1")
            int count,

            @Asked(example = "cattle-side") Optional<HidePiece> piece,

            @Asked(min = "0", max = "1000000000", example = "9.50")
            Optional<Double> price,

            @Asked(preset = "square-foot") PricedBy pricedBy) {}

    /** How the area is known. */
    public sealed interface AreaSold permits Measured, Panel {}

    /** As marked on the hide or measured by machine. */
    public record Measured(
            @Asked(unit = "ft²", min = "0.0001 ft²", max = "100000 ft²", usual = "1-60 ft²", example = "22 ft²")
            Area area)
            implements AreaSold {}

    /** A panel cut square. */
    public record Panel(
            @Asked(unit = "mm", min = "1 mm", max = "10000 mm", usual = "50-2500 mm", example = "12 x 24 in")
            Size size) implements AreaSold {}

    /** The unit a price is quoted for. */
    public enum PricedBy {
        SQUARE_FOOT(Units.FT2),
        SQUARE_DECIMETRE(Units.DM2),
        SQUARE_METRE(Units.M2),
        SQUARE_INCH(Units.IN2);

        private final Area area;

        PricedBy(Unit unit) {
            this.area = Area.of(1, unit);
        }

        Area area() {
            return area;
        }
    }

    /** What is answered: the area of all pieces together, and prices as plain numbers in the money they came in. */
    public record Areas(
            @Answered(unit = "ft²", keepUnit = true, by = "inch-1959", step = "0.01 ft²", lead = true)
            Area squareFeet,

            @Answered(unit = "dm²", keepUnit = true, by = "inch-1959", step = "0.1 dm²", lead = true)
            Area squareDecimetres,

            @Answered(unit = "m²", keepUnit = true, by = "inch-1959", step = "0.01 m²")
            Area squareMetres,

            @Answered(unit = "in²", keepUnit = true, by = "inch-1959", step = "1 in²")
            Area squareInches,

            @Answered(unit = "ft²", by = "inch-1959", step = "0.01 ft²")
            Area eachPiece,

            @Answered(by = "price-per-area", step = "0.01") Optional<Double> pricePerSquareFoot,

            @Answered(by = "price-per-area", step = "0.0001")
            Optional<Double> pricePerSquareDecimetre,

            @Answered(by = "price-per-area", step = "0.01") Optional<Double> pricePerSquareMetre,

            @Answered(by = "price-per-area", step = "0.0001")
            Optional<Double> pricePerSquareInch,

            @Answered(by = "price-together", step = "0.01") Optional<Double> priceTogether) {}

    @Override
    public Outcome<Areas> calculate(Bought bought, Working working) {
        Area each = each(bought.sold(), working);
        Area all = each.times(bought.count());
        working.step(TOGETHER, all, "n", bought.count(), "A", each);
        Optional<Double> together =
                bought.price().map(price -> price * all.per(bought.pricedBy().area()));
        together.ifPresent(sum -> working.step(
                PRICE_TOGETHER,
                sum,
                "p",
                bought.price().get(),
                "S",
                all,
                "C",
                bought.pricedBy().area()));
        Areas areas = new Areas(
                all,
                all,
                all,
                all,
                each,
                priced(bought, PricedBy.SQUARE_FOOT, working),
                priced(bought, PricedBy.SQUARE_DECIMETRE, working),
                priced(bought, PricedBy.SQUARE_METRE, working),
                priced(bought, PricedBy.SQUARE_INCH, working),
                together);
        return Outcome.of(areas, unusual(bought, each));
    }

    private static Area each(AreaSold sold, Working working) {
        if (sold instanceof Panel panel) {
            Area area = panel.size().area();
            working.step(
                    PANEL, area, "w", panel.size().width(), "h", panel.size().height());
            return area;
        }
        return ((Measured) sold).area();
    }

    private static Optional<Double> priced(Bought bought, PricedBy unit, Working working) {
        Area quoted = bought.pricedBy().area();
        return bought.price().map(price -> {
            double converted = price * unit.area().per(quoted);
            working.step(PRICE, converted, "p", price, "B", unit.area(), "C", quoted);
            return converted;
        });
    }

    private static List<Notice> unusual(Bought bought, Area each) {
        return bought.piece()
                .filter(piece -> !piece.usuallyHas(each))
                .map(piece -> UNUSUAL.at(
                        "sold",
                        each.in(Units.FT2),
                        piece,
                        piece.least().in(Units.FT2),
                        piece.most().in(Units.FT2)))
                .map(List::of)
                .orElse(List.of());
    }

    @Override
    public List<Formula> formulas() {
        return List.of(PANEL, TOGETHER, PRICE, PRICE_TOGETHER);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(UNUSUAL);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.INCH_1959, Origins.HIDE_SIZES);
    }
}
