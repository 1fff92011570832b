package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * A fitting that stands on one post in one hole, from what is asked to what is answered.
 *
 * @param place key of the question about the post, where what is wrong with it is told
 * @param set whether it is closed with a setter of its own
 */
record Posting(
        String place,
        Shank shank,
        List<Length> lengths,
        ShankHole hole,
        PostLength fit,
        HoleMade made,
        Use use,
        boolean set) {
    static final Formula CLIPPED = Formula.of("post-clipped", "c = l - (t + a)", Origins.GEOMETRY);
    static final List<Formula> FORMULAS = Stream.of(Holes.FORMULAS, PostLength.FORMULAS, List.of(CLIPPED))
            .flatMap(List::stream)
            .toList();
    static final List<NoticeKind> NOTICES = Stream.of(
                    Holes.NOTICES, PostLength.NOTICES, Cautions.KINDS, List.of(Cautions.NO_SETTER, Cautions.LINES))
            .flatMap(List::stream)
            .toList();
    static final List<Source> SOURCES = List.of(Origins.HOLE_HABIT, Origins.POST_HABIT);

    Outcome<Posted> work(Working working) {
        Optional<Notice> swapped = PostLength.swapped(fit.stack(), "stack");
        if (swapped.isPresent()) {
            return Outcome.refuse(swapped.get());
        }
        List<Notice> notices = new ArrayList<>();
        Holes holes = new Holes(made, use, working, notices);
        Optional<Notice> kerf = holes.add(place, hole, shank.head());
        if (kerf.isPresent()) {
            return Outcome.refuse(kerf.get());
        }
        working.source("hole", hole.source());
        fit.takeDown(working);
        List.of("post", "post-from", "post-to").forEach(answer -> working.source(answer, fit.source()));
        check(notices);
        Cautions.tell(use, made, notices);
        Optional<Length> post = fit.choose(lengths);
        Optional<Length> clipped =
                fit.longest().isEmpty() ? post.map(length -> clipped(length, working)) : Optional.empty();
        List<TestHole> tests = TestHole.around(hole, holes.punches());
        return Outcome.of(
                new Posted(
                        hole.wanted(),
                        post,
                        fit.shortest(),
                        fit.longest(),
                        clipped,
                        holes.rows(),
                        fit.rows(lengths),
                        tests,
                        TestHole.drawn(tests)),
                notices);
    }

    /** What is wrong with the post, its setter or its head. */
    void check(List<Notice> notices) {
        notices.addAll(fit.check(lengths, place + ".post-length"));
        if (set) {
            Cautions.setter(shank, place).ifPresent(notices::add);
        }
        Cautions.lines(shank, place).ifPresent(notices::add);
    }

    /** Most is clipped off where the leather is thinnest. */
    private Length clipped(Length length, Working working) {
        Length over = length.minus(fit.stack().thinnest()).minus(fit.atLeast());
        working.step(CLIPPED, over, "l", length, "t", fit.stack().thinnest(), "a", fit.atLeast());
        return over;
    }
}
