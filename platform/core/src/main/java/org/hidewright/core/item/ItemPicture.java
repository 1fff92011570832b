package org.hidewright.core.item;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;

/** All parts of an item side by side in rows, each with its name: to look at, not to cut by. */
public final class ItemPicture {
    private static final double LETTERS_MM = 2.6;

    private ItemPicture() {}

    public static Drawing of(Item item) {
        List<Motion> shifts = shifts(item);
        Drawing.Builder picture = Drawing.builder();
        List<PartInPlace> parts = parts(item, shifts);
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i).part();
            picture.all(parts.get(i).drawing());
            picture.all(SideBySide.shifted(name(part), shifts.get(i)));
        }
        CheckMark.addAll(
                picture,
                ItemChecks.of(item),
                check -> Optional.of(
                        shifts.get(item.parts().indexOf(check.part())).apply(check.place())));
        return picture.build();
    }

    /** Where it lies on no line; in the middle where there is no such place. */
    private static Drawing name(Part part) {
        Label name = PartLabel.roomiest(part, PartDrawing.of(part), part.name(), LETTERS_MM)
                .orElseGet(() -> Label.of(
                        part.name(), Region.of(Curve.of(part.outline())).roomiest(), Anchor.CENTRE, LETTERS_MM));
        return Drawing.of(List.of(name));
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
