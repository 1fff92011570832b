package org.hidewright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Region;

/**
 * What of a sheet is not in any of some regions, so that a part that may only lie on these avoids it. Regions that adjoin or overlap are
 * one: a part may lie across the line between them.
 */
final class Elsewhere {
    /** Slivers with less are left where two regions are drawn a hair apart, and no part is kept off them. */
    private static final double LEAST_MM2 = 1;

    /** How far it reaches beyond the sheet, so that nothing at its edge is missed. */
    private static final double BEYOND = 1;

    private Elsewhere() {}

    /** The sheet without the regions, in pieces without holes; the whole sheet where there are no regions. */
    static List<Curve> than(List<Curve> regions, Curve sheet) {
        Box box = sheet.bounds().grown(BEYOND);
        List<Region> rest = List.of(upright(box, box.minX(), box.maxX()));
        // a line up through each region parts every hole that regions make, so that none is left
        TreeSet<Double> lines = new TreeSet<>(List.of(box.minX(), box.maxX()));
        for (Curve drawn : regions) {
            Region region = Region.of(drawn);
            rest = rest.stream().flatMap(piece -> piece.minus(region).stream()).toList();
            double middle = (drawn.bounds().minX() + drawn.bounds().maxX()) / 2;
            lines.add(Math.min(box.maxX(), Math.max(box.minX(), middle)));
        }
        List<Curve> pieces = new ArrayList<>();
        for (Region piece : rest) {
            for (Double from : lines.headSet(lines.last())) {
                piece.common(upright(box, from, lines.higher(from))).stream()
                        .filter(strip -> strip.area() >= LEAST_MM2)
                        .map(Region::outline)
                        .forEach(pieces::add);
            }
        }
        return pieces;
    }

    private static Region upright(Box box, double from, double to) {
        return Region.of(Outlines.rectangle(Point.of(from, box.minY()), to - from, box.height()));
    }
}
