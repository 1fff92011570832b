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
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Money;
import org.osgi.service.component.annotations.Component;

/** How many pieces must be sold before what was spent once has come back. */
@Calculates("break-even")
@Component(service = Calculator.class)
public final class BreakEven implements Calculator<BreakEven.Plan, BreakEven.Count> {
    private static final Formula LEFT = Formula.of("left-by-each", "d = p - v", Origins.BREAK_EVEN);
    private static final Formula COUNT = Formula.of("break-even-count", "n = ceil((F + T) / d)", Origins.BREAK_EVEN);
    private static final NoticeKind NOTHING_LEFT = NoticeKind.stop("break-even-nothing-left");
    private static final NoticeKind TOO_MANY = NoticeKind.stop("break-even-too-many");
    private static final double MOST = 1_000_000_000;

    /** What is asked. */
    public record Plan(
            @Asked(min = "0", example = "1200 EUR") Money spentOnce,
            @Asked(min = "0", example = "85 EUR") Money price,
            @Asked(min = "0", example = "37 EUR") Money costOfEach,
            @Asked(min = "0", example = "500 EUR") Optional<Money> wanted) {}

    /** What is answered. */
    public record Count(
            @Answered(by = "break-even-count", lead = true) int pieces,
            @Answered(by = "left-by-each") Money leftByEach) {}

    @Override
    public Outcome<Count> calculate(Plan plan, Working working) {
        List<Money> amounts = new ArrayList<>(List.of(plan.price(), plan.spentOnce(), plan.costOfEach()));
        plan.wanted().ifPresent(amounts::add);
        Optional<Notice> clash = Currencies.clash(amounts);
        if (clash.isPresent()) {
            return Outcome.refuse(clash.get());
        }
        Money left = plan.price().minus(plan.costOfEach());
        Money nothing = left.times(0);
        if (left.compareTo(nothing) <= 0) {
            return Outcome.refuse(NOTHING_LEFT.at("price", plan.price(), plan.costOfEach()));
        }
        working.step(LEFT, left, "p", plan.price(), "v", plan.costOfEach());
        Money wanted = plan.wanted().orElse(nothing);
        double count = plan.spentOnce().plus(wanted).per(left);
        if (count > MOST) {
            return Outcome.refuse(TOO_MANY.at("price", left));
        }
        int pieces = LeatherBought.whole(count);
        working.step(COUNT, pieces, "F", plan.spentOnce(), "T", wanted, "d", left);
        return Outcome.of(new Count(pieces, left));
    }

    @Override
    public List<Formula> formulas() {
        return List.of(LEFT, COUNT);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(Currencies.TWO, NOTHING_LEFT, TOO_MANY);
    }
}
