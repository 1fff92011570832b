package org.hidewright.layout.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Turns the parts of a sheet to the direction that is asked for where they may lie askew: all at once, and where they do not come apart so
 * one after another, as many as do. None goes beyond the box that was about all before.
 */
final class Straightening {
    /** An angle off by less, in radians, is straight: no maker cuts to a thousandth of a degree. */
    private static final double STRAIGHT = Math.toRadians(1e-3);

    /** So many rounds without gain end an attempt; few for one part, since there may be many. Tried on straps beside pockets. */
    private static final int STALL_OF_ALL = 60;

    private static final int STALL_OF_ONE = 8;

    private final Form[] forms;
    private final ClosePairs pairs;
    private final Ground whole;
    private final int sheet;
    private final FullSize full;
    private final SplittableRandom random;
    private final Halt halt;
    private long tries;

    Straightening(FullSize full, ClosePairs pairs, int sheet, SplittableRandom random, Halt halt) {
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

    /**
     * @param stack the parts of the sheet
     * @return the parts less askew, or the stack itself where none could be turned
     */
    Stack straighter(Stack stack) {
        List<Integer> askew = askew(stack, new boolean[stack.parts().size()]);
        if (askew.isEmpty() || halt.spent(tries) >= 1) {
            return stack;
        }
        boolean[] straight = new boolean[stack.parts().size()];
        Arrays.fill(straight, true);
        Stack all = separated(stack, straight, STALL_OF_ALL);
        return all == stack ? oneByOne(stack) : all;
    }

    private Stack oneByOne(Stack stack) {
        boolean[] straight = new boolean[stack.parts().size()];
        Stack best = stack;
        for (Integer part : askew(stack, straight)) {
            if (halt.spent(tries) >= 1) {
                break;
            }
            straight[part] = true;
            Stack turned = separated(best, straight, STALL_OF_ONE);
            straight[part] = turned != best;
            best = turned;
        }
        return best;
    }

    /** Those that lie askew and are not said to be straight, the largest first. */
    private List<Integer> askew(Stack stack, boolean[] straight) {
        List<Integer> askew = new ArrayList<>();
        for (int part = 0; part < straight.length; part++) {
            if (!straight[part] && form(stack, part).turning.askew(stack.places().angle[part]) > STRAIGHT) {
                askew.add(part);
            }
        }
        askew.sort((one, other) -> Double.compare(form(stack, other).area, form(stack, one).area));
        return askew;
    }

    private Form form(Stack stack, int part) {
        return forms[stack.parts().get(part)];
    }

    /** The parts with some of them straight, or the stack itself where they do not come apart, or the others lie more askew for it. */
    private Stack separated(Stack stack, boolean[] straight, int stall) {
        Crowd crowd = new Crowd(new Narrowed(whole, box(stack)), formsOf(stack, straight), pairs);
        for (int part = 0; part < crowd.parts; part++) {
            double angle = stack.places().angle[part];
            crowd.lay(
                    part,
                    straight[part] ? form(stack, part).turning.straight(angle) : angle,
                    stack.places().x[part],
                    stack.places().y[part]);
        }
        crowd.measureAll();
        Seeker seeker = new Seeker(crowd, random);
        long from = tries;
        double rest = new Separation(crowd, seeker, random, () -> halt.spent(from + seeker.tries()) >= 1).run(1, stall);
        tries += seeker.tries();
        if (rest > 0) {
            return stack;
        }
        return full.stack(sheet, stack.parts(), crowd.places(), random)
                .filter(turned -> sum(turned) < sum(stack))
                .orElse(stack);
    }

    /** About all parts: where none goes beyond, no less is left in one piece. */
    private Rectangle box(Stack stack) {
        double left = Double.POSITIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int part = 0; part < stack.parts().size(); part++) {
            Turned as = new Turned(form(stack, part));
            as.turn(stack.places().angle[part]);
            left = Math.min(left, as.minX + stack.places().x[part]);
            low = Math.min(low, as.minY + stack.places().y[part]);
            right = Math.max(right, as.maxX + stack.places().x[part]);
            high = Math.max(high, as.maxY + stack.places().y[part]);
        }
        return new Rectangle(left, low, right, high);
    }

    /** The forms of a stack, those that are to be straight in the directions alone that are asked for. */
    private Form[] formsOf(Stack stack, boolean[] straight) {
        Form[] here = new Form[straight.length];
        for (int part = 0; part < here.length; part++) {
            here[part] = straight[part] ? form(stack, part).straightened() : form(stack, part);
        }
        return here;
    }

    /** How far all are askew, each times its area. */
    private double sum(Stack stack) {
        double sum = 0;
        for (int part = 0; part < stack.parts().size(); part++) {
            Form form = form(stack, part);
            sum += form.area * form.turning.askew(stack.places().angle[part]);
        }
        return sum;
    }
}
