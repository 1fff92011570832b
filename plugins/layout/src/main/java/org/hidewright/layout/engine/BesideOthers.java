package org.hidewright.layout.engine;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hidewright.layout.task.Turning;

/** Places for a part of a crowd beside another one, as the two would lie in a close pair. One for each thread. */
final class BesideOthers implements DrawnPlaces {
    /** So many other parts are drawn until one is taken. */
    private static final int DRAWS = 16;

    private final Crowd crowd;
    private final Turned[] scratch;
    private final int[] kind;

    private Turned as;
    private double x;
    private double y;

    BesideOthers(Crowd crowd, Turned[] scratch) {
        this.crowd = crowd;
        this.scratch = scratch;
        this.kind = IntStream.range(0, crowd.parts)
                .map(part -> crowd.pairs.kind(crowd.form[part]))
                .toArray();
    }

    /** The part as it lies at the place that was set or drawn last. */
    @Override
    public Turned as() {
        return as;
    }

    @Override
    public double x() {
        return x;
    }

    @Override
    public double y() {
        return y;
    }

    /** Whether there are pairs for a part. */
    @Override
    public boolean has(int part) {
        return kind[part] >= 0;
    }

    /** Whether pairs are known among all kinds, so that a part has many places beside others. */
    boolean amongAllKinds() {
        return crowd.pairs.amongAllKinds();
    }

    /** In how many ways a part lies beside another one. */
    int ways(int part, int other) {
        return has(part) && has(other) ? crowd.pairs.beside(kind[part]).ways()[kind[other]].length : 0;
    }

    /** Sets the place of a part beside another one. */
    void set(int part, int other, int way) {
        PairSearch.Way lies = crowd.pairs.beside(kind[part]).ways()[kind[other]][way];
        double angle = crowd.turned[other].angle;
        double cos = Turning.cos(angle);
        double sin = Turning.sin(angle);
        as = Scratch.nearest(crowd.form[part], scratch[part], angle + lies.turn());
        x = crowd.x[other] + cos * lies.dx() - sin * lies.dy();
        y = crowd.y[other] + sin * lies.dx() + cos * lies.dy();
    }

    /** Other parts and ways by chance, the closer the rather (by the fourth power of their gain). */
    @Override
    public boolean draw(int part, SplittableRandom random) {
        ClosePairs.Beside beside = crowd.pairs.beside(kind[part]);
        for (int draw = 0; draw < DRAWS; draw++) {
            int other = random.nextInt(crowd.parts);
            if (other == part || kind[other] < 0 || beside.ways()[kind[other]].length == 0) {
                continue;
            }
            int way = random.nextInt(beside.ways()[kind[other]].length);
            double square = Math.pow(beside.ways()[kind[other]][way].gain() / beside.gain(), 2);
            if (random.nextDouble() < square * square) {
                set(part, other, way);
                return true;
            }
        }
        return false;
    }
}
