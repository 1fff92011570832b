package org.hidewright.layout.engine;

import java.util.SplittableRandom;

/**
 * Finds a part a place that is free, as far to the left as can be: beside parts of its own form, where equal parts make rows and columns,
 * corner to corner where it may touch others, and at places drawn at random; each is bettered by moving left and down.
 */
final class LeftmostPlace {
    private static final double LEAST_STEP = 1e-3;

    /** Parts that touch are kept apart by so much of their least extent, so that rounding lays none over another. */
    private static final double GAP = 1e-6;

    /** So many of the parts of its own form that were laid last are looked beside. */
    private static final int NEIGHBOURS = 12;

    /** Where a part may touch others, so many corners are tried, or so many for each part that lies there. */
    private static final int CORNERS = 200;

    private static final int CORNERS_OF_EACH = 40;

    private final Crowd crowd;
    private final SplittableRandom random;
    private final Turned[] scratch;
    private final BesideOthers beside;
    private final CornerToCorner corners;
    private long tries;

    /** How far right the best place so far reaches, and that place. */
    private double right;

    private double angle;
    private double x;
    private double y;
    private boolean found;

    LeftmostPlace(Crowd crowd, SplittableRandom random) {
        this.crowd = crowd;
        this.random = random;
        this.scratch = Scratch.of(crowd.form);
        this.beside = new BesideOthers(crowd, scratch);
        this.corners = new CornerToCorner(crowd, scratch);
    }

    long tries() {
        return tries;
    }

    /**
     * Lays the part there; leaves it where it is when no place was found.
     *
     * @param limit how far to the right it may reach
     * @return whether a place was found
     */
    boolean settle(int part, double limit, int draws) {
        found = false;
        // a part as long as the ground reaches to its end, to the last digit of a sum
        double rounding = 2 * Rectangle.ROUNDING * crowd.form[part].diameter;
        right = Math.min(limit, crowd.ground.maxX() + rounding);
        inTheCorner(part);
        besideItsLike(part);
        besideOthers(part);
        atCorners(part);
        for (int draw = 0; draw < draws; draw++) {
            Turned as = Scratch.at(crowd.form[part], scratch[part], crowd.form[part].angles.any(random));
            double fromX = crowd.ground.minX() - as.minX;
            double fromY = crowd.ground.minY() - as.minY;
            double roomX = right - as.maxX - fromX;
            double roomY = crowd.ground.maxY() - as.maxY - fromY;
            if (roomX > 0 && roomY >= -rounding) {
                double overX = Math.max(0, roomX - rounding);
                double overY = Math.max(0, roomY);
                from(part, as, fromX + random.nextDouble() * overX, fromY + random.nextDouble() * overY);
            }
        }
        if (found) {
            crowd.lay(part, angle, x, y);
        }
        return found;
    }

    /** With its longest edge along the edges of the ground. */
    private void inTheCorner(int part) {
        Form form = crowd.form[part];
        for (int quarter = 0; quarter < 4; quarter++) {
            Turned as = Scratch.nearest(form, scratch[part], quarter * Math.PI / 2 - form.longestEdge);
            from(part, as, crowd.ground.minX() - as.minX, crowd.ground.minY() - as.minY);
        }
    }

    private void besideItsLike(int part) {
        Form form = crowd.form[part];
        double gap = GAP * form.least;
        int seen = 0;
        for (int other = crowd.parts - 1; other >= 0 && seen < NEIGHBOURS; other--) {
            if (other == part || crowd.form[other] != form || crowd.left[other] < crowd.ground.minX()) {
                continue;
            }
            seen++;
            double lies = crowd.turned[other].angle;
            for (double turn : new double[] {lies, lies + Math.PI}) {
                Turned as = Scratch.nearest(form, scratch[part], turn);
                from(part, as, crowd.left[other] - as.minX, crowd.high[other] - as.minY + gap);
                from(part, as, crowd.right[other] - as.minX + gap, crowd.low[other] - as.minY);
            }
        }
    }

    /**
     * As it lies closely beside each that is laid; not with very many kinds, of which there are few copies each: a first layout should not
     * wait for their pairs.
     */
    private void besideOthers(int part) {
        for (int other = 0; other < crowd.parts && beside.amongAllKinds(); other++) {
            if (other == part || crowd.left[other] < crowd.ground.minX()) {
                continue;
            }
            for (int way = 0; way < beside.ways(part, other); way++) {
                beside.set(part, other, way);
                // as close as it comes already: moving on gains little
                if (beside.as().maxX + beside.x() < right) {
                    from(part, beside.as(), beside.x(), beside.y());
                }
            }
        }
    }

    private void atCorners(int part) {
        int draws = Math.max(CORNERS, CORNERS_OF_EACH * crowd.parts);
        for (int draw = 0; draw < draws && corners.has(part); draw++) {
            if (corners.draw(part, random)) {
                from(part, corners.as(), corners.x(), corners.y());
            }
        }
    }

    /** Moves it left and down from a place that is free, as far as it goes, and keeps that if it is the best. */
    private void from(int part, Turned as, double fromX, double fromY) {
        double tx = fromX;
        double ty = fromY;
        if (as.maxX + crowd.ground.minX() - as.minX > right || !free(part, as, tx, ty)) {
            return;
        }
        double least = crowd.form[part].least;
        double step = least / 4;
        while (step > LEAST_STEP * least) {
            if (free(part, as, tx - step, ty)) {
                tx -= step;
            } else if (free(part, as, tx, ty - step)) {
                ty -= step;
            } else {
                step /= 2;
            }
        }
        if (as.maxX + tx < right) {
            found = true;
            angle = as.angle;
            x = tx;
            y = ty;
            right = as.maxX + tx;
        }
    }

    private boolean free(int part, Turned as, double tx, double ty) {
        tries++;
        return crowd.cost(part, as, tx, ty, Double.MIN_VALUE) == 0;
    }
}
