package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.OnPart;

/** A snap: its cap and socket on top, its stud under. */
record SnapClosure(double top, double under, double cap) implements Closure {
    @Override
    public Fastened fasten(
            String id, String name, Piece over, Point onTop, double towardsEdge, Piece below, Point onUnder)
            throws NoRoom {
        OnPart hole = over.hole(id, onTop, top);
        return Fastened.of(List.of(Fitting.of(id, name, List.of(hole, below.hole(id, onUnder, under)))));
    }

    @Override
    public double leastToEnd() {
        return Math.max(cap / 2 + 3, 2 * top);
    }
}
