package org.hidewright.layout.engine;

import java.util.List;
import java.util.SplittableRandom;

/** Several sheets side by side, so far apart that no part lies on two: parts may move from one to another. */
final class Row implements Ground {
    private final Shifted[] sheets;
    private final double[] share;

    /** Where the reach of each sheet begins; the last number ends that of the last one. */
    private final double[] from;

    private final double minY;
    private final double maxY;

    /**
     * @param areas of the sheets: places are drawn on each by its share
     * @param apart how far apart they are laid
     */
    Row(List<Ground> grounds, double[] areas, double apart) {
        sheets = new Shifted[grounds.size()];
        share = new double[grounds.size()];
        from = new double[grounds.size() + 1];
        double at = 0;
        double all = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int sheet = 0; sheet < sheets.length; sheet++) {
            Ground ground = grounds.get(sheet);
            from[sheet] = at;
            sheets[sheet] = new Shifted(ground, at + apart / 2 - ground.minX());
            at += ground.maxX() - ground.minX() + apart;
            all += areas[sheet];
            share[sheet] = all;
            low = Math.min(low, ground.minY());
            high = Math.max(high, ground.maxY());
        }
        from[sheets.length] = at;
        minY = low;
        maxY = high;
    }

    /** On which sheet a part lies whose point of reference lies there. */
    int sheet(double x) {
        int sheet = 0;
        while (sheet < sheets.length - 1 && x >= from[sheet + 1]) {
            sheet++;
        }
        return sheet;
    }

    /** How far a sheet is moved to stand in the row. */
    double shift(int sheet) {
        return sheets[sheet].by;
    }

    @Override
    public int fields() {
        return sheets.length;
    }

    @Override
    public Ground field(SplittableRandom random) {
        double drawn = random.nextDouble() * share[share.length - 1];
        int sheet = 0;
        while (share[sheet] <= drawn) {
            sheet++;
        }
        return sheets[sheet];
    }

    @Override
    public Ground field(double x) {
        return sheets[sheet(x)];
    }

    @Override
    public double minX() {
        return from[0];
    }

    @Override
    public double minY() {
        return minY;
    }

    @Override
    public double maxX() {
        return from[sheets.length];
    }

    @Override
    public double maxY() {
        return maxY;
    }

    @Override
    public double outside(Turned part, double x, double y) {
        return sheets[sheet(x)].outside(part, x, y);
    }

    /** A sheet moved along the row. */
    private static final class Shifted implements Ground {
        private final Ground ground;
        private final double by;

        Shifted(Ground ground, double by) {
            this.ground = ground;
            this.by = by;
        }

        @Override
        public double minX() {
            return ground.minX() + by;
        }

        @Override
        public double minY() {
            return ground.minY();
        }

        @Override
        public double maxX() {
            return ground.maxX() + by;
        }

        @Override
        public double maxY() {
            return ground.maxY();
        }

        @Override
        public double outside(Turned part, double x, double y) {
            return ground.outside(part, x - by, y);
        }
    }
}
