package org.hidewright.api.geometry;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;

/**
 * Two pieces laid on each other. Their edges are cut where they cross; each part of an edge is inside the other piece,
 * outside, or along its edge, with the leather on the same side or not; the parts wanted are put together again. No edge
 * changes its kind: what was an arc is an arc.
 */
final class Overlay {
    private static final double ALONG_MM = 1e-6;

    private enum Lies {
        INSIDE,
        OUTSIDE,
        ALONG,
        AGAINST
    }

    private final List<Stretch> kept = new ArrayList<>();
    private final List<Stretch> ofFirst = new ArrayList<>();
    private final List<Stretch> ofSecond = new ArrayList<>();

    private Overlay(Region first, Region second) {
        List<Stretch> all = new ArrayList<>();
        first.edges().forEach(edge -> all.addAll(edge.stretches()));
        int ofFirstOnly = all.size();
        second.edges().forEach(edge -> all.addAll(edge.stretches()));
        List<List<Stretch>> pieces = Pieces.cutEach(all);
        pieces.subList(0, ofFirstOnly).forEach(ofFirst::addAll);
        pieces.subList(ofFirstOnly, pieces.size()).forEach(ofSecond::addAll);
    }

    private static double edgeDistance(Region region, Stretch piece) {
        return Math.max(region.edgeDistance(piece.at(0.5)), region.edgeDistance(piece.at(0.3)));
    }

    static List<Region> minus(Region one, Region other) {
        Overlay overlay = new Overlay(one, other);
        overlay.keep(overlay.ofFirst, other, false, Lies.OUTSIDE, Lies.AGAINST);
        overlay.keep(overlay.ofSecond, one, true, Lies.INSIDE);
        return overlay.regions();
    }

    static List<Region> plus(Region one, Region other) {
        Overlay overlay = new Overlay(one, other);
        overlay.keep(overlay.ofFirst, other, false, Lies.OUTSIDE, Lies.ALONG);
        overlay.keep(overlay.ofSecond, one, false, Lies.OUTSIDE);
        return overlay.regions();
    }

    static List<Region> common(Region one, Region other) {
        Overlay overlay = new Overlay(one, other);
        overlay.keep(overlay.ofFirst, other, false, Lies.INSIDE, Lies.ALONG);
        overlay.keep(overlay.ofSecond, one, false, Lies.INSIDE);
        return overlay.regions();
    }

    private void keep(List<Stretch> pieces, Region other, boolean reversed, Lies... wanted) {
        for (Stretch piece : pieces) {
            if (List.of(wanted).contains(lies(piece, other))) {
                kept.add(reversed ? piece.reversed() : piece);
            }
        }
    }

    private static Lies lies(Stretch piece, Region other) {
        Point middle = piece.at(0.5);
        if (edgeDistance(other, piece) >= ALONG_MM) {
            return other.contains(middle) ? Lies.INSIDE : Lies.OUTSIDE;
        }
        double direction = Sides.nearest(other.edges(), middle).nearest(middle).direction();
        return Math.cos(direction - piece.tangent(0.5).angle()) > 0 ? Lies.ALONG : Lies.AGAINST;
    }

    private List<Region> regions() {
        return Region.sorted(Pieces.rings(kept));
    }
}
