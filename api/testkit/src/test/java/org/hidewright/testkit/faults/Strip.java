package org.hidewright.testkit.faults;

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
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;

/** How much leather a strip takes: nothing is wrong with it, and the others are this with one fault. */
@Calculates("strip")
public final class Strip implements Calculator<Strip.Asks, Strip.Takes> {
    public record Asks(
            @Asked(unit = "mm", min = "3 mm", max = "200 mm", usual = "10-60 mm", preset = "25 mm")
            Length width,

            @Asked(unit = "mm", min = "10 mm", max = "3 m", usual = "100-1200 mm", example = "400 mm")
            Length length) {}

    public record Takes(
            @Answered(unit = "dm²", by = "strip-area") Area area,
            @Answered(by = "strip-area") double share,
            @Answered List<String> told) {}

    public static final Source PLANE = Source.of("plane", Source.Kind.DEFINITION);
    public static final Formula AREA = Formula.of("strip-area", "A = w · l", PLANE);
    public static final NoticeKind TOO_LONG = NoticeKind.stop("too-long");

    /** The longest that is sold. */
    private static final double LONGEST_MM = 2500;

    @Override
    public Outcome<Takes> calculate(Asks asks, Working working) {
        return asks.length().mm() > LONGEST_MM
                ? Outcome.refuse(TOO_LONG.at("length", asks.length()))
                : Outcome.of(takes(asks, working));
    }

    /** The right answers, with what is worked taken down. */
    static Takes takes(Asks asks, Working working) {
        Area area = Area.ofMm2(asks.width().mm() * asks.length().mm());
        working.step(AREA, area, "w", asks.width(), "l", asks.length());
        return takes(area.base());
    }

    /** Answers that say this. */
    static Takes takes(double mm2, String... told) {
        return new Takes(Area.ofMm2(mm2), mm2 / 1e6, List.of(told));
    }

    @Override
    public List<Formula> formulas() {
        return List.of(AREA);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(TOO_LONG);
    }
}
