package org.hidewright.layout.engine;

import org.hidewright.layout.task.Outline;

/**
 * The outline of a hide. What lies around it has poles as parts have, so that a part that leaves it is drawn back the shortest way: a
 * box about a hide would say nothing of its bays.
 */
final class HideEdge implements Ground {
    private static final int POLES_AROUND = 120;
    /** Tried on open instances: with less, parts are left reaching over the edge. */
    private static final double WEIGHT = 6;

    private final Turned edge;

    /**
     * @param extent by which depth off the hide is scaled: that of a part of middle size
     * @param margin how far parts may get beyond the box about the hide while they are moved
     */
    HideEdge(Outline outline, double extent, double margin) {
        Poles around = Poles.around(outline.xs(), outline.ys(), margin, POLES_AROUND);
        edge = new Form(outline.xs(), outline.ys(), around, extent, 0).listed[0];
    }

    @Override
    public double minX() {
        return edge.minX;
    }

    @Override
    public double minY() {
        return edge.minY;
    }

    @Override
    public double maxX() {
        return edge.maxX;
    }

    @Override
    public double maxY() {
        return edge.maxY;
    }

    @Override
    public double outside(Turned part, double x, double y) {
        boolean within = part.minX + x > edge.minX
                && part.maxX + x < edge.maxX
                && part.minY + y > edge.minY
                && part.maxY + y < edge.maxY
                && Rings.holds(edge.x, edge.y, edge.edges, part.x[0] + x, part.y[0] + y)
                && !Meeting.edgesCross(part, edge, -x, -y);
        return within ? 0 : WEIGHT * Meeting.depth(part, edge, -x, -y, Double.POSITIVE_INFINITY);
    }
}
