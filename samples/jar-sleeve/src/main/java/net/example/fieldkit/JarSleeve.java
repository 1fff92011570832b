package net.example.fieldkit;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** How long to cut the sleeve that keeps a specimen jar from clinking in the bag. */
@Component(service = Calculator.class)
@Calculates("jar-sleeve")
public final class JarSleeve implements Calculator<JarSleeve.Jar, JarSleeve.Sleeve> {

    /** What is asked. */
    public record Jar(
            @Asked(unit = "mm", min = "10 mm", max = "400 mm", usual = "30-120 mm", example = "65 mm")
            Length diameter,

            @Asked(unit = "mm", min = "0.4 mm", max = "6 mm", usual = "1-3 mm", example = "2 mm")
            Length thickness,

            @Asked(unit = "mm", min = "0 mm", max = "10 mm", preset = "1 mm")
            Length ease,

            @Asked(unit = "mm", min = "0 mm", max = "60 mm", preset = "12 mm")
            Length overlap) {}

    /** What is answered. */
    public record Sleeve(
            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "sleeve", lead = true)
            Length cutLength) {}

    private static final Source RING = Source.of("ring", Source.Kind.DEFINITION);

    static final Formula SLEEVE = Formula.of("sleeve", "L = π · (D + e + t) + o", RING);

    static final NoticeKind THIN_OVERLAP = NoticeKind.check("thin-overlap");

    @Override
    public List<Formula> formulas() {
        return List.of(SLEEVE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(THIN_OVERLAP);
    }

    @Override
    public Outcome<Sleeve> calculate(Jar jar, Working working) {
        double round = Math.PI
                * (jar.diameter().mm() + jar.ease().mm() + jar.thickness().mm());
        Length cut = Length.ofMm(round + jar.overlap().mm());
        working.step(SLEEVE, cut, "D", jar.diameter(), "e", jar.ease(), "t", jar.thickness(), "o", jar.overlap());
        boolean thin = jar.overlap().mm() > 0
                && jar.overlap().compareTo(jar.thickness().times(3)) < 0;
        return Outcome.of(
                new Sleeve(cut),
                thin ? List.of(THIN_OVERLAP.at("overlap", jar.overlap(), jar.thickness())) : List.of());
    }
}
