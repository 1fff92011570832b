package org.hidewright.straps;

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
import org.hidewright.api.measure.Length;
import org.osgi.service.component.annotations.Component;

/** How wide a strap may be for its hardware, and how much of its width is left beside holes. */
@Calculates("strap-width")
@Component(service = Calculator.class)
public final class StrapWidth implements Calculator<StrapWidth.Hardware, StrapWidth.Width> {
    private static final Formula WIDTH = Formula.of("strap-width", "w = W - e", Origins.HARDWARE_EASE);
    private static final Formula EASE = Formula.of("strap-ease", "e = W - w", Origins.GEOMETRY);
    static final Formula NET = Formula.of("net-width", "q = (w - D) / w", Origins.GEOMETRY);

    private static final NoticeKind NO_WIDTH_LEFT = NoticeKind.stop("width-all-ease");
    static final NoticeKind HOLES_TOO_WIDE = NoticeKind.stop("width-all-holes");
    static final NoticeKind HOLES_NEAR_EDGE = NoticeKind.check("holes-near-edge");

    /** A hole’s centre stays at least this many diameters from the edge (common practice). */
    static final double EDGE_DIAMETERS = 2;

    /** What is asked: the inside of the hardware, and either the ease or a strap width to be judged. */
    public record Hardware(
            @Asked(
                    unit = "mm",
                    min = "1 mm",
                    max = "1 m",
                    usual = "8-60 mm",
                    example = "25 mm",
                    picture = "buckle-inside#inside")
            Length hardwareInsideWidth,

            @Asked(unit = "mm", min = "0 mm", max = "100 mm", usual = "0.5-1 mm", preset = "1 mm")
            Length ease,

            @Asked(unit = "mm", min = "1 mm", max = "1 m", example = "24 mm", picture = "buckle-inside#strap")
            Optional<Length> width,

            @Asked(unit = "mm", min = "0.3 mm", max = "1 m", example = "4 mm")
            Optional<List<Length>> holesAcross) {}

    /** What is answered; the net width is what is left beside the holes that lie side by side. */
    public record Width(
            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "strap-width", lead = true)
            Length width,

            @Answered(unit = "mm", step = "0.1 mm", by = "strap-ease")
            Length ease,

            @Answered(unit = "mm", step = "0.1 mm", round = Rounding.DOWN, by = "net-width")
            Length netWidth,

            @Answered(step = "0.01", round = Rounding.DOWN, by = "net-width")
            double netWidthFactor) {}

    @Override
    public Outcome<Width> calculate(Hardware hardware, Working working) {
        Length inside = hardware.hardwareInsideWidth();
        Length width = hardware.width().orElse(inside.minus(hardware.ease()));
        if (width.mm() <= 0) {
            return Outcome.refuse(
                    NO_WIDTH_LEFT.at("ease", hardware.ease(), inside, HardwareFit.LEAST_EASE, HardwareFit.USUAL_EASE));
        }
        List<Length> holes = hardware.holesAcross().orElse(List.of());
        Length cut = holes.stream().reduce(Length.ZERO, Length::plus);
        if (cut.mm() >= width.mm()) {
            return Outcome.refuse(HOLES_TOO_WIDE.at("holes-across", cut, width));
        }
        Length ease = inside.minus(width);
        if (hardware.width().isPresent()) {
            working.step(EASE, ease, "W", inside, "w", width);
        } else {
            working.step(WIDTH, width, "W", inside, "e", hardware.ease());
        }
        double net = (width.mm() - cut.mm()) / width.mm();
        working.step(NET, net, "w", width, "D", cut);
        List<Notice> notices = new ArrayList<>();
        HardwareFit.check(width, Optional.of(inside)).ifPresent(notices::add);
        nearEdge(holes, width).ifPresent(notices::add);
        return Outcome.of(new Width(width, ease, width.minus(cut), net), notices);
    }

    /** Holes spread evenly over the width: the outermost centre is half a share from the edge. */
    private static Optional<Notice> nearEdge(List<Length> holes, Length width) {
        double largest = holes.stream().mapToDouble(Length::mm).max().orElse(0);
        double toEdge = width.mm() / (2 * Math.max(1, holes.size()));
        return toEdge < EDGE_DIAMETERS * largest - 1e-9
                ? Optional.of(
                        HOLES_NEAR_EDGE.at("holes-across", Length.ofMm(toEdge), Length.ofMm(EDGE_DIAMETERS * largest)))
                : Optional.empty();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(WIDTH, EASE, NET);
    }

    @Override
    public List<NoticeKind> notices() {
        return Stream.concat(HardwareFit.KINDS.stream(), Stream.of(NO_WIDTH_LEFT, HOLES_TOO_WIDE, HOLES_NEAR_EDGE))
                .toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.HARDWARE_EASE, Origins.EDGE_HABIT);
    }
}
