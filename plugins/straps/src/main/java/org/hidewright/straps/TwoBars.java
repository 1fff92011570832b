package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Length of a strap closed round two bars or posts. */
@Calculates("two-bars")
@Component(service = Calculator.class)
public final class TwoBars implements Calculator<TwoBars.Bars, TwoBars.Loop> {
    /** How the strap runs between the bars. */
    enum BarRun {
        OPEN,
        CROSSED
    }

    /** What is asked; with a neutral line of 0 the bare length round the bars is answered. */
    public record Bars(
            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "20 mm")
            Length firstDiameter,

            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "20 mm")
            Length secondDiameter,

            @Asked(unit = "mm", min = "0.1 mm", max = "100 m", example = "200 mm")
            Length centres,

            @Asked(preset = "open") BarRun run,

            @Asked(unit = "mm", min = "0.05 mm", max = "50 mm", usual = "0.5-5 mm", example = "3 mm")
            Length thickness,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", preset = "0.5")
            double neutralLine,

            @Asked(unit = "mm", min = "0 mm", max = "1 m", preset = "0 mm")
            Length lap) {}

    /** What is answered. */
    public record Loop(
            @Answered(unit = "mm", step = "0.1 mm", by = "two-pulleys", lead = true)
            Length length) {}

    @Override
    public Outcome<Loop> calculate(Bars bars, Working working) {
        Origins.creditNeutralLine(working, "length", bars.neutralLine());
        return BarsRound.of(
                        bars.firstDiameter(),
                        bars.secondDiameter(),
                        bars.centres(),
                        bars.run() == BarRun.CROSSED,
                        bars.thickness(),
                        bars.neutralLine())
                .outcome(working, bars.lap())
                .map(Loop::new);
    }

    @Override
    public List<Formula> formulas() {
        return BarsRound.FORMULAS;
    }

    @Override
    public List<NoticeKind> notices() {
        return BarsRound.KINDS;
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.TWO_PULLEYS, Origins.NEUTRAL_HABIT);
    }
}
