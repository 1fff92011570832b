package org.hidewright.core.item;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;

/** All parts of an item side by side in rows, each with its name: to look at, not to cut by. */
public final class ItemPicture {
    private static final double LETTERS_MM = 2.6;
    private static final double TALL = 2;
    /** Sine of an angle up to which two lines seem to run the same way. */
    private static final double ALIKE = 0.2;
    /** Share of a part between an arrow and the name beside it. */
    private static final double GAP = 0.04;

    private ItemPicture() {}

    public static Drawing of(Item item) {
        List<Motion> shifts = shifts(item);
        Drawing.Builder picture = Drawing.builder();
        List<PartInPlace> parts = parts(item, shifts);
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i).part();
            picture.all(parts.get(i).drawing());
            picture.add(name(
                    part,
                    parts.get(i).drawing().bounds(),
                    shifts.get(i).apply(Region.of(Curve.of(part.outline())).roomiest())));
        }
        CheckMark.addAll(
                picture,
                ItemChecks.of(item),
                check -> Optional.of(
                        shifts.get(item.parts().indexOf(check.part())).apply(check.place())));
        return picture.build();
    }

    /** Along a narrow part, which has room for it there; beside an arrow that runs the same way. */
    private static Label name(Part part, Box box, Point at) {
        boolean tall = box.height() > TALL * box.width();
        double turn = tall ? Math.PI / 2 : 0;
        boolean onArrow = part.direction().isPresent()
                && Math.abs(Math.sin(part.direction().getAsDouble() - turn)) < ALIKE;
        if (!onArrow) {
            return Label.of(part.name(), at, Anchor.CENTRE, LETTERS_MM).turned(turn);
        }
        Point beside = tall ? at.plus(GAP * box.width(), 0) : at.plus(0, -GAP * box.height());
        return Label.of(part.name(), beside, Anchor.TOP, LETTERS_MM).turned(turn);
    }

    /** The parts where they lie on that picture, in the order of the item. */
    public static List<PartInPlace> parts(Item item) {
        return parts(item, shifts(item));
    }

    private static List<Motion> shifts(Item item) {
        return SideBySide.shifts(item.parts().stream().map(PartDrawing::of).toList());
    }

    private static List<PartInPlace> parts(Item item, List<Motion> shifts) {
        return IntStream.range(0, shifts.size())
                .mapToObj(i -> new PartInPlace(
                        item.parts().get(i),
                        SideBySide.shifted(PartDrawing.of(item.parts().get(i)), shifts.get(i))))
                .toList();
    }
}
