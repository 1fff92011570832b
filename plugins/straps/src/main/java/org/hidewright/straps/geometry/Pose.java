package org.hidewright.straps.geometry;

/**
 * A place on the grain face of the folded strap seen from the side, and the direction in which the strap runs on.
 *
 * @param x millimetres to the right
 * @param y millimetres up
 * @param heading radians from the x axis, counter-clockwise; the grain looks to the left of it, the flesh to the right
 */
public record Pose(double x, double y, double heading) {
    /** The start of every strap: it runs to the right, grain up. */
    public static final Pose START = new Pose(0, 0, 0);

    /** Further along the heading. */
    public Pose ahead(double mm) {
        return new Pose(x + mm * Math.cos(heading), y + mm * Math.sin(heading), heading);
    }

    /** Beside, square to the heading, on the grain side where positive. */
    public Pose towardsGrain(double mm) {
        return new Pose(x - mm * Math.sin(heading), y + mm * Math.cos(heading), heading);
    }

    /** The same place with another heading. */
    public Pose turned(double radians) {
        return new Pose(x, y, heading + radians);
    }

    /** How far another place lies along this heading. */
    public double along(Pose other) {
        return (other.x - x) * Math.cos(heading) + (other.y - y) * Math.sin(heading);
    }

    /** How far another place lies on the grain side of this heading. */
    public double beside(Pose other) {
        return (other.y - y) * Math.cos(heading) - (other.x - x) * Math.sin(heading);
    }

    public double distanceTo(Pose other) {
        return Math.hypot(other.x - x, other.y - y);
    }
}
