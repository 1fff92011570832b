package org.hidewright.layout.engine;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * What is done to a layout when no sheet can be saved any more: the parts of the sheet that carries least are drawn together, so that most is
 * left of it in one piece, and parts that lie askew are turned to the direction that is asked for.
 */
final class Finishing {
    /** The share of the budget by which parts are drawn together; what is left of it turns them. */
    private static final double GATHERED = 0.95;

    private final FullSize full;
    private final ClosePairs pairs;
    private final SplittableRandom random;
    private final Halt halt;
    private final Runnable told;
    private long tries;

    /**
     * @param halt by the places tried here alone
     * @param told after each change
     */
    Finishing(FullSize full, ClosePairs pairs, SplittableRandom random, Halt halt, Runnable told) {
        this.full = full;
        this.pairs = pairs;
        this.random = random;
        this.halt = halt;
        this.told = told;
    }

    long tries() {
        return tries;
    }

    /** Draws the parts of the sheet that carries least together towards each of its sides, and keeps what leaves most in one piece. */
    void gather(Stack[] stacks) {
        int last = IntStream.range(0, stacks.length)
                .filter(sheet -> stacks[sheet].area() > 0)
                .boxed()
                .min(Comparator.comparingDouble(sheet -> stacks[sheet].area()))
                .orElse(-1);
        if (last < 0) {
            return;
        }
        Stack before = stacks[last];
        Stack best = before;
        Side[] sides = Side.values();
        int first = random.nextInt(sides.length);
        for (int turn = 0; turn < sides.length; turn++) {
            double spent = halt.spent(tries);
            double until = spent + (GATHERED - spent) / (sides.length - turn);
            stacks[last] = before;
            gather(stacks, last, sides[(first + turn) % sides.length], until);
            if (full.inOnePiece(last, stacks[last]) > full.inOnePiece(last, best)) {
                best = stacks[last];
            }
        }
        stacks[last] = best;
    }

    private void gather(Stack[] stacks, int sheet, Side side, double until) {
        long own = tries;
        Gathering gathering = new Gathering(full, pairs, sheet, side, random, tried -> halt.spent(own + tried) / until);
        while (gathering.mayGoOn()) {
            Stack narrower = gathering.narrower(stacks[sheet]);
            tries = own + gathering.tries();
            if (narrower != stacks[sheet]) {
                stacks[sheet] = narrower;
                told.run();
            }
        }
    }

    /** Turns parts that lie askew to the direction that is asked for, as far as the others let them. */
    void straighten(Stack[] stacks) {
        for (int sheet = 0; sheet < stacks.length; sheet++) {
            long own = tries;
            Straightening straightening =
                    new Straightening(full, pairs, sheet, random, tried -> halt.spent(own + tried));
            Stack straighter = straightening.straighter(stacks[sheet]);
            tries += straightening.tries();
            if (straighter != stacks[sheet]) {
                stacks[sheet] = straighter;
                told.run();
            }
        }
    }
}
