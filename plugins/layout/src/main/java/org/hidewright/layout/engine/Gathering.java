package org.hidewright.layout.engine;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Draws the parts of a sheet together at its left, so that what is left of it is one large piece: the sheet is narrowed by a step,
 * and the parts are separated on what remains; where they do not come apart the step is halved.
 */
final class Gathering {
    private static final double WIDEST = 0.1;
    private static final double NARROWEST = 0.002;
    private static final int STRIKES = 2;
    private static final int STALL = 80;

    private final Form[] forms;
    private final ClosePairs pairs;
    private final Ground whole;
    private final int sheet;
    private final FullSize full;
    private final SplittableRandom random;
    private final Halt halt;
    private double step = WIDEST;
    private long tries;

    Gathering(FullSize full, ClosePairs pairs, int sheet, SplittableRandom random, Halt halt) {
        this.full = full;
        this.sheet = sheet;
        this.forms = full.forms();
        this.pairs = pairs;
        this.whole = full.ground(sheet);
        this.random = random;
        this.halt = halt;
    }

    long tries() {
        return tries;
    }

    /** Whether a further step may still succeed. */
    boolean mayGoOn() {
        return step >= NARROWEST && halt.spent(tries) < 1;
    }

    /**
     * One step.
     *
     * @return the parts further to the left, or as they were where the step was too wide
     */
    Stack narrower(Stack stack) {
        Form[] here = stack.parts().stream().map(part -> forms[part]).toArray(Form[]::new);
        Crowd before = laid(new Crowd(whole, here, pairs), stack, Double.POSITIVE_INFINITY);
        double reach = reach(before);
        double right = whole.minX() + (reach - whole.minX()) * (1 - step);
        Crowd crowd = laid(new Crowd(new Narrowed(whole, right), here, pairs), stack, right);
        crowd.measureAll();
        Seeker seeker = new Seeker(crowd, random);
        long from = tries;
        double rest =
                new Separation(crowd, seeker, random, () -> halt.spent(from + seeker.tries()) >= 1).run(STRIKES, STALL);
        tries += seeker.tries();
        // on a grid they may be where they were
        Optional<Stack> narrower = rest > 0
                ? Optional.empty()
                : full.stack(sheet, stack.parts(), crowd.places(), random)
                        .filter(gained ->
                                reach(laid(new Crowd(whole, here, pairs), gained, Double.POSITIVE_INFINITY)) < reach);
        if (narrower.isEmpty()) {
            step /= 2;
        }
        return narrower.orElse(stack);
    }

    private static double reach(Crowd crowd) {
        return Arrays.stream(crowd.right).max().orElse(0);
    }

    /** The parts where they lie, but none further to the right than so. */
    private static Crowd laid(Crowd crowd, Stack stack, double right) {
        for (int part = 0; part < crowd.parts; part++) {
            crowd.lay(part, stack.places().angle[part], stack.places().x[part], stack.places().y[part]);
            double over = Math.max(0, crowd.right[part] - right);
            crowd.lay(part, stack.places().angle[part], stack.places().x[part] - over, stack.places().y[part]);
        }
        return crowd;
    }
}
