package org.hidewright.testkit.faults;

import java.util.List;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Length;

/** A template of two panels and a stud: nothing is wrong with it, and the others are this with one fault. */
@Calculates("panel")
public final class Panel implements Calculator<Panel.Asks, Panel.Made> {
    public record Asks(
            @Asked(unit = "mm", min = "40 mm", max = "400 mm", usual = "60-200 mm", preset = "100 mm")
            Length width) {}

    public record Made(@Answered Item item) {}

    private static final double HEIGHT = 80;
    private static final double MARGIN = 4;
    private static final int HOLES = 10;

    @Override
    public Outcome<Made> calculate(Asks asks, Working working) {
        double width = asks.width().mm();
        return Outcome.of(
                item(panel("front", outline(width), width, HOLES), panel("back", outline(width), width, HOLES)));
    }

    static Path outline(double width) {
        return Path.rectangle(Role.CUT, Point.of(0, 0), width, HEIGHT);
    }

    static Part.Builder panel(String id, Path outline, double width, int holes) {
        return Part.of(id, id.equals("front") ? "Front" : "Back", outline)
                .hole(Hole.of("stud", Point.of(width / 2, HEIGHT / 2), 3))
                .stitchLine(rim(MARGIN, width - MARGIN, holes));
    }

    /** Along the bottom, from one place to another. */
    static StitchLine rim(double from, double to, int holes) {
        return StitchLine.of(
                "rim",
                Path.line(Role.STITCH, Point.of(from, MARGIN), Point.of(to, MARGIN)),
                IntStream.range(0, holes)
                        .mapToObj(i -> Point.of(from + (to - from) * i / (holes - 1), MARGIN))
                        .toList());
    }

    static Made item(Part.Builder front, Part.Builder back) {
        return new Made(Item.builder()
                .part(front.build())
                .part(back.build())
                .seam(Seam.of("bottom", List.of(new OnPart("front", "rim"), new OnPart("back", "rim"))))
                .build());
    }
}
