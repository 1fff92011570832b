package org.hidewright.layout;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.hidewright.layout.task.Outline;

/**
 * What of a sheet is not in any of some regions, so that a part that may only lie on these avoids it. Regions that adjoin or overlap are
 * one: a part may lie across the line between them.
 */
final class Elsewhere {
    /** Slivers with less are left where two regions are drawn a hair apart, and no part is kept off them. */
    private static final double LEAST_MM2 = 1;

    /** How far it reaches beyond the sheet, so that nothing at its edge is missed. */
    private static final double BEYOND = 1;

    private static final double GRID_MM = 1e-6;

    private Elsewhere() {}

    /** The sheet without the regions, in pieces without holes; the whole sheet where there are no regions. */
    static List<Outline> than(List<Outline> regions, Outline sheet) {
        Rectangle2D box = path(sheet).getBounds2D();
        box.setFrame(
                box.getX() - BEYOND, box.getY() - BEYOND, box.getWidth() + 2 * BEYOND, box.getHeight() + 2 * BEYOND);
        Area rest = new Area(box);
        // a line up through each region parts every hole that regions make, so that none is left
        TreeSet<Double> lines = new TreeSet<>();
        for (Outline region : regions) {
            Path2D path = path(region);
            rest.subtract(new Area(path));
            lines.add(Math.min(
                    box.getMaxX(), Math.max(box.getX(), path.getBounds2D().getCenterX())));
        }
        lines.add(box.getMaxX());
        List<Outline> pieces = new ArrayList<>();
        double from = box.getX();
        for (double to : lines) {
            Area strip = new Area(new Rectangle2D.Double(from, box.getY(), to - from, box.getHeight()));
            strip.intersect(rest);
            rings(strip, pieces);
            from = to;
        }
        return pieces;
    }

    private static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double();
        path.moveTo(outline.x(0), outline.y(0));
        for (int corner = 1; corner < outline.corners(); corner++) {
            path.lineTo(outline.x(corner), outline.y(corner));
        }
        path.closePath();
        return path;
    }

    private static void rings(Area area, List<Outline> pieces) {
        List<double[]> corners = new ArrayList<>();
        double[] corner = new double[2];
        for (PathIterator line = area.getPathIterator(null); !line.isDone(); line.next()) {
            if (line.currentSegment(corner) == PathIterator.SEG_CLOSE) {
                ring(corners, pieces);
                corners.clear();
            } else {
                corners.add(new double[] {snapped(corner[0]), snapped(corner[1])});
            }
        }
    }

    /** Where lines cross the same corner may come twice, its last digits apart. */
    private static double snapped(double mm) {
        return Math.rint(mm / GRID_MM) * GRID_MM;
    }

    private static void ring(List<double[]> corners, List<Outline> pieces) {
        if (corners.stream()
                        .map(corner -> corner[0] + " " + corner[1])
                        .distinct()
                        .count()
                < 3) {
            return;
        }
        Outline ring = new Outline(
                corners.stream().mapToDouble(corner -> corner[0]).toArray(),
                corners.stream().mapToDouble(corner -> corner[1]).toArray());
        if (ring.area() >= LEAST_MM2) {
            pieces.add(ring);
        }
    }
}
