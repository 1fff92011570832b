package org.hidewright.layout.engine;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A first legal layout on a strip: the largest parts first, each as far left as a place is found for it, and beyond all others
 * where none is.
 */
final class FirstFill {
    private static final int DRAWS = 400;

    private final Crowd crowd;
    private final SplittableRandom random;
    private final Turned[] scratch;
    private final LeftmostPlace leftmost;

    FirstFill(Crowd crowd, SplittableRandom random) {
        this.crowd = crowd;
        this.random = random;
        this.scratch = Scratch.of(crowd.form);
        this.leftmost = new LeftmostPlace(crowd, random);
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
        double gap = form.diameter * 1e-6;
        Turned beyond = Scratch.at(form, scratch[part], fitting(form, crowd.ground.maxY()));
        crowd.lay(part, beyond.angle, used - beyond.minX + gap, -beyond.minY);
        leftmost.settle(part, Math.min(crowd.right[part], used + form.diameter), DRAWS);
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
                    : form.angles.any(random);
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
}
