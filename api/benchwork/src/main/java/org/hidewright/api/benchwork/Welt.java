package org.hidewright.api.benchwork;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Parallel;

/** A strip laid between two panels along their seam: it keeps a blade off the stitches, or gives room for what is thick. */
public final class Welt {
    private Welt() {}

    /**
     * The strip inside a stretch of an outline: flush with its edge and so wide.
     *
     * @param outline counter-clockwise
     * @param from length along the outline where it begins
     * @param width at least the margin of the stitches and 3 mm beyond them (from memory)
     * @throws NoRoom if a strip so wide crosses itself there
     */
    public static Piece along(
            String id, String name, Curve outline, double from, double to, double width, double leather) throws NoRoom {
        Curve edge = outline.between(from, to);
        List<Curve> beside = Parallel.of(edge, width, Corner.ROUND);
        if (beside.size() != 1) {
            throw new NoRoom(id, "welt");
        }
        Curve inner = beside.get(0).reversed();
        List<Segment> segments = new ArrayList<>(edge.segments());
        segments.add(Segment.line(edge.end(), inner.start()));
        segments.addAll(inner.segments());
        segments.add(Segment.line(inner.end(), edge.start()));
        return Piece.of(id, name, Curve.closed(segments), leather);
    }
}
