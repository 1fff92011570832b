package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.List;
import org.hidewright.layout.task.Inner;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Turning;

/**
 * What the engine knows of one kind of part before it lies anywhere: its ring of corners about a point of reference,
 * its poles (circles within it that stand for it where depth of overlap is asked), and what they are scaled by.
 *
 * <p>Poles, depth and scale follow Gardeyn and Wauters, arXiv 2509.13329, sections on the quantification of collisions.
 */
final class Form {
    /** By how much of its area a part may grow for the sake of fewer corners. */
    private static final double GROWN = 0.001;

    /** With no more corners a part is quick enough as it is. */
    private static final int FEW_CORNERS = 32;

    final double[] x;
    final double[] y;
    final double area;
    final double hullArea;
    final double diameter;

    /** The fourth root of the hull's area: of two parts the product scales their depth. */
    final double extent;

    /** The least of width and height of the box about it as drawn: what steps of the search are measured by. */
    final double least;

    /** Which way its longest edge runs as drawn, in radians. */
    final double longestEdge;

    final double[] poleX;
    final double[] poleY;
    final double[] poleRadius;
    final Turning turning;
    final EdgeAngles angles;

    /** Its shape at each single angle, or nothing where it turns freely. */
    final Turned[] listed;

    /** Where the point of reference lies in the coordinates it was drawn in. */
    final double referenceX;

    final double referenceY;

    /** At its full size: a search works with parts a little smaller where they may touch. */
    final Form whole;

    /** The kinds of places it may not lie on, a bit for each; of such a place, its own kind. */
    final long avoids;

    /** Places within it that avoid more, about the same point of reference. */
    final Form[] inner;

    /**
     * @param ringX corners without the first repeated
     * @param turning the angles it may lie at
     */
    Form(double[] ringX, double[] ringY, Turning turning) {
        this(ringX, ringY, turning, Piece.ALL, List.of());
    }

    Form(double[] ringX, double[] ringY, Turning turning, long avoids, List<Inner> inner) {
        this(ringX, ringY, turning, avoids, inner, Rings.centroid(ringX, ringY));
    }

    private Form(double[] ringX, double[] ringY, Turning turning, long avoids, List<Inner> places, double[] centre) {
        this.referenceX = centre[0];
        this.referenceY = centre[1];
        this.inner = places.stream()
                .map(place -> new Form(
                        place.outline().xs(), place.outline().ys(), turning, place.avoids(), List.of(), centre))
                .toArray(Form[]::new);
        double[][] about = about(centre[0], centre[1], ringX, ringY);
        double[][] simpler = ringX.length <= FEW_CORNERS ? about : Outward.of(about[0], about[1], GROWN);
        this.x = simpler[0];
        this.y = simpler[1];
        this.area = Math.abs(Rings.area(ringX, ringY));
        this.whole = this;
        this.turning = turning;
        this.avoids = avoids;
        double[][] hull = Rings.hull(x, y);
        this.angles = new EdgeAngles(turning, x, y);
        this.hullArea = Math.abs(Rings.area(hull[0], hull[1]));
        this.extent = Math.sqrt(Math.sqrt(hullArea));
        this.diameter = Rings.diameter(hull[0], hull[1]);
        this.least = Rings.leastExtent(x, y);
        this.longestEdge = Rings.longestEdge(x, y);
        Poles poles = Poles.within(x, y);
        this.poleX = poles.x();
        this.poleY = poles.y();
        this.poleRadius = poles.radius();
        this.listed = listed();
    }

    /**
     * What parts may not lie on, where it is. It has neither diameter nor size of its own, so that the depth of a part in it is
     * measured by the part.
     *
     * @param poles what stands for it
     * @param extent by which depth in it is scaled
     * @param kind the bit of its kind
     */
    Form(double[] ringX, double[] ringY, Poles poles, double extent, long kind) {
        this.inner = new Form[0];
        this.referenceX = 0;
        this.referenceY = 0;
        double[][] about = about(0, 0, ringX, ringY);
        this.x = about[0];
        this.y = about[1];
        this.area = Math.abs(Rings.area(ringX, ringY));
        this.turning = Turning.steps(List.of(0.0));
        this.angles = new EdgeAngles(turning, x, y);
        this.avoids = kind;
        this.whole = this;
        this.hullArea = 0;
        this.extent = extent;
        this.diameter = 0;
        this.least = 0;
        this.longestEdge = 0;
        this.poleX = poles.x();
        this.poleY = poles.y();
        this.poleRadius = poles.radius();
        this.listed = listed();
    }

    private Form(Form whole, double by, Turning turning) {
        double[][] ring = Rings.inset(whole.x, whole.y, by);
        this.x = ring[0];
        this.y = ring[1];
        this.whole = by == 0 ? this : whole;
        this.area = whole.area;
        this.hullArea = whole.hullArea;
        this.diameter = whole.diameter;
        this.extent = whole.extent;
        this.least = whole.least;
        this.longestEdge = whole.longestEdge;
        this.poleX = whole.poleX;
        this.poleY = whole.poleY;
        this.poleRadius = Arrays.stream(whole.poleRadius)
                .map(radius -> Math.max(radius - by, radius / 2))
                .toArray();
        this.turning = turning;
        this.angles = turning == whole.turning ? whole.angles : new EdgeAngles(turning, x, y);
        this.referenceX = whole.referenceX;
        this.referenceY = whole.referenceY;
        this.avoids = whole.avoids;
        this.inner = Arrays.stream(whole.inner)
                .map(place -> new Form(place, by, turning))
                .toArray(Form[]::new);
        this.listed = listed();
    }

    /** The same form, its edges further in by a length so small that it measures as before. */
    Form smaller(double by) {
        return new Form(this, by, turning);
    }

    /** The same form in the directions alone that are asked for. */
    Form straightened() {
        return new Form(this, 0, turning.straightened());
    }

    /** Whether the part may touch others, so that this form is a little smaller. */
    boolean touches() {
        return whole != this;
    }

    private Turned[] listed() {
        Turned[] turns = new Turned[turning.stepwise() ? turning.windows() : 0];
        for (int step = 0; step < turns.length; step++) {
            turns[step] = new Turned(this);
            turns[step].turn(turning.from(step));
        }
        return turns;
    }

    /** Corners counter-clockwise, about a point. */
    private static double[][] about(double originX, double originY, double[] ringX, double[] ringY) {
        boolean clockwise = Rings.area(ringX, ringY) < 0;
        double[][] about = new double[2][ringX.length];
        for (int corner = 0; corner < ringX.length; corner++) {
            int from = clockwise ? ringX.length - 1 - corner : corner;
            about[0][corner] = ringX[from] - originX;
            about[1][corner] = ringY[from] - originY;
        }
        return about;
    }
}
