package org.hidewright.api.benchwork;

import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;

/**
 * Outlines of panels that are sewn round a thing, from 0, 0 at the lower left of their box. They begin at the upper left corner
 * and go down, along the bottom and up, so that the seam of three sides is one stretch from 0 to {@link #seam}.
 */
public final class Panels {
    private Panels() {}

    /**
     * Open at the top.
     *
     * @param radius of the two lower corners, at most half the width and the height
     */
    public static Curve upright(double width, double height, double radius) {
        return close(bottom(width, height, radius), width, height, 0, 0);
    }

    /**
     * With a flap of the same width above it.
     *
     * @param radius of the two lower corners
     * @param flap how far it reaches above the height
     * @param flapRadius of the flap’s corners, at most half the width and the flap
     */
    public static Curve flapped(double width, double height, double radius, double flap, double flapRadius) {
        return close(bottom(width, height, radius), width, height, flap, flapRadius);
    }

    /** Length along the outline from the upper left corner down, along the bottom and up to the upper right. */
    public static double seam(double width, double height, double radius) {
        return 2 * height + width - 4 * radius + Math.PI * radius;
    }

    private static Path.Builder bottom(double width, double height, double radius) {
        Path.Builder path = Path.from(Point.of(0, height));
        down(path, 0, radius, height);
        if (radius > 0) {
            path.arcAround(Point.of(radius, radius), Math.PI / 2);
        }
        if (width > 2 * radius + Flush.MM) {
            path.lineTo(width - radius, 0);
        }
        if (radius > 0) {
            path.arcAround(Point.of(width - radius, radius), Math.PI / 2);
        }
        down(path, width, height, radius);
        return path;
    }

    private static void down(Path.Builder path, double x, double y, double from) {
        if (Math.abs(from - y) > Flush.MM) {
            path.lineTo(x, y);
        }
    }

    private static Curve close(Path.Builder path, double width, double height, double flap, double radius) {
        if (flap > 0) {
            double top = height + flap;
            path.lineTo(width, top - radius);
            if (radius > 0) {
                path.arcAround(Point.of(width - radius, top - radius), Math.PI / 2);
            }
            if (width > 2 * radius + Flush.MM) {
                path.lineTo(radius, top);
            }
            if (radius > 0) {
                path.arcAround(Point.of(radius, top - radius), Math.PI / 2);
            }
        }
        return Curve.of(path.closed(Role.CUT));
    }
}
