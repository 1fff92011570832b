package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.ItemWords;
import org.hidewright.core.wording.Said;

/**
 * Something wrong with an item.
 *
 * @param part where it is
 * @param place on that part’s drawing
 * @param args of its texts, after the number of its mark and the name of the part
 */
public record ItemCheck(NoticeKind kind, Part part, Point place, List<Object> args) {
    /**
     * What lies on a part, in a text that calls it by its name.
     *
     * @param part empty where the text has named the part
     */
    private record Lies(Optional<Part> part, String id) {
        Object in(ItemWords words) {
            Said name = words.nameOn(id);
            return part.<Object>map(on -> Phrase.of("item-on", words.nameOf(on), name))
                    .orElse(name);
        }
    }

    /** A hole, line or fold of the part that the check is of. */
    static Object on(String id) {
        return new Lies(Optional.empty(), id);
    }

    /** A line, with its part. */
    static Object on(Part part, String id) {
        return new Lies(Optional.of(part), id);
    }

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
        args.forEach(arg -> all.add(
                arg instanceof Lies lies ? lies.in(words) : arg instanceof Seam seam ? words.nameOf(seam) : arg));
        return kind.with(all.toArray());
    }
}
