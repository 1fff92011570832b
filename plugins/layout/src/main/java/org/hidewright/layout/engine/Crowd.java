package org.hidewright.layout.engine;

/**
 * Parts on a ground, overlapping as they may: where each lies, how deep each pair overlaps, and the weight that each
 * overlap has gathered. Weights follow Umetani and others' guided local search as told in arXiv 2509.13329.
 */
final class Crowd {
    private static final double LEAST_GROWTH = 1.2;
    private static final double MOST_GROWTH = 2;
    private static final double FADING = 0.95;

    final Ground ground;
    final int parts;
    final Form[] form;
    final ClosePairs pairs;
    final Turned[] turned;
    final double[] x;
    final double[] y;

    /** Boxes of the parts where they lie. */
    final double[] left;

    final double[] low;
    final double[] right;
    final double[] high;

    /** Depth of each pair, symmetric; the diagonal tells how far a part lies off the ground. */
    final double[][] depth;

    final double[][] weight;

    /** A crowd by itself. */
    Crowd(Ground ground, Form[] form) {
        this(ground, form, new ClosePairs(form));
    }

    /** One of several crowds of the same forms. */
    Crowd(Ground ground, Form[] form, ClosePairs pairs) {
        this.ground = ground;
        this.form = form;
        this.pairs = pairs;
        this.parts = form.length;
        this.turned = new Turned[parts];
        this.x = new double[parts];
        this.y = new double[parts];
        this.left = new double[parts];
        this.low = new double[parts];
        this.right = new double[parts];
        this.high = new double[parts];
        this.depth = new double[parts][parts];
        this.weight = new double[parts][parts];
        for (int part = 0; part < parts; part++) {
            turned[part] = form[part].listed.length > 0 ? form[part].listed[0] : new Turned(form[part]);
        }
        levelWeights();
    }

    void levelWeights() {
        for (double[] row : weight) {
            java.util.Arrays.fill(row, 1);
        }
    }

    /** Lays a part without asking what it overlaps; {@link #measure} has to follow before depths are read. */
    void put(int part, Turned as, double toX, double toY) {
        if (form[part].listed.length > 0) {
            turned[part] = as;
        } else if (turned[part] != as) {
            turned[part].take(as);
        }
        x[part] = toX;
        y[part] = toY;
        left[part] = as.minX + toX;
        right[part] = as.maxX + toX;
        low[part] = as.minY + toY;
        high[part] = as.maxY + toY;
    }

    /** Measures anew all overlaps of one part. */
    void measure(int part) {
        double[] row = depth[part];
        Turned own = turned[part];
        double ownX = x[part];
        double ownY = y[part];
        for (int other = 0; other < parts; other++) {
            if (other == part) {
                row[part] = ground.outside(own, ownX, ownY);
                continue;
            }
            double deep = 0;
            if (boxesMeet(other, left[part], low[part], right[part], high[part])) {
                double dx = x[other] - ownX;
                double dy = y[other] - ownY;
                if (Meeting.overlaps(own, turned[other], dx, dy)) {
                    deep = Meeting.depth(own, turned[other], dx, dy, Double.POSITIVE_INFINITY);
                }
            }
            row[other] = deep;
            depth[other][part] = deep;
        }
    }

    void measureAll() {
        for (int part = 0; part < parts; part++) {
            measure(part);
        }
    }

    private boolean boxesMeet(int other, double partLeft, double partLow, double partRight, double partHigh) {
        return left[other] <= partRight && right[other] >= partLeft && low[other] <= partHigh && high[other] >= partLow;
    }

    /**
     * What it costs to lay a part here: its overlaps, each times its weight. Told only as long as it stays below the
     * bound; beyond, some number that is not less than the bound.
     */
    double cost(int part, Turned as, double atX, double atY, double bound) {
        double[] weights = weight[part];
        double off = ground.outside(as, atX, atY);
        double sum = off == 0 ? 0 : off * weights[part];
        if (sum >= bound) {
            return sum;
        }
        double partLeft = as.minX + atX;
        double partRight = as.maxX + atX;
        double partLow = as.minY + atY;
        double partHigh = as.maxY + atY;
        for (int other = 0; other < parts; other++) {
            if (right[other] < partLeft
                    || left[other] > partRight
                    || high[other] < partLow
                    || low[other] > partHigh
                    || other == part) {
                continue;
            }
            double dx = x[other] - atX;
            double dy = y[other] - atY;
            if (Meeting.overlaps(as, turned[other], dx, dy)) {
                double own = weights[other];
                sum += own * Meeting.depth(as, turned[other], dx, dy, (bound - sum) / own);
                if (sum >= bound) {
                    return sum;
                }
            }
        }
        return sum;
    }

    /** Whether a part overlaps anything or lies off the ground. */
    boolean troubled(int part) {
        for (double deep : depth[part]) {
            if (deep > 0) {
                return true;
            }
        }
        return false;
    }

    /** The sum of all overlaps. */
    double total() {
        double sum = 0;
        for (int part = 0; part < parts; part++) {
            for (int other = 0; other <= part; other++) {
                sum += depth[part][other];
            }
        }
        return sum;
    }

    /** Overlaps that last grow heavier, the deepest most; those that are gone fade. */
    void reweigh() {
        double deepest = 0;
        for (double[] row : depth) {
            for (double deep : row) {
                deepest = Math.max(deepest, deep);
            }
        }
        for (int part = 0; part < parts; part++) {
            for (int other = 0; other <= part; other++) {
                double deep = depth[part][other];
                double was = weight[part][other];
                double now = deep > 0
                        ? was * (LEAST_GROWTH + (MOST_GROWTH - LEAST_GROWTH) * deep / deepest)
                        : Math.max(1, was * FADING);
                weight[part][other] = now;
                weight[other][part] = now;
            }
        }
    }

    /** Where every part lies, to come back to. */
    Places places() {
        Places places = new Places(parts);
        keep(places);
        return places;
    }

    void keep(Places places) {
        for (int part = 0; part < parts; part++) {
            places.angle[part] = turned[part].angle;
            places.x[part] = x[part];
            places.y[part] = y[part];
        }
    }

    void restore(Places places) {
        for (int part = 0; part < parts; part++) {
            lay(part, places.angle[part], places.x[part], places.y[part]);
        }
        measureAll();
    }

    /** Lays a part at an angle it may lie at. */
    void lay(int part, double angle, double toX, double toY) {
        Turned[] listed = form[part].listed;
        if (listed.length == 0) {
            turned[part].turn(angle);
            put(part, turned[part], toX, toY);
            return;
        }
        for (Turned step : listed) {
            if (step.angle == angle) {
                put(part, step, toX, toY);
                return;
            }
        }
        throw new IllegalArgumentException("Part " + part + " may not lie at " + Math.toDegrees(angle) + " degrees.");
    }
}
