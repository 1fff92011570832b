package org.hidewright.edges;

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
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** How much of its corners an edge can lose, and which beveler does it. */
@Calculates("edge-bevel")
@Component(service = Calculator.class)
public final class EdgeBevel implements Calculator<EdgeBevel.Corner, EdgeBevel.Cut> {
    /** A bevel at 45 degrees takes its width over the root of two off the edge. */
    private static final Formula FLAT = Formula.of("bevel-flat-left", "r = t - n · w / √2", Origins.ARITHMETIC);

    private static final NoticeKind TOO_THIN = NoticeKind.note("too-thin-to-bevel");

    /** What is asked. */
    public record Corner(
            @Asked(unit = "mm", min = "0.2 mm", max = "60 mm", usual = "0.8-12 mm", example = "3.6 mm")
            Length thickness,

            @Asked(min = "1", max = "2", preset = "2") int corners,

            @Asked(example = "[{\"id\":\"beveler-1\",\"kind\":\"beveler\",\"width\":\"1 mm\"}]")
            Optional<List<EdgeTool>> edgeTools) {}

    /** What is answered; no bevel on an edge that is too thin for one. */
    public record Cut(
            @Answered(unit = "mm", step = "0.1 mm", by = "bevel-width", lead = true)
            Optional<Length> bevel,

            @Answered Optional<String> beveler,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "bevel-flat-left")
            Length flatLeft) {}

    @Override
    public Outcome<Cut> calculate(Corner corner, Working working) {
        Length thickness = corner.thickness();
        Optional<Length> wanted = Bevel.of(thickness);
        if (wanted.isEmpty()) {
            return Outcome.of(
                    new Cut(Optional.empty(), Optional.empty(), thickness),
                    List.of(TOO_THIN.at("thickness", thickness, Bevel.THINNEST)));
        }
        Length width = wanted.get();
        Bevel.takeDown(thickness, width, working);
        List<EdgeTool> tools = corner.edgeTools().orElse(List.of());
        Optional<EdgeTool> beveler = Bevel.beveler(tools, thickness, width);
        Length cut = beveler.flatMap(EdgeTool::width).orElse(width);
        Length flat = thickness.minus(cut.times(corner.corners() / Math.sqrt(2)));
        working.step(FLAT, flat, "t", thickness, "n", corner.corners(), "w", cut);
        List<Notice> notices = new ArrayList<>();
        Bevel.none(tools, thickness, width).ifPresent(notices::add);
        notices.add(Cautions.BLADE.with());
        return Outcome.of(new Cut(wanted, beveler.map(EdgeTool::id), flat), notices);
    }

    @Override
    public List<Formula> formulas() {
        return List.of(Bevel.WIDTH, FLAT);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(TOO_THIN, Bevel.NO_BEVELER, Cautions.BLADE);
    }
}
