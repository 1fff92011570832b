package org.hidewright.costing;

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
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** What an hour at the bench must bring in, so that it pays for the hours nobody is charged for as well. */
@Calculates("bench-hour")
@Component(service = Calculator.class)
public final class BenchHour implements Calculator<BenchHour.Year, BenchHour.Hour> {
    private static final Formula CHARGED = Formula.of("hours-charged", "c = h · b", Origins.HOUR_RATE);
    private static final Formula RATE = Formula.of("bench-rate", "r = (p + o) / c", Origins.HOUR_RATE);

    /** What is asked, all of it over one and the same time: a year, or a month. */
    public record Year(
            @Asked(min = "0", example = "24000 EUR") Money pay,
            @Asked(min = "0", example = "6000 EUR") Money overhead,

            @Asked(unit = "h", min = "1 h", max = "9000 h", usual = "100-2200 h", example = "1600 h")
            Duration hours,

            @Asked(unit = "%", min = "1 %", max = "100 %", usual = "40-80 %", preset = "60 %")
            double charged) {}

    /** What is answered. */
    public record Hour(
            @Answered(by = "bench-rate", lead = true) Money perHour,

            @Answered(unit = "h", by = "hours-charged", step = "1 h")
            Duration hoursCharged) {}

    @Override
    public Outcome<Hour> calculate(Year year, Working working) {
        Optional<Notice> clash = Currencies.clash(List.of(year.pay(), year.overhead()));
        if (clash.isPresent()) {
            return Outcome.refuse(clash.get());
        }
        Duration charged = year.hours().times(year.charged());
        working.step(CHARGED, charged, "h", year.hours(), "b", year.charged());
        Money rate = year.pay().plus(year.overhead()).times(1 / charged.in(Units.HOUR));
        working.step(RATE, rate, "p", year.pay(), "o", year.overhead(), "c", charged);
        return Outcome.of(new Hour(rate, charged));
    }

    @Override
    public List<Formula> formulas() {
        return List.of(CHARGED, RATE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(Currencies.TWO);
    }
}
