package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Rounding;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** A hole for anything round that goes through leather. */
@Calculates("hole")
@Component(service = Calculator.class)
public final class PlainHole implements Calculator<PlainHole.Through, PlainHole.Made> {
    /** What is asked. */
    public record Through(
            @Asked(unit = "mm", min = "0.5 mm", max = "60 mm", usual = "1-20 mm", example = "3 mm")
            Length diameter,

            @Asked(unit = "mm", min = "0.5 mm", max = "100 mm", example = "8 mm")
            Optional<Length> headDiameter,

            @Asked(preset = "medium") Temper temper,
            @Asked(preset = "{\"punched\":{}}") HoleMade made,
            @Asked(preset = "no") boolean bearsLoad) {}

    /** What is answered. */
    public record Made(
            @Answered(unit = "mm", step = "0.1 mm", by = "hole-exact", lead = true)
            Length hole,

            @Answered(unit = "mm", step = "0.01 mm", by = "hole-habit", lead = true)
            Length cut,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.UP, by = "hole-least")
            Length atLeast,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "hole-most")
            Length atMost,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "hole-edge")
            Length fromEdge,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "hole-pitch")
            Length between,

            @Answered List<TestHole> tests,
            @Answered Drawing testRow) {}

    @Override
    public Outcome<Made> calculate(Through asked, Working working) {
        List<Notice> notices = new ArrayList<>();
        Use use = new Use(false, false, asked.bearsLoad());
        Holes holes = new Holes(asked.made(), use, working, notices);
        ShankHole hole = ShankHole.of(asked.diameter(), asked.temper());
        Optional<Notice> kerf = holes.add("hole", hole, asked.headDiameter().orElse(asked.diameter()));
        if (kerf.isPresent()) {
            return Outcome.refuse(kerf.get());
        }
        working.source("hole", hole.source());
        Cautions.tell(use, asked.made(), notices);
        HoleRow row = holes.rows().get(0);
        List<TestHole> tests = TestHole.around(hole, holes.punches());
        return Outcome.of(
                new Made(
                        row.wanted(),
                        row.cut(),
                        row.atLeast(),
                        row.atMost(),
                        row.fromEdge(),
                        row.between(),
                        tests,
                        TestHole.drawn(tests)),
                notices);
    }

    @Override
    public List<Formula> formulas() {
        return Holes.FORMULAS;
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.of(Holes.NOTICES, List.of(Cautions.STRUCK_TOOLS, Cautions.NO_LOAD))
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.HOLE_HABIT);
    }
}
