package org.hidewright.testkit.faults;

import java.util.List;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.StitchLine;

/** Faults of templates. */
public final class Drawn {
    private Drawn() {}

    /** Its outline has a gap. */
    @Calculates("open-outline")
    public static final class OpenOutline implements Calculator<Panel.Asks, Panel.Made> {
        @Override
        public Outcome<Panel.Made> calculate(Panel.Asks asks, Working working) {
            double width = asks.width().mm();
            Path open =
                    Path.from(Point.of(0, 0)).lineTo(width, 0).lineTo(width, 80).open(Role.CUT);
            return Outcome.of(Panel.item(
                    Panel.panel("front", open, width, 10), Panel.panel("back", Panel.outline(width), width, 10)));
        }
    }

    /** On a wide panel its upper corners are taken the wrong way round. */
    @Calculates("crossing")
    public static final class Crossing implements Calculator<Panel.Asks, Panel.Made> {
        @Override
        public Outcome<Panel.Made> calculate(Panel.Asks asks, Working working) {
            double width = asks.width().mm();
            boolean wide = width > 150;
            Path outline = Path.from(Point.of(0, 0))
                    .lineTo(width, 0)
                    .lineTo(wide ? 0 : width, 80)
                    .lineTo(wide ? width : 0, 80)
                    .closed(Role.CUT);
            return Outcome.of(Panel.item(
                    Panel.panel("front", outline, width, 10), Panel.panel("back", Panel.outline(width), width, 10)));
        }
    }

    /** Its rivet stays where a narrow panel has no leather. */
    @Calculates("hole-outside")
    public static final class HoleOutside implements Calculator<Panel.Asks, Panel.Made> {
        @Override
        public Outcome<Panel.Made> calculate(Panel.Asks asks, Working working) {
            double width = asks.width().mm();
            return Outcome.of(Panel.item(
                    Panel.panel("front", Panel.outline(width), width, 10).hole(Hole.of("rivet", Point.of(70, 60), 4)),
                    Panel.panel("back", Panel.outline(width), width, 10)));
        }
    }

    /** Its window is wider than a narrow panel. */
    @Calculates("window-outside")
    public static final class WindowOutside implements Calculator<Panel.Asks, Panel.Made> {
        @Override
        public Outcome<Panel.Made> calculate(Panel.Asks asks, Working working) {
            double width = asks.width().mm();
            Path window = Path.rectangle(Role.INNER_CUT, Point.of(10, 55), 60, 15);
            return Outcome.of(Panel.item(
                    Panel.panel("front", Panel.outline(width), width, 10).cutOut(window),
                    Panel.panel("back", Panel.outline(width), width, 10)));
        }
    }

    /** A line whose holes are still to be spaced runs out of the leather. */
    @Calculates("stitches-off")
    public static final class StitchesOff implements Calculator<Panel.Asks, Panel.Made> {
        @Override
        public Outcome<Panel.Made> calculate(Panel.Asks asks, Working working) {
            double width = asks.width().mm();
            Path line = Path.line(Role.STITCH, Point.of(10, 70), Point.of(width + 5, 70));
            return Outcome.of(Panel.item(
                    Panel.panel("front", Panel.outline(width), width, 10)
                            .stitchLine(StitchLine.of("top", line, List.of())),
                    Panel.panel("back", Panel.outline(width), width, 10)));
        }
    }

    /** The back has a hole more. */
    @Calculates("counts-differ")
    public static final class CountsDiffer implements Calculator<Panel.Asks, Panel.Made> {
        @Override
        public Outcome<Panel.Made> calculate(Panel.Asks asks, Working working) {
            double width = asks.width().mm();
            return Outcome.of(Panel.item(
                    Panel.panel("front", Panel.outline(width), width, 10),
                    Panel.panel("back", Panel.outline(width), width, 11)));
        }
    }
}
