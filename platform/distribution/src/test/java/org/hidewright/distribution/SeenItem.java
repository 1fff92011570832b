package org.hidewright.distribution;

import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;

/**
 * Looks at an item with nothing but the JDK’s own two-dimensional geometry, whose curves are parted into short lines: whether
 * outlines cross themselves, holes and stitches lie on the leather and keep their margins, and mates have as many holes.
 */
final class SeenItem {
    /** Stitch holes to the edge: common practice. */
    private static final double STITCH_EDGE = 2.4;
    /** Leather beside a hole, at least: one diameter; common practice is two to its middle. */
    private static final double BESIDE = 0.95;

    private static final double FLAT = 0.01;

    private SeenItem() {}

    static List<String> wrong(Item item) {
        List<String> wrong = new ArrayList<>();
        for (Part part : item.parts()) {
            Path2D outline = path(part.outline());
            List<Line2D> edge = lines(outline);
            if (crosses(edge)) {
                wrong.add(part.id() + " crosses itself");
            }
            for (Hole hole : part.holes()) {
                double beside = distance(edge, hole.centre());
                if (!outline.contains(hole.centre().x(), hole.centre().y())
                        || beside < hole.diameter() * (0.5 + BESIDE)) {
                    wrong.add(part.id() + " hole " + hole.id().replaceAll("[0-9]+", "") + " near the edge");
                }
            }
            for (Path window : part.cutOuts()) {
                Area left = new Area(path(window));
                left.subtract(new Area(outline));
                if (!left.isEmpty() && size(left) > 0.1) {
                    wrong.add(part.id() + " window over the edge");
                }
            }
            for (StitchLine line : part.stitchLines()) {
                for (Point hole : line.holes()) {
                    if (!outline.contains(hole.x(), hole.y()) || distance(edge, hole) < STITCH_EDGE) {
                        wrong.add(part.id() + " stitches " + line.id().replaceAll("[0-9]+", "") + " near the edge");
                        break;
                    }
                }
                if (line.holes().size() < 2) {
                    wrong.add(part.id() + " one stitch in " + line.id());
                }
            }
        }
        for (Seam seam : item.seams()) {
            long counts =
                    seam.lines().stream().map(on -> holes(item, on)).distinct().count();
            if (counts > 1) {
                wrong.add("seam " + seam.id().replaceAll("[0-9]+", "") + " has unequal holes");
            }
        }
        return wrong.stream().distinct().toList();
    }

    private static int holes(Item item, OnPart on) {
        return item.parts().stream()
                .filter(part -> part.id().equals(on.part()))
                .flatMap(part -> part.stitchLines().stream())
                .filter(line -> line.id().equals(on.id()))
                .findFirst()
                .orElseThrow()
                .holes()
                .size();
    }

    private static Path2D path(Path path) {
        Path2D shape = new Path2D.Double();
        Point start = path.segments().get(0).start();
        shape.moveTo(start.x(), start.y());
        for (Segment segment : path.segments()) {
            if (segment instanceof Segment.Arc arc) {
                double r = arc.radius();
                // the JDK counts angles with y running down
                shape.append(
                        new Arc2D.Double(
                                arc.centre().x() - r,
                                arc.centre().y() - r,
                                2 * r,
                                2 * r,
                                -Math.toDegrees(arc.startAngle()),
                                -Math.toDegrees(arc.sweep()),
                                Arc2D.OPEN),
                        true);
            } else if (segment instanceof Segment.Cubic cubic) {
                shape.curveTo(
                        cubic.control1().x(),
                        cubic.control1().y(),
                        cubic.control2().x(),
                        cubic.control2().y(),
                        cubic.end().x(),
                        cubic.end().y());
            } else {
                shape.lineTo(segment.end().x(), segment.end().y());
            }
        }
        shape.closePath();
        return shape;
    }

    private static List<Line2D> lines(Path2D shape) {
        List<Line2D> lines = new ArrayList<>();
        double[] at = new double[6];
        Point2D last = null;
        Point2D first = null;
        for (PathIterator i = shape.getPathIterator(null, FLAT); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            Point2D here = kind == PathIterator.SEG_CLOSE ? first : new Point2D.Double(at[0], at[1]);
            if (kind == PathIterator.SEG_MOVETO) {
                first = here;
            } else if (last.distance(here) > 1e-9) {
                lines.add(new Line2D.Double(last, here));
            }
            last = here;
        }
        return lines;
    }

    private static boolean crosses(List<Line2D> edge) {
        for (int i = 0; i < edge.size(); i++) {
            for (int j = i + 2; j < edge.size(); j++) {
                boolean neighbours = i == 0 && j == edge.size() - 1;
                if (!neighbours && edge.get(i).intersectsLine(edge.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double distance(List<Line2D> edge, Point place) {
        return edge.stream()
                .mapToDouble(line -> line.ptSegDist(place.x(), place.y()))
                .min()
                .orElse(0);
    }

    private static double size(Area area) {
        return area.getBounds2D().getWidth() * area.getBounds2D().getHeight();
    }
}
