package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;

/** Parts to cut by: in true size, with what the maker must know of each written on it. */
public final class PartPattern {
    private PartPattern() {}

    /**
     * What is written on a part.
     *
     * @param lines what it is and how often it is cut, at least one line
     * @param size how large a hole is, in words; seen beside holes where a part has several sizes
     */
    public record Words(List<String> lines, Function<Hole, String> size) {
        public Words {
            lines = List.copyOf(lines);
        }
    }

    /**
     * The part as it lies on its own drawing.
     *
     * @param words what is written on it
     */
    public static Drawing of(Part part, Words words) {
        Drawing lines = PartDrawing.of(part);
        Drawing.Builder sized = Drawing.builder().all(lines);
        HoleSizes.of(part, lines, words.size()).forEach(sized::add);
        Drawing drawing = sized.build();
        return Drawing.builder()
                .all(drawing)
                .all(PartLabel.of(part, drawing, words.lines()))
                .build();
    }

    /**
     * A part with marks where something is wrong with it.
     *
     * @param checks those of the whole item, numbered by their place among all
     */
    public static Drawing marked(Part part, List<ItemCheck> checks, Words words) {
        Drawing.Builder drawing = Drawing.builder().all(of(part, words));
        CheckMark.addAll(
                drawing,
                checks,
                check -> Optional.of(check.place()).filter(place -> check.part().equals(part)));
        return drawing.build();
    }

    /** The part turned over, as its mate of the other side is cut: left becomes right. */
    public static Drawing turnedOver(Part part, Words words) {
        Box box = part.outline().bounds();
        double middle = (box.minX() + box.maxX()) / 2;
        return of(TurnedOver.of(part, Motion.mirror(Point.of(middle, 0), Point.of(middle, 1))), words);
    }

    /** Drawings shifted so that none lies on another, in the order they are given. */
    public static List<Drawing> sideBySide(List<Drawing> drawings) {
        List<Motion> shifts = SideBySide.shifts(drawings);
        List<Drawing> laid = new ArrayList<>();
        for (int i = 0; i < drawings.size(); i++) {
            laid.add(SideBySide.shifted(drawings.get(i), shifts.get(i)));
        }
        return List.copyOf(laid);
    }
}
