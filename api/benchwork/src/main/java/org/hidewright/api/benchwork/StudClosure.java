package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.OnPart;

/** A stud on what lies under; the top has a hole for its neck and a slit towards the end, which its head passes. */
record StudClosure(double post, double neck, double slit) implements Closure {
    @Override
    public Fastened fasten(
            String id, String name, Piece top, Point onTop, double towardsEdge, Piece under, Point onUnder)
            throws NoRoom {
        OnPart hole = top.hole(id, onTop, neck);
        // as wide as a knife: a slit has no width, a window must have some
        double knife = 0.4;
        double from = neck / 2 - knife;
        Curve cut = Outlines.rectangle(onTop.plus(from, -knife / 2), slit - from, knife);
        top.window(id + "-slit", cut.moved(Motion.turn(onTop, towardsEdge)));
        return Fastened.of(List.of(Fitting.of(id, name, List.of(hole, under.hole(id, onUnder, post)))));
    }

    @Override
    public double leastToEnd() {
        return slit + 2 * neck;
    }
}
