package org.hidewright.window.kit;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Length;

/** A bag for rolled nets: a piece to make, with what the cord has not: a group with a preset, and tables. */
@Calculates("bag")
public final class Bag implements Calculator<Bag.Asks, Bag.Gives> {
    /** Room left round the net. */
    public record Room(
            @Asked(unit = "mm") Length beside,
            @Asked(unit = "mm") Length above) {}

    /** A hole for a cord. */
    public record Eyelet(
            @RowId String id,
            @Asked(unit = "mm") Length across,
            @Asked(unit = "mm") Length up) {}

    /** What is asked. */
    public record Asks(
            @Asked(unit = "mm", min = "10 mm", max = "900 mm", example = "120 mm")
            Length width,

            @Asked(unit = "mm", min = "10 mm", max = "900 mm", preset = "80 mm")
            Length height,

            @Asked(preset = "{\"beside\": \"3 mm\", \"above\": \"4 mm\"}")
            Room room,

            @Asked(preset = "[]") List<Eyelet> eyelets) {}

    /** An eyelet as it is punched. */
    public record Punched(
            @RowId String id,
            @Answered(unit = "mm", step = "0.1 mm") Length fromLeft) {}

    /** What is answered. */
    public record Gives(
            @Answered(unit = "mm", step = "0.1 mm", lead = true, by = "across")
            Length cutWidth,

            @Answered(unit = "mm", step = "0.1 mm") Length cutHeight,
            @Answered List<Punched> punched,
            @Answered Item bag) {}

    private static final NoticeKind HEAVY = NoticeKind.caution("heavy");
    private static final NoticeKind DEEP = NoticeKind.note("deep");
    private static final double DEEP_MM = 150;
    private static final Source ROOM = Source.of("room", Source.Kind.DEFINITION);
    private static final Formula ACROSS = Formula.of("across", "W = w + 2 · r", ROOM);

    @Override
    public List<Formula> formulas() {
        return List.of(ACROSS);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(HEAVY, DEEP);
    }

    @Override
    public Outcome<Gives> calculate(Asks asked, Working working) {
        double width = asked.width().mm() + 2 * asked.room().beside().mm();
        double height = asked.height().mm() + asked.room().above().mm();
        working.step(
                ACROSS,
                Length.ofMm(width),
                "w",
                asked.width(),
                "r",
                asked.room().beside());
        Part.Builder front = Part.of("front", "Front", Path.rectangle(Role.CUT, Point.of(0, 0), width, height))
                .leather("brown side")
                .thickness(2)
                .stitchLine(StitchLine.of(
                        "side",
                        Path.line(Role.STITCH, Point.of(4, 4), Point.of(4, height - 4)),
                        List.of(Point.of(4, 4), Point.of(4, 9), Point.of(4, 14))))
                .fold(Fold.of(
                        "top",
                        Path.line(Role.FOLD, Point.of(0, height - 6), Point.of(width, height - 6)),
                        1,
                        Face.GRAIN));
        asked.eyelets()
                .forEach(eyelet -> front.hole(Hole.of(
                        eyelet.id(), Point.of(eyelet.across().mm(), eyelet.up().mm()), 4)));
        Gives gives = new Gives(
                Length.ofMm(width),
                Length.ofMm(height),
                asked.eyelets().stream()
                        .map(eyelet -> new Punched(eyelet.id(), eyelet.across()))
                        .toList(),
                Item.builder().part(front.build()).build());
        return height > DEEP_MM ? Outcome.of(gives, List.of(HEAVY.with(), DEEP.with())) : Outcome.of(gives);
    }
}
