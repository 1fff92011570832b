package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;

/** The shape of a part of an item: as finished, and as it is cut. */
public final class PartShape {
    private PartShape() {}

    /** The finished piece with its windows and slots, and its punched holes. */
    public static Region finished(Part part) {
        List<Curve> holes = new ArrayList<>();
        part.cutOuts().forEach(cutOut -> holes.add(Curve.of(cutOut)));
        for (Hole hole : part.holes()) {
            holes.add(Outlines.circle(hole.centre(), hole.diameter()));
        }
        return Region.of(Curve.of(part.outline()), holes);
    }

    /** The outline to cut: the finished one, or what is left standing outside it. */
    public static List<Curve> cutOutline(Part part) {
        Region outline = Region.of(Curve.of(part.outline()));
        return part.allowance() == 0
                ? List.of(outline.outline())
                : outline.grown(part.allowance(), Corner.POINTED).stream()
                        .map(Region::outline)
                        .toList();
    }

    /** Square millimetres of leather in one piece as it is cut, with what is left standing to be trimmed. */
    public static double cutArea(Part part) {
        return cutOutline(part).stream().mapToDouble(Curve::area).sum();
    }
}
