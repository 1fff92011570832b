package org.hidewright.window.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Function;

/**
 * Something as it is, as it was before each change, and as it was before each change was taken back; without limit, since
 * it is for what shares what was not changed, or is as small as a workshop. Not for use by several threads.
 *
 * @param <S> what is changed
 */
public final class History<S> {
    private final Deque<S> before = new ArrayDeque<>();
    private final Deque<S> after = new ArrayDeque<>();
    private final Function<S, String> text;
    private S now;
    private String spot = "";
    private long steps;

    /** @param text what tells one from another */
    public History(S opened, Function<S, String> text) {
        this.text = text;
        this.now = opened;
    }

    public S now() {
        return now;
    }

    /**
     * A change. Changes at one spot that follow each other, such as letters typed into one field, are taken back together.
     *
     * @param at where it was made; empty for one that stands alone
     */
    public void change(S changed, String at) {
        if (text.apply(changed).equals(text.apply(now))) {
            return;
        }
        if (at.isEmpty() || !at.equals(spot) || before.isEmpty()) {
            before.push(now);
            steps++;
        }
        after.clear();
        now = changed;
        spot = at;
    }

    /** Completes what was changed last: it is taken back together with it. */
    public void amend(S whole) {
        now = whole;
    }

    /** Says that what comes next is another change, wherever it is made. */
    public void settle() {
        spot = "";
    }

    /**
     * What was changed last, or is being changed.
     *
     * @param number another one for each change that is taken back by itself
     * @param open whether more may come to it, as while a field is typed into
     */
    public record Step(long number, boolean open) {}

    public Step step() {
        return new Step(steps, !spot.isEmpty());
    }

    public boolean canUndo() {
        return !before.isEmpty();
    }

    public boolean canRedo() {
        return !after.isEmpty();
    }

    /** Takes the last change back, if there is one. */
    public void undo() {
        if (canUndo()) {
            after.push(now);
            now = before.pop();
        }
        settle();
    }

    /** Makes again what was taken back last. */
    public void redo() {
        if (canRedo()) {
            before.push(now);
            now = after.pop();
        }
        settle();
    }
}
