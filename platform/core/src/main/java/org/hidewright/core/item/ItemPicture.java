package org.hidewright.core.item;

import java.util.List;
import java.util.Optional;
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
        List<Drawing> drawings = item.parts().stream().map(PartDrawing::of).toList();
        List<Motion> shifts = SideBySide.shifts(drawings);
        Drawing.Builder picture = Drawing.builder();
        for (int i = 0; i < drawings.size(); i++) {
            picture.all(SideBySide.shifted(drawings.get(i), shifts.get(i)));
            Part part = item.parts().get(i);
            picture.add(Label.of(
                    part.name(),
                    shifts.get(i).apply(Region.of(Curve.of(part.outline())).roomiest()),
                    Anchor.CENTRE,
                    LETTERS_MM));
        }
        CheckMark.addAll(
                picture,
                ItemChecks.of(item),
                check -> Optional.of(
                        shifts.get(item.parts().indexOf(check.part())).apply(check.place())));
        return picture.build();
    }
}
