package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Region;

/** Outlines of a layer that is glued inside another. */
public final class Lining {
    private Lining() {}

    /**
     * Smaller by a margin all round, as under turned edges.
     *
     * @throws NoRoom if nothing is left, or it falls apart
     */
    public static Curve inside(Piece outer, double margin) throws NoRoom {
        return one(Region.of(outer.outline()).shrunk(margin, Corner.ROUND), outer);
    }

    /**
     * Shorter across a straight fold, so that it lies smooth when the fold is closed; see
     * {@link Allowances#innerShorter}. A strip is taken out along the fold, half of it on either side, and what is right of the
     * fold, as one goes along it, is moved up.
     *
     * @throws NoRoom if the fold does not part the outline in two
     */
    public static Curve shorter(Piece outer, Curve outline, Point foldFrom, Point foldTo, double by) throws NoRoom {
        double along = foldFrom.directionTo(foldTo);
        double left = along + Math.PI / 2;
        Box box = outline.bounds();
        double reach = 2 * (box.width() + box.height()) + foldFrom.distanceTo(foldTo);
        Region all = Region.of(outline);
        List<Region> above = all.common(half(foldFrom.towards(left, by / 2), along, left, reach));
        List<Region> below = all.common(half(foldFrom.towards(left, -by / 2), along, left + Math.PI, reach));
        if (above.size() != 1 || below.size() != 1) {
            throw new NoRoom(outer.id(), "lining");
        }
        Point to = Point.of(0, 0).towards(left, by);
        return one(above.get(0).plus(below.get(0).moved(Motion.shift(to.x(), to.y()))), outer);
    }

    /** A square that stands on a line. */
    private static Region half(Point on, double along, double side, double reach) {
        Point one = on.towards(along, -reach);
        Point other = on.towards(along, reach);
        Curve square = Outlines.polygon(one, other, other.towards(side, reach), one.towards(side, reach));
        return Region.of(square.area() > 0 ? square : square.reversed());
    }

    private static Curve one(List<Region> regions, Piece outer) throws NoRoom {
        if (regions.size() != 1 || !regions.get(0).holes().isEmpty()) {
            throw new NoRoom(outer.id(), "lining");
        }
        return regions.get(0).outline();
    }
}
