package org.hidewright.core.item;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;

/** A ring with a number where something is wrong. */
final class CheckMark {
    private static final double RING_MM = 7;
    private static final double LETTERS_MM = 3;
    private static final double BESIDE_MM = 4;

    private CheckMark() {}

    /**
     * The marks of checks, each with its number.
     *
     * @param place where a check is on this drawing; empty where it is on another
     */
    static void addAll(Drawing.Builder drawing, List<ItemCheck> checks, Function<ItemCheck, Optional<Point>> place) {
        for (int i = 0; i < checks.size(); i++) {
            String number = Integer.toString(i + 1);
            place.apply(checks.get(i)).ifPresent(at -> {
                drawing.add(Circle.of(Role.NOTE, at, RING_MM));
                drawing.label(number, at.plus(BESIDE_MM, BESIDE_MM), Anchor.BOTTOM_LEFT, LETTERS_MM);
            });
        }
    }
}
