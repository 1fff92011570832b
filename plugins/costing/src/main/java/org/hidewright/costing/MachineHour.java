package org.hidewright.costing;

import java.util.ArrayList;
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
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** What an hour of a machine costs: its price spread over its life, and what each hour takes besides. */
@Calculates("machine-hour")
@Component(service = Calculator.class)
public final class MachineHour implements Calculator<MachineHour.Machine, MachineHour.Hour> {
    private static final Formula WEAR = Formula.of("machine-wear", "w = (P + I - S) / L", Origins.MACHINE_HOUR);
    private static final Formula RATE = Formula.of("machine-rate", "r = w + R", Origins.MACHINE_HOUR);
    private static final NoticeKind WORTH_MORE = NoticeKind.stop("machine-worth-more");

    /** What is asked. */
    public record Machine(
            @Asked(min = "0", example = "1200 EUR") Money price,
            @Asked(min = "0", example = "150 EUR") Optional<Money> installation,
            @Asked(min = "0", example = "200 EUR") Optional<Money> worthAfterwards,

            @Asked(unit = "h", min = "1 h", max = "1000000 h", usual = "500-20000 h", example = "4000 h")
            Duration life,

            @Asked(example = "[{\"id\":\"power\",\"per-hour\":\"0.12 EUR\"}]")
            Optional<List<Running>> running) {}

    /** What an hour takes besides: power, upkeep, filters, room. */
    public record Running(
            @RowId String id,
            @Asked(min = "0", example = "0.12 EUR") Money perHour) {}

    /** What is answered. */
    public record Hour(
            @Answered(by = "machine-rate", lead = true) Money perHour,

            @Answered(by = "machine-wear") Money wear,
            @Answered(by = "machine-rate") Money running) {}

    @Override
    public Outcome<Hour> calculate(Machine machine, Working working) {
        List<Running> rows = machine.running().orElse(List.of());
        List<Money> amounts = new ArrayList<>(List.of(machine.price()));
        machine.installation().ifPresent(amounts::add);
        machine.worthAfterwards().ifPresent(amounts::add);
        rows.forEach(row -> amounts.add(row.perHour()));
        Optional<Notice> clash = Currencies.clash(amounts);
        if (clash.isPresent()) {
            return Outcome.refuse(clash.get());
        }
        Money nothing = machine.price().times(0);
        Money installation = machine.installation().orElse(nothing);
        Money worth = machine.worthAfterwards().orElse(nothing);
        Money worn = machine.price().plus(installation).minus(worth);
        if (worn.compareTo(nothing) < 0) {
            return Outcome.refuse(
                    WORTH_MORE.at("worth-afterwards", worth, machine.price().plus(installation)));
        }
        Money wear = worn.times(1 / machine.life().in(Units.HOUR));
        working.step(WEAR, wear, "P", machine.price(), "I", installation, "S", worth, "L", machine.life());
        Money running = rows.stream().map(Running::perHour).reduce(nothing, Money::plus);
        Money rate = wear.plus(running);
        working.step(RATE, rate, "w", wear, "R", running);
        return Outcome.of(new Hour(rate, wear, running));
    }

    @Override
    public List<Formula> formulas() {
        return List.of(WEAR, RATE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(Currencies.TWO, WORTH_MORE);
    }
}
