package org.hidewright.layout.engine;

import java.util.Arrays;
import org.hidewright.layout.task.Turning;

/**
 * A part's form at one angle, about its point of reference: corners, poles, and a tree of boxes over its edges in their
 * order, by which two forms are asked for a crossing without looking at most pairs of edges.
 */
final class Turned {
    private static final int EDGES_OF_A_LEAF = 4;

    final Form form;

    /** Places within it, at the same angle. */
    final Turned[] inner;

    final int edges;

    /** Corners; the first is repeated at the end. */
    final double[] x;

    final double[] y;
    final double[] poleX;
    final double[] poleY;

    /** How many leaves the tree has, a power of two; node 1 is the root, the children of node k are 2k and 2k + 1. */
    final int leaves;

    /** The first edge of each leaf, and after the last one the number of edges. */
    final int[] firstEdge;

    /** Four numbers for each node: least x, least y, greatest x, greatest y. */
    final double[] box;

    double angle;
    double minX;
    double minY;
    double maxX;
    double maxY;

    /** The box about its poles. */
    double polesMinX;

    double polesMinY;
    double polesMaxX;
    double polesMaxY;

    Turned(Form form) {
        this.form = form;
        this.inner = Arrays.stream(form.inner).map(Turned::new).toArray(Turned[]::new);
        this.edges = form.x.length;
        this.x = new double[edges + 1];
        this.y = new double[edges + 1];
        this.poleX = new double[form.poleX.length];
        this.poleY = new double[form.poleX.length];
        int power = 1;
        while (power * EDGES_OF_A_LEAF < edges) {
            power *= 2;
        }
        this.leaves = power;
        this.box = new double[8 * power];
        this.firstEdge = new int[power + 1];
        for (int leaf = 0; leaf <= power; leaf++) {
            firstEdge[leaf] = (int) ((long) leaf * edges / power);
        }
    }

    void turn(double radians) {
        angle = radians;
        double cos = Turning.cos(radians);
        double sin = Turning.sin(radians);
        double[] formX = form.x;
        double[] formY = form.y;
        for (int corner = 0; corner < edges; corner++) {
            x[corner] = cos * formX[corner] - sin * formY[corner];
            y[corner] = sin * formX[corner] + cos * formY[corner];
        }
        x[edges] = x[0];
        y[edges] = y[0];
        for (int pole = 0; pole < poleX.length; pole++) {
            poleX[pole] = cos * form.poleX[pole] - sin * form.poleY[pole];
            poleY[pole] = sin * form.poleX[pole] + cos * form.poleY[pole];
        }
        boxPoles();
        for (int leaf = 0; leaf < leaves; leaf++) {
            int last = firstEdge[leaf + 1];
            double lowX = Double.POSITIVE_INFINITY;
            double lowY = Double.POSITIVE_INFINITY;
            double highX = Double.NEGATIVE_INFINITY;
            double highY = Double.NEGATIVE_INFINITY;
            for (int corner = firstEdge[leaf]; corner <= last; corner++) {
                lowX = Math.min(lowX, x[corner]);
                lowY = Math.min(lowY, y[corner]);
                highX = Math.max(highX, x[corner]);
                highY = Math.max(highY, y[corner]);
            }
            int at = 4 * (leaves + leaf);
            box[at] = lowX;
            box[at + 1] = lowY;
            box[at + 2] = highX;
            box[at + 3] = highY;
        }
        for (int node = leaves - 1; node >= 1; node--) {
            int at = 4 * node;
            int left = 8 * node;
            box[at] = Math.min(box[left], box[left + 4]);
            box[at + 1] = Math.min(box[left + 1], box[left + 5]);
            box[at + 2] = Math.max(box[left + 2], box[left + 6]);
            box[at + 3] = Math.max(box[left + 3], box[left + 7]);
        }
        minX = box[4];
        minY = box[5];
        maxX = box[6];
        maxY = box[7];
        for (Turned place : inner) {
            place.turn(radians);
        }
    }

    private void boxPoles() {
        double lowX = Double.POSITIVE_INFINITY;
        double lowY = Double.POSITIVE_INFINITY;
        double highX = Double.NEGATIVE_INFINITY;
        double highY = Double.NEGATIVE_INFINITY;
        double[] radius = form.poleRadius;
        for (int pole = 0; pole < radius.length; pole++) {
            lowX = Math.min(lowX, poleX[pole] - radius[pole]);
            lowY = Math.min(lowY, poleY[pole] - radius[pole]);
            highX = Math.max(highX, poleX[pole] + radius[pole]);
            highY = Math.max(highY, poleY[pole] + radius[pole]);
        }
        polesMinX = lowX;
        polesMinY = lowY;
        polesMaxX = highX;
        polesMaxY = highY;
    }

    /** Takes over the angle and all that follows from it from another turn of the same form. */
    void take(Turned other) {
        angle = other.angle;
        System.arraycopy(other.x, 0, x, 0, x.length);
        System.arraycopy(other.y, 0, y, 0, y.length);
        System.arraycopy(other.poleX, 0, poleX, 0, poleX.length);
        System.arraycopy(other.poleY, 0, poleY, 0, poleY.length);
        System.arraycopy(other.box, 0, box, 0, box.length);
        polesMinX = other.polesMinX;
        polesMinY = other.polesMinY;
        polesMaxX = other.polesMaxX;
        polesMaxY = other.polesMaxY;
        minX = other.minX;
        minY = other.minY;
        maxX = other.maxX;
        maxY = other.maxY;
        for (int place = 0; place < inner.length; place++) {
            inner[place].take(other.inner[place]);
        }
    }
}
