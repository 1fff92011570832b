package org.hidewright.layout.engine;

import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Draws the parts of a sheet together, so that what is left of it on one side is one large piece: the sheet is narrowed by a step,
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
    private final Side side;
    private final FullSize full;
    private final SplittableRandom random;
    private final Halt halt;
    private double step = WIDEST;
    private long tries;

    Gathering(FullSize full, ClosePairs pairs, int sheet, Side side, SplittableRandom random, Halt halt) {
        this.full = full;
        this.sheet = sheet;
        this.side = side;
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
     * @return the parts further from the side, or as they were where the step was too wide
     */
    Stack narrower(Stack stack) {
        Form[] here = stack.parts().stream().map(part -> forms[part]).toArray(Form[]::new);
        double reach = reach(stack, here);
        Rectangle narrowed = side.within(whole, reach * (1 - step));
        Crowd crowd = laid(new Crowd(new Narrowed(whole, narrowed), here, pairs), stack);
        pushInto(narrowed, crowd);
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
                        .filter(gained -> reach(gained, here) < reach);
        if (narrower.isEmpty()) {
            step /= 2;
        }
        return narrower.orElse(stack);
    }

    private double reach(Stack stack, Form[] here) {
        return side.reach(laid(new Crowd(whole, here, pairs), stack), whole);
    }

    /** The parts where they lie. */
    private static Crowd laid(Crowd crowd, Stack stack) {
        for (int part = 0; part < crowd.parts; part++) {
            crowd.lay(part, stack.places().angle[part], stack.places().x[part], stack.places().y[part]);
        }
        return crowd;
    }

    /** Moves back what reaches beyond. */
    private static void pushInto(Rectangle narrowed, Crowd crowd) {
        for (int part = 0; part < crowd.parts; part++) {
            double dx =
                    Math.max(0, narrowed.minX() - crowd.left[part]) - Math.max(0, crowd.right[part] - narrowed.maxX());
            double dy =
                    Math.max(0, narrowed.minY() - crowd.low[part]) - Math.max(0, crowd.high[part] - narrowed.maxY());
            crowd.lay(part, crowd.turned[part].angle, crowd.x[part] + dx, crowd.y[part] + dy);
        }
    }
}
