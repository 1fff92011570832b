package org.hidewright.fasteners;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;

/**
 * Which post, barrel or shank suits a stack from its thinnest to its thickest place: it must reach through the thickest, and
 * not stand out too far at the thinnest.
 *
 * @param atLeast how far it stands out of the leather at least; below nothing where it may end inside
 * @param atMost how far at most; empty where what is over is clipped off
 */
record PostLength(Stack stack, Length atLeast, Optional<Length> atMost, Source source) {
    static final Formula LEAST = Formula.of("post-least", "L = T + a", Origins.POST_HABIT);
    static final Formula MOST = Formula.of("post-most", "M = t + b", Origins.POST_HABIT);
    static final List<Formula> FORMULAS = List.of(LEAST, MOST);

    static final NoticeKind TOO_SHORT = NoticeKind.check("post-too-short");
    static final NoticeKind TOO_LONG = NoticeKind.check("post-too-long");
    static final NoticeKind NO_ONE_LENGTH = NoticeKind.check("post-no-one-length");
    static final NoticeKind NONE_SUITS = NoticeKind.check("post-none-suits");
    static final NoticeKind ENDS_SWAPPED = NoticeKind.stop("stack-ends-swapped");
    static final List<NoticeKind> NOTICES = List.of(TOO_SHORT, TOO_LONG, NO_ONE_LENGTH, NONE_SUITS, ENDS_SWAPPED);

    static PostLength of(Stack stack, double atLeastMm, double atMostMm, Source source) {
        return new PostLength(stack, Length.ofMm(atLeastMm), Optional.of(Length.ofMm(atMostMm)), source);
    }

    /** One that is clipped off to length. */
    static PostLength clipped(Stack stack, Length atLeast, Source source) {
        return new PostLength(stack, atLeast, Optional.empty(), source);
    }

    /** The notice that refuses a stack whose thin end is the thicker. */
    static Optional<Notice> swapped(Stack stack, String place) {
        return stack.thinnest().mm() > stack.thickest().mm()
                ? Optional.of(ENDS_SWAPPED.at(place, stack.thinnest(), stack.thickest()))
                : Optional.empty();
    }

    /** The shortest that reaches at the thickest place. */
    Length shortest() {
        return stack.thickest().plus(atLeast);
    }

    /** The longest that can be set at the thinnest place. */
    Optional<Length> longest() {
        return atMost.map(stack.thinnest()::plus);
    }

    boolean suits(Length post) {
        return post.mm() >= shortest().mm() - 1e-9
                && longest().stream().allMatch(longest -> post.mm() <= longest.mm() + 1e-9);
    }

    /** Of those that suit at both ends the one nearest to the middle of what is wanted, of two as near the shorter. */
    Optional<Length> choose(List<Length> posts) {
        double best = longest()
                .map(longest -> (shortest().mm() + longest.mm()) / 2)
                .orElse(shortest().mm());
        return posts.stream()
                .filter(this::suits)
                .min(Comparator.<Length>comparingLong(post -> Math.round(Math.abs(post.mm() - best) * 1e6))
                        .thenComparingDouble(Length::mm));
    }

    List<PostRow> rows(List<Length> posts) {
        List<PostRow> rows = new ArrayList<>();
        posts.stream()
                .distinct()
                .sorted()
                .forEach(post -> rows.add(new PostRow(
                        "p" + (rows.size() + 1), post, atMost.map(post::minus), post.minus(atLeast), suits(post))));
        return rows;
    }

    void takeDown(Working working) {
        working.step(LEAST, shortest(), "T", stack.thickest(), "a", atLeast);
        longest().ifPresent(longest -> working.step(MOST, longest, "t", stack.thinnest(), "b", atMost.orElseThrow()));
    }

    /** What is wrong with the lengths there are. */
    List<Notice> check(List<Length> posts, String place) {
        Optional<Length> longest = longest();
        if (longest.isPresent() && shortest().mm() > longest.get().mm() + 1e-9) {
            return List.of(NO_ONE_LENGTH.at(
                    place, shortest(), longest.get(), stack.thickest().minus(stack.thinnest())));
        } else if (posts.isEmpty() || choose(posts).isPresent()) {
            return List.of();
        }
        Length last = posts.stream().max(Length::compareTo).orElseThrow();
        if (last.mm() < shortest().mm()) {
            return List.of(TOO_SHORT.at(place, last, stack.thickest(), shortest()));
        }
        Length first = posts.stream().min(Length::compareTo).orElseThrow();
        return List.of(
                first.mm() > longest.orElseThrow().mm()
                        ? TOO_LONG.at(place, first, stack.thinnest(), longest.get())
                        : NONE_SUITS.at(place, shortest(), longest.get()));
    }
}
