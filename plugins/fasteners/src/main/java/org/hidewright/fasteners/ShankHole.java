package org.hidewright.fasteners;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * How wide a round hole is for what goes through it: what is wanted, and between which ends it still works.
 *
 * @param wanted what a maker would cut could they choose
 * @param least narrower than this it does not let the shank through, or only with force
 * @param most wider than this the shank stands loose and the head or cap sinks
 */
record ShankHole(Length shank, Length wanted, Length least, Length most, Formula by) {
    static final Formula FINE = Formula.of("hole-fine", "h = d + c", Origins.ISO_273);
    static final Formula EXACT = Formula.of("hole-exact", "h = d", Origins.HOLE_HABIT);
    static final Formula LEAST = Formula.of("hole-least", "a = d - s", Origins.HOLE_HABIT);
    static final Formula MOST = Formula.of("hole-most", "b = d + C", Origins.ISO_273);
    static final List<Formula> FORMULAS = List.of(FINE, EXACT, LEAST, MOST);

    /** A barrel that is rolled over holds best in a hole that is no wider than itself (common practice, 0 to 0.3 mm less). */
    private static final Length BARREL_CLOSES = Length.ofMm(0.3);

    /** For a shank that stands in the hole, as of rivets, posts and screws. */
    static ShankHole of(Length shank, Temper temper) {
        boolean firm = temper == Temper.FIRM;
        return new ShankHole(
                shank,
                firm ? ClearanceHoles.fine(shank) : shank,
                shank.minus(temper.closes()),
                ClearanceHoles.medium(shank),
                firm ? FINE : EXACT);
    }

    /** For a thin barrel that is rolled over behind the leather, as of an eyelet. */
    static ShankHole ofBarrel(Length barrel) {
        return new ShankHole(barrel, barrel, barrel.minus(BARREL_CLOSES), barrel, EXACT);
    }

    boolean suits(Length hole) {
        return hole.mm() >= least.mm() - 1e-9 && hole.mm() <= most.mm() + 1e-9;
    }

    /** Of those that suit the one nearest to what is wanted, of two as near the narrower: a hole can be opened. */
    Optional<Length> nearest(List<Length> punches) {
        return punches.stream().filter(this::suits).min(byDistance());
    }

    /** The nearest whether it suits or not. */
    Optional<Length> nearestAtAll(List<Length> punches) {
        return punches.stream().min(byDistance());
    }

    private Comparator<Length> byDistance() {
        return Comparator.<Length>comparingLong(hole -> Math.round(Math.abs(hole.mm() - wanted.mm()) * 1e6))
                .thenComparingDouble(Length::mm);
    }

    Source source() {
        return by.source();
    }

    void takeDown(Working working) {
        if (by == FINE) {
            working.step(FINE, wanted, "d", shank, "c", wanted.minus(shank));
        } else {
            working.step(EXACT, wanted, "d", shank);
        }
        working.step(LEAST, least, "d", shank, "s", shank.minus(least));
        working.step(MOST, most, "d", shank, "C", most.minus(shank));
    }
}
