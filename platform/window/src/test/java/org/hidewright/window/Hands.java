package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.fail;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** The pointer and the keyboard of the screen that a window is on. */
final class Hands {
    private final RealWindow real;

    Hands(RealWindow real) {
        this.real = real;
    }

    /** Drags with the pointer of the screen, from a place on one control to the middle of another. */
    void drag(Control from, int x, int y, Control to) {
        pointer(SWT.MouseMove, from.toDisplay(x, y));
        pointer(SWT.MouseDown, null);
        Point begin = from.toDisplay(x, y);
        Point end = to.toDisplay(to.getSize().x / 2, to.getSize().y / 2);
        int steps = 12;
        for (int i = 1; i <= steps; i++) {
            pointer(
                    SWT.MouseMove,
                    new Point(begin.x + (end.x - begin.x) * i / steps, begin.y + (end.y - begin.y) * i / steps));
        }
        pointer(SWT.MouseMove, end);
        pointer(SWT.MouseUp, null);
    }

    /** Moves the pointer of the screen to a place on a control, from beside it. */
    void point(Control control, int x, int y) {
        Point at = control.toDisplay(x, y);
        pointer(SWT.MouseMove, new Point(at.x - 1, at.y));
        pointer(SWT.MouseMove, at);
        real.until(() -> real.display().getCursorControl() == control);
        real.settle();
    }

    /** The screen answers in its own time. */
    private void pointer(int type, Point at) {
        Event event = new Event();
        event.type = type;
        event.button = 1;
        if (at != null) {
            event.x = at.x;
            event.y = at.y;
        }
        real.display().post(event);
        long end = System.nanoTime() + 60_000_000;
        real.until(() -> System.nanoTime() > end);
    }

    /** Presses a key on the keyboard of the screen. */
    void key(int key) {
        post(SWT.KeyDown, key);
        post(SWT.KeyUp, key);
        answered();
    }

    void tab() {
        key(SWT.TAB);
    }

    /** Presses a letter while Alt is held. */
    void alt(char letter) {
        post(SWT.KeyDown, SWT.ALT);
        post(SWT.KeyDown, letter);
        post(SWT.KeyUp, letter);
        post(SWT.KeyUp, SWT.ALT);
        answered();
    }

    /** Presses a letter while the key for commands is held. */
    void control(char letter) {
        post(SWT.KeyDown, SWT.MOD1);
        post(SWT.KeyDown, letter);
        post(SWT.KeyUp, letter);
        post(SWT.KeyUp, SWT.MOD1);
        answered();
    }

    /** Types into the field that has the focus. */
    void write(String text) {
        text.chars().forEach(letter -> {
            post(SWT.KeyDown, letter);
            post(SWT.KeyUp, letter);
        });
        answered();
    }

    private void post(int type, int key) {
        Event event = new Event();
        event.type = type;
        boolean named = key < ' ' || (key & (SWT.KEYCODE_BIT | SWT.MODIFIER_MASK)) != 0;
        event.keyCode = named ? key : 0;
        event.character = named ? 0 : (char) key;
        if (!real.display().post(event)) {
            fail("the screen takes no keys");
        }
    }

    /** The screen sends keys in its own time. */
    private void answered() {
        long end = System.nanoTime() + 150_000_000;
        real.until(() -> System.nanoTime() > end);
        real.settle();
    }
}
