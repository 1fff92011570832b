package org.hidewright.fasteners;

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
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** A ring held by leather turned round it: how wide the leather may be, and how near to the ring a rivet may sit. */
@Calculates("ring")
@Component(service = Calculator.class)
public final class RingHeld implements Calculator<RingHeld.Held, RingHeld.Places> {
    private static final Formula WIDTH = Formula.of("ring-width", "w = W - e", Origins.RING_HABIT);
    private static final Formula NEAREST = Formula.of("ring-rivet", "x = d / 2 + t + D / 2", Origins.GEOMETRY);
    private static final Formula STACK = Formula.of("ring-stack", "T = 2 · t", Origins.GEOMETRY);

    private static final NoticeKind NO_ROOM = NoticeKind.stop("ring-no-room");
    private static final NoticeKind BAR_TOO_THIN = NoticeKind.check("ring-bar-thin");

    /** Leather is a millimetre narrower than the ring is wide inside (common practice: half to one). */
    private static final Length EASE = Length.ofMm(1);

    /** A ring whose bar is thinner than half the leather turned round it makes the fold crack (common practice). */
    private static final double LEAST_BAR_THICKNESSES = 0.5;

    /** What is asked. */
    public record Held(
            @Asked(example = "{\"inside-width\":\"20 mm\",\"bar-diameter\":\"3 mm\"}")
            Ring ring,

            @Asked(unit = "mm", min = "0.3 mm", max = "20 mm", usual = "1-5 mm", example = "2.4 mm")
            Length thickness,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", usual = "5-16 mm", example = "9 mm")
            Length rivetHead,

            @Asked Use use) {}

    /** A ring as measured; a row of hardware can be taken for it. */
    public record Ring(
            @Asked(
                    unit = "mm",
                    min = "3 mm",
                    max = "200 mm",
                    usual = "10-60 mm",
                    example = "20 mm",
                    picture = "ring#inside")
            Length insideWidth,

            @Asked(unit = "mm", min = "0.5 mm", max = "20 mm", usual = "2-6 mm", example = "3 mm", picture = "ring#bar")
            Length barDiameter) {}

    /** What is answered. */
    public record Places(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "ring-width", lead = true)
            Length leatherWidth,

            @Answered(unit = "mm", step = "0.5 mm", round = Rounding.UP, by = "ring-rivet", lead = true)
            Length barToRivet,

            @Answered(unit = "mm", step = "0.1 mm", by = "ring-stack")
            Length stackAtRivet) {}

    @Override
    public Outcome<Places> calculate(Held asked, Working working) {
        Ring ring = asked.ring();
        Length width = ring.insideWidth().minus(EASE);
        working.step(WIDTH, width, "W", ring.insideWidth(), "e", EASE);
        if (2 * asked.thickness().mm() >= ring.insideWidth().mm()) {
            return Outcome.refuse(NO_ROOM.at("thickness", asked.thickness(), ring.insideWidth()));
        }
        Length toRivet = ring.barDiameter()
                .times(0.5)
                .plus(asked.thickness())
                .plus(asked.rivetHead().times(0.5));
        working.step(NEAREST, toRivet, "d", ring.barDiameter(), "t", asked.thickness(), "D", asked.rivetHead());
        Length stack = asked.thickness().times(2);
        working.step(STACK, stack, "t", asked.thickness());
        List<Notice> notices = new ArrayList<>();
        barTooThin(ring, asked.thickness()).ifPresent(notices::add);
        Cautions.tell(asked.use(), notices);
        return Outcome.of(new Places(width, toRivet, stack), notices);
    }

    private static Optional<Notice> barTooThin(Ring ring, Length thickness) {
        return ring.barDiameter().mm() < LEAST_BAR_THICKNESSES * thickness.mm() - 1e-9
                ? Optional.of(BAR_TOO_THIN.at("ring.bar-diameter", ring.barDiameter(), thickness))
                : Optional.empty();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(WIDTH, NEAREST, STACK);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NO_ROOM, BAR_TOO_THIN, Cautions.NICKEL, Cautions.SMALL_PARTS, Cautions.NO_LOAD);
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.RING_HABIT);
    }
}
