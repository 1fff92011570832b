package org.hidewright.documents.dxf;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;

/** A curve of B-splines, with weights or without (L. Piegl, W. Tiller, The NURBS Book, chapters 3 and 4). */
final class Spline {
    /** So often a stretch is halved at most. */
    private static final int MOST_HALVINGS = 20;

    private final int degree;
    private final double[] knots;
    /** Each point times its weight, and the weight. */
    private final double[][] controls;

    /** @param weights as many as there are control points, or none */
    Spline(int degree, double[] knots, double[] xs, double[] ys, double[] weights) {
        this.degree = degree;
        this.knots = knots;
        this.controls = new double[xs.length][];
        for (int i = 0; i < xs.length; i++) {
            double weight = weights.length == 0 ? 1 : weights[i];
            controls[i] = new double[] {xs[i] * weight, ys[i] * weight, weight};
        }
    }

    /** Whether it has as many knots as its points ask for, and they do not run back. */
    boolean isWhole() {
        boolean whole = degree >= 1
                && controls.length > degree
                && knots.length == controls.length + degree + 1
                && knots[degree] < knots[controls.length];
        for (int i = 1; whole && i < knots.length; i++) {
            whole = knots[i - 1] <= knots[i];
        }
        for (int i = 0; whole && i < controls.length; i++) {
            whole = controls[i][2] > 0;
        }
        return whole;
    }

    /** Places along it, its ends included, between which it is straight but for so much. */
    List<Point> places(double near) {
        List<Point> places = new ArrayList<>();
        places.add(at(knots[degree], degree));
        for (int span = degree; span < controls.length; span++) {
            if (knots[span] < knots[span + 1]) {
                follow(span, knots[span], knots[span + 1], near, 0, places);
            }
        }
        return places;
    }

    /** A stretch is straight where its quarters lie on its chord; a curve of degree three that turns over passes one of them. */
    private void follow(int span, double from, double to, double near, int halvings, List<Point> places) {
        Point start = places.get(places.size() - 1);
        Point end = at(to, span);
        boolean straight = halvings > 1;
        for (int quarter = 1; straight && quarter < 4; quarter++) {
            straight = off(at(from + (to - from) * quarter / 4, span), start, end) <= near;
        }
        if (straight || halvings == MOST_HALVINGS) {
            places.add(end);
            return;
        }
        double middle = (from + to) / 2;
        follow(span, from, middle, near, halvings + 1, places);
        follow(span, middle, to, near, halvings + 1, places);
    }

    private static double off(Point place, Point start, Point end) {
        double length = start.distanceTo(end);
        double cross =
                (end.x() - start.x()) * (place.y() - start.y()) - (end.y() - start.y()) * (place.x() - start.x());
        return length == 0 ? start.distanceTo(place) : Math.abs(cross) / length;
    }

    /** De Boor’s algorithm, in the span of knots that begins with this one. */
    private Point at(double t, int span) {
        double[][] d = new double[degree + 1][];
        for (int i = 0; i <= degree; i++) {
            d[i] = controls[span - degree + i].clone();
        }
        for (int round = 1; round <= degree; round++) {
            for (int i = degree; i >= round; i--) {
                int knot = span - degree + i;
                double share = (t - knots[knot]) / (knots[knot + degree - round + 1] - knots[knot]);
                for (int part = 0; part < 3; part++) {
                    d[i][part] = (1 - share) * d[i - 1][part] + share * d[i][part];
                }
            }
        }
        double[] end = d[degree];
        return Point.of(end[0] / end[2], end[1] / end[2]);
    }
}
