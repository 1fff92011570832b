package org.hidewright.thickness;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** What pieces weigh, from area, thickness and apparent density. */
@Calculates("piece-weight")
@Component(service = Calculator.class)
public final class PieceWeight implements Calculator<PieceWeight.Pieces, PieceWeight.Weight> {
    // In the working mass is in g, area in cm² and thickness in cm, so that the numbers agree as they stand.
    private static final Formula STRIP = Formula.of("strip-area", "A = l · w", Origins.GEOMETRY);
    private static final Formula MASS = Formula.of("sheet-mass", "m = A · t · ρ", Origins.ISO_2420);
    private static final Formula TOGETHER = Formula.of("mass-together", "M = n · m", Origins.ARITHMETIC);
    private static final Formula PER_AREA = Formula.of("mass-per-area", "q = m / A", Origins.ISO_2420);

    /** What is asked. */
    public record Pieces(
            @Asked(example = "{\"flat\":{\"area\":\"10 dm²\"}}")
            PieceShape shape,

            @Asked(unit = "mm", min = "0.01 mm", max = "50 mm", usual = "0.4-6 mm", example = "8 oz")
            Length thickness,

            @Asked(unit = "g/cm³", min = "0.05 g/cm³", max = "3 g/cm³", usual = "0.5-1.2 g/cm³", example = "0.95 g/cm³")
            Density density,

            @Asked(min = "1", max = "100000", usual = "1-100", preset = "1")
            int count) {}

    /** What is answered; mass per area in grams per square metre. */
    public record Weight(
            @Answered(unit = "g", by = "mass-together", step = "1 g", lead = true)
            Mass mass,

            @Answered(unit = "lb", by = "mass-together", step = "0.01 lb")
            Mass pounds,

            @Answered(unit = "g", by = "sheet-mass", step = "0.1 g")
            Mass eachPiece,

            @Answered(unit = "dm²", by = "strip-area", step = "0.01 dm²")
            Area areaEach,

            @Answered(by = "mass-per-area", step = "1") double gramsPerSquareMetre) {}

    @Override
    public Outcome<Weight> calculate(Pieces pieces, Working working) {
        Area area = pieces.shape().faceArea();
        if (pieces.shape() instanceof PieceShape.Strip strip) {
            working.step(STRIP, area, "l", strip.length(), "w", strip.width());
        }
        Mass each = SheetMass.mass(area, pieces.thickness(), pieces.density());
        working.step(MASS, each, "A", area, "t", pieces.thickness(), "ρ", pieces.density());
        Mass all = each.times(pieces.count());
        working.step(TOGETHER, all, "n", pieces.count(), "m", each);
        double perSquareMetre = each.grams() / area.in(Units.M2);
        working.step(PER_AREA, perSquareMetre, "m", each.grams(), "A", area.in(Units.M2));
        return Outcome.of(new Weight(all, all, each, area, perSquareMetre));
    }

    @Override
    public List<Formula> formulas() {
        return List.of(STRIP, MASS, TOGETHER, PER_AREA);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of();
    }
}
