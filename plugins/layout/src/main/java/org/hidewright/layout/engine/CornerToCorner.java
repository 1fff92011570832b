package org.hidewright.layout.engine;

import java.util.SplittableRandom;

/**
 * Places for a part of a crowd that may touch others: with a corner at a corner of another part or of the sheet, and an edge along one of
 * its edges, as parts lie that fill a panel edge to edge. One for each thread.
 */
final class CornerToCorner implements DrawnPlaces {
    /** So many corners are drawn until one is taken. */
    private static final int DRAWS = 16;

    /** The sine of the angle up to which edges count as running along one another. */
    private static final double ALONG = 1e-6;

    private final Crowd crowd;
    private final Turned[] scratch;

    private Turned as;
    private Turned whole;
    private double x;
    private double y;

    CornerToCorner(Crowd crowd, Turned[] scratch) {
        this.crowd = crowd;
        this.scratch = scratch;
    }

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

    /** Whether a part may touch others. */
    @Override
    public boolean has(int part) {
        return crowd.form[part].touches();
    }

    @Override
    public boolean draw(int part, SplittableRandom random) {
        Form form = crowd.form[part];
        as = Scratch.at(form, scratch[part], form.turning.any(random));
        whole = whole(as);
        for (int draw = 0; draw < DRAWS; draw++) {
            int own = random.nextInt(whole.edges);
            int other = random.nextInt(crowd.parts);
            if (other == part) {
                Ground field = crowd.ground.field(random);
                double toX = random.nextBoolean() ? field.minX() : field.maxX();
                double toY = random.nextBoolean() ? field.minY() : field.maxY();
                if (along(own, 1, 0) || along(own, 0, 1)) {
                    set(own, toX, toY);
                    return true;
                }
                continue;
            }
            Turned beside = whole(crowd.turned[other]);
            int corner = random.nextInt(beside.edges);
            int before = corner == 0 ? beside.edges - 1 : corner - 1;
            if (along(own, beside.x[corner + 1] - beside.x[corner], beside.y[corner + 1] - beside.y[corner])
                    || along(own, beside.x[corner] - beside.x[before], beside.y[corner] - beside.y[before])) {
                set(own, crowd.x[other] + beside.x[corner], crowd.y[other] + beside.y[corner]);
                return true;
            }
        }
        return false;
    }

    /** At full size, at the same angle; parts that touch turn by quarters. */
    private static Turned whole(Turned smaller) {
        Form full = smaller.form.whole;
        return Scratch.at(full, full.listed[0], smaller.angle);
    }

    private void set(int own, double toX, double toY) {
        x = toX - whole.x[own];
        y = toY - whole.y[own];
    }

    /** Whether one of the two edges at a corner of the part runs along a direction. */
    private boolean along(int corner, double dx, double dy) {
        int before = corner == 0 ? whole.edges - 1 : corner - 1;
        return parallel(whole.x[corner + 1] - whole.x[corner], whole.y[corner + 1] - whole.y[corner], dx, dy)
                || parallel(whole.x[corner] - whole.x[before], whole.y[corner] - whole.y[before], dx, dy);
    }

    private static boolean parallel(double ax, double ay, double bx, double by) {
        double cross = ax * by - ay * bx;
        return cross * cross <= ALONG * ALONG * (ax * ax + ay * ay) * (bx * bx + by * by);
    }
}
