package org.hidewright.api.drawing;

import java.util.List;

/** An upright rectangle round some shapes, possibly without width or height. */
public final class Box extends Value {
    private final double minX;
    private final double minY;
    private final double maxX;
    private final double maxY;

    private Box(double minX, double minY, double maxX, double maxY) {
        this.minX = minX;
        this.minY = minY;
        this.maxX = maxX;
        this.maxY = maxY;
    }

    /** The smallest box round some places. */
    public static Box around(Point first, Point... more) {
        Box box = new Box(first.x(), first.y(), first.x(), first.y());
        for (Point point : more) {
            box = box.with(new Box(point.x(), point.y(), point.x(), point.y()));
        }
        return box;
    }

    /** The smallest box round this one and another. */
    public Box with(Box other) {
        return new Box(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** This box, larger by a margin on every side. */
    public Box grown(double marginMm) {
        return new Box(minX - marginMm, minY - marginMm, maxX + marginMm, maxY + marginMm);
    }

    /** The left edge, in millimetres. */
    public double minX() {
        return minX;
    }

    /** The lower edge, in millimetres. */
    public double minY() {
        return minY;
    }

    /** The right edge, in millimetres. */
    public double maxX() {
        return maxX;
    }

    /** The upper edge, in millimetres. */
    public double maxY() {
        return maxY;
    }

    /** From the left edge to the right, in millimetres. */
    public double width() {
        return maxX - minX;
    }

    /** From the lower edge to the upper, in millimetres. */
    public double height() {
        return maxY - minY;
    }

    @Override
    List<Object> parts() {
        return List.of(minX, minY, maxX, maxY);
    }
}
