package org.hidewright.edges;

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
import org.hidewright.api.measure.Duration;
import org.osgi.service.component.annotations.Component;

/** How long coats of one kind keep a piece off the bench. */
@Calculates("waiting-time")
@Component(service = Calculator.class)
public final class WaitingTime implements Calculator<WaitingTime.Coats, WaitingTime.Waits> {
    private static final Formula TOGETHER =
            Formula.of("waiting-together", "W = ((n - 1) · b + c) · s", Origins.DRYING_HABIT);
    private static final NoticeKind TIMES_CAN_DOUBLE = NoticeKind.note("times-can-double");

    /** What is asked. */
    public record Coats(
            @Asked(example = "water-dye") Coat coat,

            @Asked(min = "1", max = "20", usual = "1-4", preset = "2")
            int coats,

            @Asked(preset = "usual") Room room) {}

    /** What is answered. */
    public record Waits(
            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "waiting-together", lead = true)
            Duration togetherAtLeast,

            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "waiting-together", lead = true)
            Duration togetherAtMost,

            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "drying-habit")
            Duration betweenAtLeast,

            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "drying-habit")
            Duration betweenAtMost,

            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "drying-habit")
            Duration lastAtLeast,

            @Answered(unit = "h", step = "0.1 h", round = Rounding.UP, by = "drying-habit")
            Duration lastAtMost) {}

    @Override
    public Outcome<Waits> calculate(Coats coats, Working working) {
        Wait between = coats.room().of(coats.coat().between());
        Wait last = coats.room().of(coats.coat().last());
        Wait together = between.times(coats.coats() - 1.0).plus(last);
        takeDown(
                coats,
                together.least(),
                coats.coat().between().least(),
                coats.coat().last().least(),
                working);
        takeDown(
                coats,
                together.most(),
                coats.coat().between().most(),
                coats.coat().last().most(),
                working);
        return Outcome.of(
                new Waits(
                        together.least(), together.most(), between.least(), between.most(), last.least(), last.most()),
                List.of(TIMES_CAN_DOUBLE.at("room")));
    }

    private static void takeDown(Coats coats, Duration together, Duration between, Duration last, Working working) {
        working.step(
                TOGETHER,
                together,
                "n",
                coats.coats(),
                "b",
                between,
                "c",
                last,
                "s",
                coats.room().factor());
    }

    @Override
    public List<Formula> formulas() {
        return List.of(TOGETHER);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(TIMES_CAN_DOUBLE);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.DRYING_HABIT);
    }
}
