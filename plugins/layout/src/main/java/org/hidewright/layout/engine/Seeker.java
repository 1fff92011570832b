package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Seeks a better place for one part among others that stay: places drawn at random, near by, all over and as it pairs with
 * others, or corner to corner where it may touch them, of which the best few are bettered along one axis after another. One seeker for
 * each thread.
 *
 * <p>Numbers of draws and lengths of steps as published in arXiv 2509.13329; how many are drawn beside others was tried on open
 * instances.
 */
final class Seeker {
    private static final int NEAR = 25;
    private static final int ANYWHERE = 50;
    private static final int ON_EACH_FURTHER = 15;
    private static final int BESIDE_OTHERS = 16;
    private static final int CORNER_TO_CORNER = 96;
    private static final int KEPT = 3;
    private static final double APART = 0.05;

    private static final double COARSE = 0.25;
    private static final double MEDIUM = 0.02;
    private static final double FINE = 0.01;
    private static final double FINEST = 0.001;
    private static final double COARSE_TURN = Math.toRadians(5);
    private static final double MEDIUM_TURN = Math.toRadians(1);
    private static final double FINE_TURN = Math.toRadians(0.5);
    private static final double FINEST_TURN = Math.toRadians(0.05);

    private static final double LONGER = 1.1;
    private static final double SHORTER = 0.5;

    private final Crowd crowd;
    private final SplittableRandom random;
    private final Turned[] scratch;
    private final DrawnPlaces beside;
    private final DrawnPlaces corners;
    private final Place[] kept = new Place[KEPT];
    private final Place best = new Place();
    private final boolean turning;
    private int size;
    private long tries;
    private boolean edgewise;

    Seeker(Crowd crowd, SplittableRandom random) {
        this.crowd = crowd;
        this.random = random;
        this.scratch = Scratch.of(crowd.form);
        this.beside = new BesideOthers(crowd, scratch);
        this.corners = new CornerToCorner(crowd, scratch);
        this.turning = Arrays.stream(crowd.form).anyMatch(form -> !form.turning.stepwise());
        for (int index = 0; index < KEPT; index++) {
            kept[index] = new Place();
        }
    }

    /**
     * Begins another attempt. In every other one parts that turn through a range are only laid with an edge along the sheet's, and not
     * turned from there: most of what lies densely lies so, and there is far less to try.
     */
    void begin() {
        edgewise = turning && random.nextBoolean();
    }

    /** How many places were tried since the start. */
    long tries() {
        return tries;
    }

    /** Lays the part where it costs least of all that was tried, and says whether it moved. */
    boolean improve(int part) {
        Form form = crowd.form[part];
        double angle = crowd.turned[part].angle;
        double ownX = crowd.x[part];
        double ownY = crowd.y[part];
        size = 0;
        double here = cost(part, angle, ownX, ownY, Double.POSITIVE_INFINITY);
        keep(form, angle, ownX, ownY, here);
        double width = crowd.right[part] - crowd.left[part];
        double height = crowd.high[part] - crowd.low[part];
        Ground near = crowd.ground.field(ownX);
        for (int draw = 0; draw < NEAR; draw++) {
            double drawn = nearAngle(form, angle);
            Turned as = at(part, drawn);
            double tx =
                    within(near.minX() - as.minX, near.maxX() - as.maxX, ownX + (random.nextDouble() - 0.5) * width);
            double ty =
                    within(near.minY() - as.minY, near.maxY() - as.maxY, ownY + (random.nextDouble() - 0.5) * height);
            tryOut(part, form, as, tx, ty);
        }
        int draws = ANYWHERE + ON_EACH_FURTHER * (crowd.ground.fields() - 1);
        for (int draw = 0; draw < draws; draw++) {
            Turned as = at(part, angle(form));
            Ground field = crowd.ground.field(random);
            tryOut(
                    part,
                    form,
                    as,
                    between(field.minX() - as.minX, field.maxX() - as.maxX),
                    between(field.minY() - as.minY, field.maxY() - as.maxY));
        }
        tryOut(part, form, beside, BESIDE_OTHERS);
        tryOut(part, form, corners, CORNER_TO_CORNER);
        best.take(kept[0]);
        for (int index = 0; index < size; index++) {
            Place place = kept[index];
            descend(part, form, place, COARSE, MEDIUM, COARSE_TURN, MEDIUM_TURN);
            if (place.cost < best.cost) {
                best.take(place);
            }
        }
        descend(part, form, best, FINE, FINEST, FINE_TURN, FINEST_TURN);
        if (best.cost >= here) {
            return false;
        }
        crowd.put(part, at(part, best.angle), best.x, best.y);
        crowd.measure(part);
        return true;
    }

