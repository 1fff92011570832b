package org.hidewright.core.item;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.PartShape;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;

/** Sizes of holes where a part has several, each once beside a hole of it, so that nobody takes one punch for all. */
final class HoleSizes {
    private static final double LETTERS_MM = 2;
    private static final double GAP_MM = 0.8;
    /** Ways from a hole to where its size may stand, the first that is free. */
    private static final int[][] WAYS = {{0, 1}, {0, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {1, 0}, {-1, 0}};

    private HoleSizes() {}

    /**
     * The sizes, where they lie on nothing that is drawn; none where all holes are alike.
     *
     * @param drawing what is drawn on the part
     * @param size a diameter in words
     */
    static List<Label> of(Part part, Drawing drawing, Function<Hole, String> size) {
        Map<String, List<Hole>> bySize =
                part.holes().stream().collect(Collectors.groupingBy(size, LinkedHashMap::new, Collectors.toList()));
        List<Label> sizes = new ArrayList<>();
        if (bySize.size() > 1) {
            Ink ink = new Ink(drawing);
            Region finished = PartShape.finished(part);
            bySize.forEach((text, holes) -> holes.stream()
                    .flatMap(hole -> beside(hole, text, ink, finished).stream())
                    .findFirst()
                    .ifPresent(sizes::add));
        }
        return sizes;
    }

    private static Optional<Label> beside(Hole hole, String text, Ink ink, Region finished) {
        double halfX = Label.of(text, hole.centre(), Anchor.CENTRE, LETTERS_MM)
                        .bounds()
                        .width()
                / 2;
        double halfY = LETTERS_MM / 2;
        double clear = hole.diameter() / 2 + 2 * GAP_MM;
        for (int[] way : WAYS) {
            Point middle = hole.centre().plus(way[0] * (clear + halfX), way[1] * (clear + halfY));
            if (ink.isClear(middle, halfX + GAP_MM, halfY + GAP_MM) && finished.contains(middle)) {
                return Optional.of(Label.of(text, middle, Anchor.CENTRE, LETTERS_MM));
            }
        }
        return Optional.empty();
    }
}
