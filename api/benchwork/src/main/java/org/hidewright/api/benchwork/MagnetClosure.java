package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;

/** A magnet whose prongs go through two slits and are bent over a washer. */
record MagnetClosure(double apart, double slit, double body) implements Closure {
    @Override
    public Fastened fasten(
            String id, String name, Piece top, Point onTop, double towardsEdge, Piece under, Point onUnder)
            throws NoRoom {
        slits(id, top, onTop, towardsEdge);
        slits(id, under, onUnder, towardsEdge);
        return Fastened.of(List.of());
    }

    private void slits(String id, Piece piece, Point middle, double towardsEdge) throws NoRoom {
        double wide = 1.2;
        for (int side : new int[] {-1, 1}) {
            Curve cut = Outlines.rectangle(middle.plus(side * apart / 2 - wide / 2, -slit / 2), wide, slit);
            piece.window(id + (side < 0 ? "-left" : "-right"), cut.moved(Motion.turn(middle, towardsEdge)));
        }
    }

    @Override
    public double leastToEnd() {
        return body / 2 + 3;
    }
}
