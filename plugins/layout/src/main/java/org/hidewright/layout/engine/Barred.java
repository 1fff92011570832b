package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Zone;

/** A sheet with its holes, and its zones of poorer leather, which bar those parts that ask for better. */
final class Barred extends GroundWithin {
    private static final double WEIGHT = 2;
    /** The kind of holes, which every part avoids. */
    private static final long HOLE = 1L << Zone.MOST + 1;

    private final List<Turned> barriers = new ArrayList<>();

    private Barred(Ground whole) {
        super(whole);
    }

    /**
     * @param extent by which depth off the sheet is scaled: that of a part of middle size
     * @param margin how far parts may get beyond the box about the sheet while they are moved
     */
    static Ground of(Sheet sheet, double extent, double margin) {
        Ground whole = Rectangle.of(sheet.outline())
                .<Ground>map(panel -> panel)
                .orElseGet(() -> new HideEdge(sheet.outline(), extent, margin));
        if (sheet.holes().isEmpty() && sheet.zones().isEmpty()) {
            return whole;
        }
        Barred barred = new Barred(whole);
        for (Outline hole : sheet.holes()) {
            barred.barriers.add(barrier(hole, extent, HOLE));
        }
        for (Zone zone : sheet.zones()) {
            barred.barriers.add(barrier(zone.outline(), extent, 1L << zone.kind()));
        }
        return barred;
    }

    private static Turned barrier(Outline outline, double extent, long kind) {
        Poles poles = Poles.within(outline.xs(), outline.ys());
        return new Form(outline.xs(), outline.ys(), poles, extent, kind).listed[0];
    }

    @Override
    public double outside(Turned part, double x, double y) {
        double sum = whole.outside(part, x, y);
        for (int index = 0; index < barriers.size(); index++) {
            Turned barrier = barriers.get(index);
            if (((part.form.avoids | HOLE) & barrier.form.avoids) != 0) {
                sum += within(part, barrier, x, y);
            }
            for (Turned inner : part.inner) {
                if ((inner.form.avoids & barrier.form.avoids) != 0) {
                    sum += within(inner, barrier, x, y);
                }
            }
        }
        return sum;
    }

    private static double within(Turned part, Turned barrier, double x, double y) {
        boolean near = part.minX + x <= barrier.maxX
                && part.maxX + x >= barrier.minX
                && part.minY + y <= barrier.maxY
                && part.maxY + y >= barrier.minY;
        return near && Meeting.overlaps(part, barrier, -x, -y)
                ? WEIGHT * Meeting.depth(part, barrier, -x, -y, Double.POSITIVE_INFINITY)
                : 0;
    }
}
