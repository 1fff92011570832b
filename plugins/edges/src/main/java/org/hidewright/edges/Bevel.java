package org.hidewright.edges;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/** The corner taken off an edge, measured across the cut; common practice. */
final class Bevel {
    static final Formula WIDTH = Formula.of("bevel-width", "b = min(t / 3, m)", Origins.BEVEL_HABIT);
    static final NoticeKind NO_BEVELER = NoticeKind.check("no-beveler-fits");

    /** Thinner than this an edge loses its body to a bevel. */
    static final Length THINNEST = Length.ofMm(1.2);
    /** A wider bevel is a shape and no longer an edge. */
    static final Length MOST = Length.ofMm(1.5);

    /** A narrower cut does not take the corner off. */
    private static final double LEAST_SHARE = 1.0 / 6;
    /** Two wider ones, cut at 45 degrees, leave less than a third of the thickness flat between them. */
    private static final double MOST_SHARE = Math.sqrt(2) / 3;

    private Bevel() {}

    /** How wide; nothing where the edge is too thin. */
    static Optional<Length> of(Length thickness) {
        return thickness.mm() < THINNEST.mm() - 1e-9
                ? Optional.empty()
                : Optional.of(Length.ofMm(Math.min(thickness.mm() / 3, MOST.mm())));
    }

    static void takeDown(Length thickness, Length width, Working working) {
        working.step(WIDTH, width, "t", thickness, "m", MOST);
    }

    /** The beveler nearest to a width that neither leaves the corner nor eats the edge. */
    static Optional<EdgeTool> beveler(List<EdgeTool> tools, Length thickness, Length width) {
        return tools.stream()
                .filter(EdgeTool::isBeveler)
                .filter(tool -> cut(tool).mm() >= LEAST_SHARE * thickness.mm() - 1e-9
                        || cut(tool).mm() >= MOST.mm() - 1e-9)
                .filter(tool -> cut(tool).mm() <= MOST_SHARE * thickness.mm() + 1e-9)
                .min(Comparator.<EdgeTool>comparingDouble(
                                tool -> Math.abs(cut(tool).mm() - width.mm()))
                        .thenComparingDouble(tool -> cut(tool).mm()));
    }

    /** That bevelers are owned and none of them suits. */
    static Optional<Notice> none(List<EdgeTool> tools, Length thickness, Length width) {
        return tools.stream().anyMatch(EdgeTool::isBeveler)
                        && beveler(tools, thickness, width).isEmpty()
                ? Optional.of(NO_BEVELER.at("edge-tools", thickness, width))
                : Optional.empty();
    }

    private static Length cut(EdgeTool tool) {
        return tool.width().orElseThrow();
    }
}
