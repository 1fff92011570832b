package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Fitting;

/** A magnet and what it holds to, bought together, whose prongs go through two slits and are bent over a washer. */
record MagnetClosure(double apart, double slit, double body) implements Closure {
    /** How wide a slit is cut: the prong is thin sheet. */
    private static final double SLIT_MM = 1.2;

    @Override
    public Fastened fasten(
            String id, String name, Piece top, Point onTop, double towardsEdge, Piece under, Point onUnder)
            throws NoRoom {
        slits(id, top, onTop, towardsEdge);
        slits(id, under, onUnder, towardsEdge);
        return Fastened.of(List.of(Fitting.of(id, name, List.of())));
    }

    private void slits(String id, Piece piece, Point middle, double towardsEdge) throws NoRoom {
        for (int side : new int[] {-1, 1}) {
            Curve cut = Outlines.rectangle(middle.plus(side * apart / 2 - SLIT_MM / 2, -slit / 2), SLIT_MM, slit);
            piece.window(id + (side < 0 ? "-left" : "-right"), cut.moved(Motion.turn(middle, towardsEdge)));
        }
    }

    @Override
    public double leastToEnd() {
        return Math.max(body, Math.max(apart + SLIT_MM, slit)) / 2 + 3;
    }
}
