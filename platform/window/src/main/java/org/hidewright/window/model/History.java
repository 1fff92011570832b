package org.hidewright.window.model;

import java.util.ArrayDeque;
import java.util.Deque;
import org.hidewright.core.project.Project;

/**
 * A project as it is, as it was before each change, and as it was before each change was taken back; without limit, since
 * projects share what was not changed. Not for use by several threads.
 */
public final class History {
    private final Deque<Project> before = new ArrayDeque<>();
    private final Deque<Project> after = new ArrayDeque<>();
    private Project now;
    private String spot = "";

    public History(Project opened) {
        this.now = opened;
    }

    public Project now() {
        return now;
    }

    /**
     * A change. Changes at one spot that follow each other, such as letters typed into one field, are taken back together.
     *
     * @param at where it was made; empty for one that stands alone
     */
    public void change(Project changed, String at) {
        if (changed.text().equals(now.text())) {
            return;
        }
        if (at.isEmpty() || !at.equals(spot) || before.isEmpty()) {
            before.push(now);
        }
        after.clear();
        now = changed;
        spot = at;
    }

    /** Says that what comes next is another change, wherever it is made. */
    public void settle() {
        spot = "";
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
