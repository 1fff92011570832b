package org.hidewright.stitching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** Which iron is struck where, so that no prong leaves the line. */
@Calculates("strike-plan")
@Component(service = Calculator.class)
public final class StrikePlan implements Calculator<StrikePlan.Line, StrikePlan.Planned> {
    private static final Source PLAN = Source.of("strike-plan", Source.Kind.DEFINITION);

    private static final NoticeKind NO_PLAN = NoticeKind.stop("no-strike-plan");
    private static final NoticeKind STRUCK = NoticeKind.caution("irons-struck");

    /** What is asked. */
    public record Line(
            @Asked(preset = "{\"straight\":{\"length\":\"180 mm\"}}")
            SewnLine line,

            @Asked(
                    unit = "mm",
                    min = "0.8 mm",
                    max = "15 mm",
                    usual = "2-6 mm",
                    preset = "3.85 mm",
                    picture = "pitch#pitch")
            Length pitch,

            @Asked(min = "1", max = "40", usual = "1-12", preset = "1; 2; 6")
            List<Integer> prongs,

            @Asked(unit = "mm", min = "0.05 mm", max = "3 mm", usual = "0.1-0.5 mm", preset = "0.3 mm")
            Length mostOff,

            @Asked(preset = "mark") AtCorners corners) {}

    /** What is answered. */
    public record Planned(
            @Answered(by = "strike-plan", lead = true) int blows,
            @Answered(by = "strike-plan") int holes,

            @Answered(unit = "mm", step = "0.01 mm", round = Rounding.UP, by = "strike-plan", lead = true)
            Length off,

            @Answered List<Strike> strikes,
            @Answered Drawing plan) {}

    @Override
    public Outcome<Planned> calculate(Line asked, Working working) {
        Marks marks;
        try {
            marks = Marks.of(asked.line(), "line", asked.pitch().mm(), asked.corners());
        } catch (Refusal e) {
            return e.outcome();
        }
        Strikes strikes = new Strikes(
                marks, asked.pitch().mm(), asked.prongs(), asked.mostOff().mm());
        Optional<List<Strikes.Blow>> plan = strikes.fewest();
        if (plan.isEmpty()) {
            return Outcome.refuse(NO_PLAN.at(
                    "prongs",
                    asked.prongs().stream().map(String::valueOf).collect(Collectors.joining(", ")),
                    asked.mostOff()));
        }
        List<Strike> rows = new ArrayList<>();
        Drawing.Builder drawing = marks.drawn();
        double off = 0;
        for (Strikes.Blow blow : plan.get()) {
            rows.add(new Strike(
                    Integer.toString(rows.size() + 1),
                    blow.prongs(),
                    blow.from() + 1,
                    blow.to() % marks.count() + 1,
                    Length.ofMm(blow.off())));
            off = Math.max(off, blow.off());
            List<Point> prongs = strikes.prongs(blow.from(), blow.prongs());
            if (blow.prongs() > 1) {
                drawing.line(Role.NOTE, prongs.get(0), prongs.get(prongs.size() - 1));
            }
        }
        return Outcome.of(
                new Planned(rows.size(), marks.count(), Length.ofMm(off), List.copyOf(rows), drawing.build()),
                List.of(STRUCK.with()));
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(SewnLine.NOTICES.stream(), Stream.of(NO_PLAN, STRUCK))
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(PLAN);
    }
}
