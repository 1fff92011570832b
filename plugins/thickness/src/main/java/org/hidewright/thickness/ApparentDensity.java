package org.hidewright.thickness;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.osgi.service.component.annotations.Component;

/** The apparent density of this leather, from a test piece that was weighed and gauged. */
@Calculates("apparent-density")
@Component(service = Calculator.class)
public final class ApparentDensity implements Calculator<ApparentDensity.TestPiece, ApparentDensity.Found> {
    private static final Formula MEAN = Formula.of("readings-mean", "m = S / n", Origins.NIST_STRD);
    private static final Formula DENSITY = Formula.of("apparent-density", "ρ = m / (A · t)", Origins.ISO_2420);
    private static final NoticeKind NO_READINGS = NoticeKind.stop("density-no-readings");
    private static final NoticeKind NOT_ABOVE_NOTHING = NoticeKind.stop("density-reading-not-above-nothing");
    private static final NoticeKind FEW_READINGS = NoticeKind.note("density-few-readings");

    /** ISO 2420:2017, 7.2: the mean of four readings, one in the centre and three about 20 mm from it. */
    private static final int READINGS_OF_THE_STANDARD = 4;

    /** What is asked. */
    public record TestPiece(
            @Asked(unit = "g", min = "0.001 g", max = "1000000 g", usual = "1-5000 g", example = "30.1 g")
            Mass mass,

            @Asked(example = "{\"flat\":{\"area\":\"1 dm²\"}}")
            PieceShape shape,

            @Asked(
                    unit = "mm",
                    min = "0.01 mm",
                    max = "50 mm",
                    usual = "0.4-6 mm",
                    example = "3.15 mm; 3.20 mm; 3.18 mm; 3.17 mm")
            List<Length> thickness) {}

    /** What is answered. */
    public record Found(
            @Answered(unit = "g/cm³", by = "apparent-density", step = "0.01 g/cm³", lead = true)
            Density density,

            @Answered(unit = "mm", by = "readings-mean", step = "0.01 mm")
            Length meanThickness) {}

    @Override
    public Outcome<Found> calculate(TestPiece piece, Working working) {
        if (piece.thickness().isEmpty()) {
            return Outcome.refuse(NO_READINGS.at("thickness"));
        }
        if (piece.thickness().stream().anyMatch(reading -> reading.mm() <= 0)) {
            return Outcome.refuse(NOT_ABOVE_NOTHING.at("thickness"));
        }
        Spread spread = Spread.of(piece.thickness());
        Length mean = Length.ofMm(spread.mean());
        working.step(MEAN, mean, "S", mean.times(spread.count()), "n", spread.count());
        Area area = piece.shape().faceArea();
        Density density = SheetMass.density(piece.mass(), area, mean);
        working.step(DENSITY, density, "m", piece.mass(), "A", area, "t", mean);
        List<Notice> notices = new ArrayList<>();
        if (spread.count() < READINGS_OF_THE_STANDARD) {
            notices.add(FEW_READINGS.at("thickness", spread.count(), READINGS_OF_THE_STANDARD));
        }
        return Outcome.of(new Found(density, mean), notices);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(MEAN, DENSITY);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_READINGS, NOT_ABOVE_NOTHING, FEW_READINGS);
    }
}