    private double nearAngle(Form form, double angle) {
        if (form.turning.stepwise() || edgewise || random.nextInt(2) == 0) {
            return angle(form);
        }
        return form.turning.nearest(angle + (random.nextDouble() - 0.5) * 4 * COARSE_TURN);
    }

    private double angle(Form form) {
        return edgewise ? form.angles.edgewise(random) : form.angles.any(random);
    }

    private double between(double from, double to) {
        return from >= to ? (from + to) / 2 : from + random.nextDouble() * (to - from);
    }

    private static double within(double from, double to, double value) {
        return from >= to ? (from + to) / 2 : Math.max(from, Math.min(to, value));
    }

    private void tryOut(int part, Form form, DrawnPlaces places, int draws) {
        for (int draw = 0; draw < draws && places.has(part); draw++) {
            if (places.draw(part, random)) {
                tryOut(part, form, places.as(), places.x(), places.y());
            }
        }
    }

    private void tryOut(int part, Form form, Turned as, double tx, double ty) {
        double bound = size < KEPT ? Double.POSITIVE_INFINITY : kept[size - 1].cost;
        tries++;
        double cost = crowd.cost(part, as, tx, ty, bound);
        if (cost < bound) {
            keep(form, as.angle, tx, ty, cost);
        }
    }

    /** Keeps a place among the best, in their order; of places that are nearly one the better. */
    private void keep(Form form, double angle, double tx, double ty, double cost) {
        double apart = APART * form.least;
        for (int index = 0; index < size; index++) {
            Place other = kept[index];
            if (Math.abs(other.x - tx) < apart
                    && Math.abs(other.y - ty) < apart
                    && Math.abs(other.angle - angle) < MEDIUM_TURN) {
                if (other.cost <= cost) {
                    return;
                }
                for (int shift = index; shift + 1 < size; shift++) {
                    Place swap = kept[shift];
                    kept[shift] = kept[shift + 1];
                    kept[shift + 1] = swap;
                }
                size--;
                break;
            }
        }
        if (size == KEPT) {
            if (cost >= kept[KEPT - 1].cost) {
                return;
            }
            size--;
        }
        kept[size].set(angle, tx, ty, cost);
        for (int index = size; index > 0 && kept[index].cost < kept[index - 1].cost; index--) {
            Place swap = kept[index];
            kept[index] = kept[index - 1];
            kept[index - 1] = swap;
        }
        size++;
    }

    private void descend(int part, Form form, Place place, double from, double to, double turnFrom, double turnTo) {
        double stepX = from * form.least;
        double stepY = stepX;
        double turn = form.turning.stepwise() || edgewise ? 0 : turnFrom;
        double limit = to * form.least;
        boolean turns = turn > 0;
        int axis = random.nextInt(turns ? 5 : 4);
        while (place.cost > 0 && (stepX > limit || stepY > limit || turns && turn > turnTo)) {
            double dx = axis == 1 || axis == 4 ? 0 : stepX;
            double dy = axis == 0 || axis == 4 ? 0 : axis == 3 ? -stepY : stepY;
            double dTurn = axis == 4 ? turn : 0;
            boolean better = step(part, form, place, dx, dy, dTurn) || step(part, form, place, -dx, -dy, -dTurn);
            double factor = better ? LONGER : SHORTER;
            if (axis == 4) {
                turn *= factor;
            } else {
                stepX = axis == 1 ? stepX : stepX * factor;
                stepY = axis == 0 ? stepY : stepY * factor;
            }
            if (!better) {
                axis = random.nextInt(turns ? 5 : 4);
            }
        }
    }

    private boolean step(int part, Form form, Place place, double dx, double dy, double dTurn) {
        double angle = dTurn == 0 ? place.angle : form.turning.nearest(place.angle + dTurn);
        tries++;
        double cost = cost(part, angle, place.x + dx, place.y + dy, place.cost);
        if (cost >= place.cost) {
            return false;
        }
        place.set(angle, place.x + dx, place.y + dy, cost);
        return true;
    }

    private double cost(int part, double angle, double tx, double ty, double bound) {
        return crowd.cost(part, at(part, angle), tx, ty, bound);
    }

    private Turned at(int part, double angle) {
        return Scratch.at(crowd.form[part], scratch[part], angle);
    }
}
