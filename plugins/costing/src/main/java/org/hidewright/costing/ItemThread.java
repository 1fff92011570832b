package org.hidewright.costing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;

/** Thread for the saddle stitches of an item, as the calculator {@code thread-length} cuts it with its presets. */
final class ItemThread {
    static final Formula RATIO = Formula.of("thread-ratio", "R = 2 · (1 + T / p)", Origins.CONSUMPTION);
    static final Formula ROW =
            Formula.of("thread-of-row", "C = R · L + m · (2 · e + b · 2 · (p + T))", Origins.CONSUMPTION);
    static final Formula BY_HABIT = Formula.of("thread-by-habit", "C = 4 · L + m · 2 · e", Origins.TIMES_HABIT);
    static final Formula ALL = Formula.of("item-thread", "F = Σ(j · C)", Origins.ARITHMETIC);

    static final NoticeKind HABIT = NoticeKind.note("item-thread-by-habit");

    /** Times the seam, at most (common practice). */
    private static final double HABIT_TIMES = 4;

    /** Sewn over again at the end of a thread (common practice). */
    private static final int BACKSTITCHES = 3;

    /** Millimetres of seam that are sewn with one thread, at most (common practice). */
    private static final double LONGEST_SEWN = 2000;

    private final Length tail;
    private final Working working;
    private final List<String> guessed = new ArrayList<>();
    private double all;

    private ItemThread(Length tail, Working working) {
        this.tail = tail;
        this.working = working;
    }

    /** Thread in one piece with its tails; what was taken by habit is told. */
    static Length of(Item item, Length tail, Working working, List<Notice> notices) {
        ItemThread thread = new ItemThread(tail, working);
        SewnRow.of(item).forEach(thread::row);
        Length all = Length.ofMm(thread.all);
        if (thread.all > 0) {
            working.step(ALL, all);
        }
        thread.told().ifPresent(notices::add);
        return all;
    }

    private void row(SewnRow row) {
        Length seam = Length.ofMm(row.length());
        int most = Math.max(1, (int) Math.floor(LONGEST_SEWN / row.pitch() + 1e-9));
        int threads = (row.stitches() + most - 1) / most;
        double cut;
        if (row.spaced() && row.stack().isPresent()) {
            double pitch = row.pitch();
            double stack = row.stack().getAsDouble();
            double ratio = 2 * (1 + stack / pitch);
            cut = ratio * row.length() + threads * (2 * tail.mm() + BACKSTITCHES * 2 * (pitch + stack));
            working.step(RATIO, ratio, "T", Length.ofMm(stack), "p", Length.ofMm(pitch));
            working.step(
                    ROW,
                    Length.ofMm(cut),
                    "R",
                    ratio,
                    "L",
                    seam,
                    "m",
                    threads,
                    "e",
                    tail,
                    "b",
                    BACKSTITCHES,
                    "p",
                    Length.ofMm(pitch),
                    "T",
                    Length.ofMm(stack));
        } else {
            guessed.add(row.id());
            cut = HABIT_TIMES * row.length() + threads * 2 * tail.mm();
            working.step(BY_HABIT, Length.ofMm(cut), "L", seam, "m", threads, "e", tail);
        }
        all += cut * row.times();
    }

    private Optional<Notice> told() {
        return guessed.isEmpty() ? Optional.empty() : Optional.of(HABIT.at("item", String.join(", ", guessed)));
    }
}
