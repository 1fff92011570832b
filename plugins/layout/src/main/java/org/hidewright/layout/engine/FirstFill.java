package org.hidewright.layout.engine;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A first legal layout on a strip: the largest parts first, each as far left as places drawn at random and bettered
 * allow, and beyond all others where none is found.
 */
final class FirstFill {
    private static final int DRAWS = 400;
    private static final double LEAST_STEP = 1e-3;

    private final Crowd crowd;
    private final SplittableRandom random;
    private final Turned[] scratch;

    FirstFill(Crowd crowd, SplittableRandom random) {
        this.crowd = crowd;
        this.random = random;
        this.scratch = Scratch.of(crowd.form);
    }

    /** Lays all parts and returns the length they take. */
    double run() {
        double far = 4
                * IntStream.range(0, crowd.parts)
                        .mapToDouble(part -> crowd.form[part].diameter)
                        .sum();
        for (int part = 0; part < crowd.parts; part++) {
            // out of the way of those that are laid
            crowd.lay(part, crowd.form[part].turning.from(0), -far, -far);
        }
        int[] order = IntStream.range(0, crowd.parts)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        (Integer part) -> -crowd.form[part].hullArea * crowd.form[part].diameter))
                .mapToInt(Integer::intValue)
                .toArray();
        double used = 0;
        for (int part : order) {
            used = Math.max(used, lay(part, used));
        }
        crowd.measureAll();
        return used;
    }

    private double lay(int part, double used) {
        Form form = crowd.form[part];
        double height = crowd.ground.maxY();
        double angle = fitting(form, height);
        Turned as = at(part, angle);
        double gap = form.diameter * 1e-6;
        double x = used - as.minX + gap;
        double y = -as.minY + gap;
        double right = used + as.maxX - as.minX + gap;
        for (int draw = 0; draw < DRAWS; draw++) {
            as = at(part, form.turning.any(random));
            double roomX = Math.min(right, used + form.diameter) - as.maxX;
            double roomY = height - as.maxY;
            if (roomX <= -as.minX || roomY < -as.minY) {
                continue;
            }
            double tx = -as.minX + random.nextDouble() * (roomX + as.minX);
            double ty = -as.minY + random.nextDouble() * (roomY + as.minY);
            if (as.maxX + tx < right && free(part, as, tx, ty)) {
                double step = form.least / 4;
                while (step > LEAST_STEP * form.least) {
                    if (tx - step + as.minX >= 0 && free(part, as, tx - step, ty)) {
                        tx -= step;
                    } else if (ty - step + as.minY >= 0 && free(part, as, tx, ty - step)) {
                        ty -= step;
                    } else {
                        step /= 2;
                    }
                }
                if (as.maxX + tx < right) {
                    angle = as.angle;
                    x = tx;
                    y = ty;
                    right = as.maxX + tx;
                }
            }
        }
        crowd.lay(part, angle, x, y);
        return crowd.right[part];
    }

    /** An angle at which the part is not taller than the strip, the longest way along it first. */
    private double fitting(Form form, double height) {
        double best = form.turning.from(0);
        double least = Double.POSITIVE_INFINITY;
        Turned turn = new Turned(form);
        for (int draw = 0; draw < 64; draw++) {
            double angle = form.turning.stepwise()
                    ? form.turning.from(draw % form.turning.windows())
                    : form.turning.any(random);
            turn.turn(angle);
            double tall = turn.maxY - turn.minY;
            double value = tall <= height ? turn.maxX - turn.minX : tall * 1e6;
            if (value < least) {
                least = value;
                best = angle;
            }
        }
        return best;
    }

    private boolean free(int part, Turned as, double tx, double ty) {
        return crowd.cost(part, as, tx, ty, Double.MIN_VALUE) == 0;
    }

    private Turned at(int part, double angle) {
        return Scratch.at(crowd.form[part], scratch[part], angle);
    }
}
