package org.hidewright.api.benchwork;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.OnPart;

/** A buckle that a tab holds on what lies under, and holes for its prong in the strap end that lies on top. */
record BuckleClosure(RingTab tab, double towards, double pitch, int holes, double spacing, double hole)
        implements Closure {
    /** From the last hole to the end, so that it can be pulled tight and tucked under a keeper: common practice. */
    private static final double TIP_MM = 25;

    /** From the box of stitches to the end of the tab: common practice. */
    private static final double MARGIN_MM = 3;

    BuckleClosure {
        if (holes < 1) {
            throw new IllegalArgumentException("a buckle needs a hole for its prong");
        }
    }

    @Override
    public Fastened fasten(
            String id, String name, Piece top, Point onTop, double towardsEdge, Piece under, Point onUnder)
            throws NoRoom {
        if (holes > 1 && spacing < 2 * hole) {
            throw new NoRoom(top.id(), id);
        }
        List<OnPart> row = new ArrayList<>();
        for (int i = 0; i < holes; i++) {
            double beyond = (i - (holes - 1) / 2.0) * spacing;
            row.add(top.hole(id + "-" + (i + 1), onTop.towards(towardsEdge, beyond), hole));
        }
        return Fastened.of(
                List.of(Fitting.of(id, name, row)),
                List.of(tab.sewn(under, onUnder, towards, MARGIN_MM, pitch)),
                List.of(tab.strip()));
    }

    @Override
    public double leastToEnd() {
        return (holes - 1) / 2.0 * spacing + TIP_MM;
    }
}
