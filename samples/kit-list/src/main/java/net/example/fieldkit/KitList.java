package net.example.fieldkit;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Mass;
import org.osgi.service.component.annotations.Component;

/** What a field bag carries, and what it weighs together. */
@Component(service = Calculator.class)
@Calculates("kit-list")
public final class KitList implements Calculator<KitList.Kit, KitList.Weighed> {

    /** One kind of thing in the bag; its row is called by its name. */
    public record Thing(
            @RowId String id,

            @Asked(unit = "g", min = "0.1 g", max = "50 kg", usual = "5-2000 g", example = "85 g")
            Mass mass,

            @Asked(min = "1", max = "1000", usual = "1-24", preset = "1")
            int count) {}

    /** What is asked. */
    public record Kit(
            @Asked(
                    example =
                            "[{\"id\":\"hand-lens\",\"mass\":\"45 g\"},{\"id\":\"specimen-jar\",\"mass\":\"95 g\",\"count\":\"6\"}]")
            List<Thing> things) {}

    /** What is answered. */
    public record Weighed(
            @Answered(unit = "g", step = "1 g", round = Rounding.UP, by = "together", lead = true)
            Mass together,

            @Answered(by = "together") int count) {}

    private static final Source ADDED = Source.of("added-up", Source.Kind.DEFINITION);

    static final Formula TOGETHER = Formula.of("together", "M = Σ (m · n)", ADDED);

    @Override
    public List<Formula> formulas() {
        return List.of(TOGETHER);
    }

    @Override
    public Outcome<Weighed> calculate(Kit kit, Working working) {
        double grams = 0;
        int count = 0;
        for (Thing thing : kit.things()) {
            grams += thing.mass().grams() * thing.count();
            count += thing.count();
        }
        Mass together = Mass.ofGrams(grams);
        working.step(TOGETHER, together);
        return Outcome.of(new Weighed(together, count));
    }
}
