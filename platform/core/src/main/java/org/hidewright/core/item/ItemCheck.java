package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.ItemWords;

/**
 * Something wrong with an item.
 *
 * @param part where it is
 * @param place on that part’s drawing
 * @param args of its texts, after the number of its mark and the name of the part
 */
public record ItemCheck(NoticeKind kind, Part part, Point place, List<Object> args) {
    static ItemCheck of(NoticeKind kind, Part part, Point place, Object... args) {
        return new ItemCheck(kind, part, place, List.of(args));
    }

    /** As it is told: the first arguments are its number, the part, and how far right and up the place is. */
    public Notice notice(int number, ItemWords words) {
        List<Object> all = new ArrayList<>(List.of(
                number,
                words.nameOf(part),
                Length.ofMm(place.x() - part.outline().bounds().minX()),
                Length.ofMm(place.y() - part.outline().bounds().minY())));
        all.addAll(args);
        return kind.with(all.toArray());
    }
}
