package org.hidewright.core.template;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;

/** A calculator that draws plates, for templates to ask. */
@Calculates("plates")
public final class Plates implements Calculator<Plates.Asking, Plates.Drawn> {
    private static final NoticeKind NARROW = NoticeKind.stop("narrow");

    /** One plate. */
    public record Plate(
            @RowId String id,
            @Asked(example = "Plate") String name,

            @Asked(unit = "mm", min = "1 mm", max = "500 mm", example = "20 mm")
            Length width,

            @Asked(unit = "mm", min = "1 mm", max = "500 mm", example = "20 mm")
            Length height,

            @Asked(unit = "°", min = "0 °", max = "360 °", preset = "0 °")
            Angle turned) {}

    /** What is asked. */
    public record Asking(
            @Asked(example = "[{\"id\":\"a\",\"name\":\"A\",\"width\":\"20 mm\",\"height\":\"20 mm\"}]")
            List<Plate> plates,

            @Asked(example = "note") Optional<String> note) {}

    /** What is answered. */
    public record Drawn(@Answered Item item) {}

    @Override
    public Outcome<Drawn> calculate(Asking asked, Working working) {
        Item.Builder item = Item.builder();
        for (Plate plate : asked.plates()) {
            if (plate.width().mm() < 5) {
                return Outcome.refuse(NARROW.at("plates[" + plate.id() + "].width", plate.width()));
            }
            item.part(Part.of(
                            plate.id(),
                            plate.name(),
                            Path.rectangle(
                                    Role.CUT,
                                    Point.of(Math.toDegrees(plate.turned().radians()), 0),
                                    plate.width().mm(),
                                    plate.height().mm()))
                    .build());
        }
        return Outcome.of(new Drawn(item.build()));
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(NARROW);
    }
}
