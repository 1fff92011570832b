package org.hidewright.core.item;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;

/**
 * All parts of an item side by side in rows, each with its name: to look at, not to cut by. A name lies on its part where it
 * has room as large as it is seen there, and under it where it has none.
 */
public final class ItemPicture {
    private static final double LETTERS_MM = 2.6;
    /** What a picture has on a page; a larger one is made smaller, and its letters are not. */
    private static final double PAGE_WIDTH_MM = 170;

    private static final double PAGE_HEIGHT_MM = 90;

    private final Drawing drawing;
    private final List<PartInPlace> parts;

    private ItemPicture(Item item) {
        List<Drawing> drawn = item.parts().stream().map(PartDrawing::of).toList();
        List<Label> names = names(item, drawn);
        List<Motion> shifts = SideBySide.shifts(withNames(drawn, names));
        this.parts = IntStream.range(0, shifts.size())
                .mapToObj(i -> new PartInPlace(item.parts().get(i), SideBySide.shifted(drawn.get(i), shifts.get(i))))
                .toList();
        Drawing.Builder picture = Drawing.builder();
        for (int i = 0; i < parts.size(); i++) {
            picture.all(parts.get(i).drawing());
            picture.all(SideBySide.shifted(Drawing.of(List.of(onPaper(names.get(i)))), shifts.get(i)));
        }
        CheckMark.addAll(
                picture,
                ItemChecks.of(item),
                check -> Optional.of(
                        shifts.get(item.parts().indexOf(check.part())).apply(check.place())));
        this.drawing = picture.build();
    }

    public static ItemPicture of(Item item) {
        return new ItemPicture(item);
    }

    /** The whole picture. */
    public Drawing drawing() {
        return drawing;
    }

    /** The parts where they lie on it, in the order of the item. */
    public List<PartInPlace> parts() {
        return parts;
    }

    /** A name for each part, as high as its letters are beside the part where the picture is seen. */
    private static List<Label> names(Item item, List<Drawing> drawn) {
        double letters = seen(drawn);
        List<Label> names = named(item, drawn, letters);
        double higher =
                seen(withNames(drawn, names)); // names below their parts make it larger, so that it is seen smaller
        return higher > letters ? named(item, drawn, higher) : names;
    }

    /** How high letters are on these drawings side by side, made as large as a page has them. */
    private static double seen(List<Drawing> drawings) {
        List<Motion> shifts = SideBySide.shifts(drawings);
        Box all = IntStream.range(0, drawings.size())
                .mapToObj(
                        i -> SideBySide.shifted(drawings.get(i), shifts.get(i)).bounds())
                .reduce(Box::with)
                .orElseThrow();
        return LETTERS_MM * Math.max(1, Math.max(all.width() / PAGE_WIDTH_MM, all.height() / PAGE_HEIGHT_MM));
    }

    private static List<Label> named(Item item, List<Drawing> drawn, double letters) {
        return IntStream.range(0, drawn.size())
                .mapToObj(i -> name(item.parts().get(i), drawn.get(i), letters))
                .toList();
    }

    private static Label name(Part part, Drawing drawn, double letters) {
        return PartLabel.roomiest(part, drawn, part.name(), letters).orElseGet(() -> {
            Box box = drawn.bounds();
            Point below = Point.of((box.minX() + box.maxX()) / 2, box.minY());
            return Label.of(part.name(), below, Anchor.TOP, letters);
        });
    }

    /** Letters keep their height on paper, however small the parts are there. */
    private static Label onPaper(Label name) {
        return Label.of(name.text(), name.at(), name.anchor(), LETTERS_MM).turned(name.turn());
    }

    private static List<Drawing> withNames(List<Drawing> drawn, List<Label> names) {
        return IntStream.range(0, drawn.size())
                .mapToObj(i ->
                        Drawing.builder().all(drawn.get(i)).add(names.get(i)).build())
                .toList();
    }
}
