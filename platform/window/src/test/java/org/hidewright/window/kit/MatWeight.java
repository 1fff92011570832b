package org.hidewright.window.kit;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Density;

/** How heavy a mat is by a hide of the workshop. */
@Calculates("mat-weight")
public final class MatWeight implements Calculator<MatWeight.Asking, MatWeight.Weighs> {
    /** What is asked. */
    public record Asking(
            @Asked Item item,

            @Asked(unit = "g/cm3", min = "0.1 g/cm3", max = "3 g/cm3", example = "0.9 g/cm3", stock = "leather.density")
            Density density,

            @Asked(min = "1", max = "9", preset = "1") int pieces) {}

    /** What is answered. */
    public record Weighs(
            @Answered(unit = "g/cm3", step = "0.01 g/cm3", lead = true)
            Density each) {}

    private static final NoticeKind THIRSTY = NoticeKind.check("thirsty");
    private static final double LIGHT = 0.7;

    @Override
    public List<NoticeKind> notices() {
        return List.of(THIRSTY);
    }

    @Override
    public Outcome<Weighs> calculate(Asking asked, Working working) {
        Weighs weighs = new Weighs(asked.density());
        return asked.density().gramsPerCm3() < LIGHT ? Outcome.of(weighs, List.of(THIRSTY.with())) : Outcome.of(weighs);
    }
}
