package org.hidewright.layout.engine;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Finds the parts that have no room on any sheet although nothing else lies there: no search helps them. */
final class FitsNowhere {
    /** A part that has a sheet to itself may fit it tightly. */
    private static final int DRAWS = 30_000;

    private final Form[] forms;
    private final List<Ground> grounds;
    private final SplittableRandom random;
    private long tries;

    FitsNowhere(Form[] forms, List<Ground> grounds, SplittableRandom random) {
        this.forms = forms;
        this.grounds = grounds;
        this.random = random;
    }

    long tries() {
        return tries;
    }

    /** Those of the parts that fit nowhere. */
    List<Integer> of(List<Integer> parts) {
        Map<Form, Boolean> known = new IdentityHashMap<>();
        return parts.stream()
                .filter(part -> known.computeIfAbsent(forms[part], this::fitsNowhere))
                .toList();
    }

    private boolean fitsNowhere(Form form) {
        return grounds.stream().distinct().noneMatch(ground -> {
            Crowd alone = new Crowd(ground, new Form[] {form});
            double off = form.diameter;
            alone.lay(0, form.turning.from(0), ground.minX() - 2 * off, ground.minY() - 2 * off);
            LeftmostPlace leftmost = new LeftmostPlace(alone, random);
            boolean found = leftmost.settle(0, Double.MAX_VALUE, DRAWS);
            tries += leftmost.tries();
            return found;
        });
    }
}
