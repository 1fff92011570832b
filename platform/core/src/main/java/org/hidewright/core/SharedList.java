package org.hidewright.core;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.Collection;
import java.util.RandomAccess;
import java.util.function.IntConsumer;

/**
 * An immutable list in pages. A changed one shares every page that was not touched with the list it came from, so that a
 * change costs a page, and the difference of two lists is found without looking at what they share.
 */
public final class SharedList<T> extends AbstractList<T> implements RandomAccess {
    private static final int PAGE = 256;

    private final Object[][] pages;
    private final int size;

    private SharedList(Object[][] pages, int size) {
        this.pages = pages;
        this.size = size;
    }

    public static <T> SharedList<T> of(Collection<? extends T> items) {
        Object[] all = items.toArray();
        Object[][] pages = new Object[(all.length + PAGE - 1) / PAGE][];
        for (int page = 0; page < pages.length; page++) {
            pages[page] = Arrays.copyOfRange(all, page * PAGE, Math.min(all.length, (page + 1) * PAGE));
        }
        return new SharedList<>(pages, all.length);
    }

    @Override
    @SuppressWarnings("unchecked") // only a T is ever put in
    public T get(int index) {
        return (T) pages[index / PAGE][index % PAGE];
    }

    @Override
    public int size() {
        return size;
    }

    /** Names every index at which another list of the same size has another object. */
    public void differences(SharedList<T> other, IntConsumer found) {
        for (int page = 0; page < pages.length; page++) {
            if (pages[page] != other.pages[page]) {
                for (int i = 0; i < pages[page].length; i++) {
                    if (pages[page][i] != other.pages[page][i]) {
                        found.accept(page * PAGE + i);
                    }
                }
            }
        }
    }

    /** A list to be changed, that starts out as this one. */
    public Draft<T> draft() {
        return new Draft<>(this);
    }

    /** A list while it is changed; for one thread. */
    public static final class Draft<T> {
        private final SharedList<T> before;
        private SharedList<T> now;

        private Draft(SharedList<T> before) {
            this.before = before;
            this.now = new SharedList<>(before.pages.clone(), before.size);
        }

        public T get(int index) {
            return now.get(index);
        }

        public Draft<T> set(int index, T item) {
            int page = index / PAGE;
            if (now.pages[page] == before.pages[page]) {
                now.pages[page] = now.pages[page].clone();
            }
            now.pages[page][index % PAGE] = item;
            return this;
        }

        /** The changed list; nothing can be changed by the draft from then on. */
        public SharedList<T> done() {
            SharedList<T> done = now;
            now = null;
            return done;
        }
    }
}
