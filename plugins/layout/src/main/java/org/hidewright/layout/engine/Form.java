package org.hidewright.layout.engine;

import org.hidewright.layout.task.Turning;

/**
 * What the engine knows of one kind of part before it lies anywhere: its ring of corners about a point of reference,
 * its poles (circles within it that stand for it where depth of overlap is asked), and what they are scaled by.
 *
 * <p>Poles, depth and scale follow Gardeyn and Wauters, arXiv 2509.13329, sections on the quantification of collisions.
 */
final class Form {
    final double[] x;
    final double[] y;
    final double area;
    final double hullArea;
    final double diameter;

    /** The fourth root of the hull's area: of two parts the product scales their depth. */
    final double extent;

    /** The least of width and height of the box about it as drawn: what steps of the search are measured by. */
    final double least;

    final double[] poleX;
    final double[] poleY;
    final double[] poleRadius;
    final Turning turning;

    /** Its shape at each single angle, or nothing where it turns freely. */
    final Turned[] listed;

    /** Where the point of reference lies in the coordinates it was drawn in. */
    final double referenceX;

    final double referenceY;

    /**
     * @param ringX corners without the first repeated
     * @param turning the angles it may lie at
     */
    Form(double[] ringX, double[] ringY, Turning turning) {
        double signed = Rings.area(ringX, ringY);
        boolean clockwise = signed < 0;
        this.area = Math.abs(signed);
        this.turning = turning;
        double[] centre = Rings.centroid(ringX, ringY);
        this.referenceX = centre[0];
        this.referenceY = centre[1];
        int corners = ringX.length;
        this.x = new double[corners];
        this.y = new double[corners];
        for (int corner = 0; corner < corners; corner++) {
            int from = clockwise ? corners - 1 - corner : corner;
            x[corner] = ringX[from] - referenceX;
            y[corner] = ringY[from] - referenceY;
        }
        double[][] hull = Rings.hull(x, y);
        this.hullArea = Math.abs(Rings.area(hull[0], hull[1]));
        this.extent = Math.sqrt(Math.sqrt(hullArea));
        this.diameter = Rings.diameter(hull[0], hull[1]);
        this.least = Rings.leastExtent(x, y);
        Poles poles = Poles.within(x, y);
        this.poleX = poles.x();
        this.poleY = poles.y();
        this.poleRadius = poles.radius();
        if (turning.stepwise()) {
            listed = new Turned[turning.windows()];
            for (int step = 0; step < listed.length; step++) {
                listed[step] = new Turned(this);
                listed[step].turn(turning.from(step));
            }
        } else {
            listed = new Turned[0];
        }
    }
}
