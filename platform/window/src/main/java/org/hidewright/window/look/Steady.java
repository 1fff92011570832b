package org.hidewright.window.look;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;

/**
 * What the maker is at stays where it is on the screen, and with it what lies beside and below: what comes or goes above it
 * moves the board instead. That is what the keyboard works on, or what the pointer is at once it has moved there since the last key:
 * a board that comes to be beneath a pointer at rest begins at its beginning.
 */
public final class Steady {
    /** What the pointer moved over last, if no key came after it. */
    private static final String POINTS = "hidewright.points";

    private static final String WATCHED = "hidewright.watched";
    /** What a board is being laid out with: it may have to be once more, since a bar to scroll by takes of its width. */
    private static final String LAYING = "hidewright.laying";

    private static final int ROUNDS = 3;

    private Steady() {}

    /** Lays a board out. */
    public interface Laying {
        /**
         * Lays it out.
         *
         * @param free above all, since a board cannot be moved below its beginning
         * @param least how high it has to be, so that it can be moved up as far as it is
         */
        void lay(int free, int least);
    }

    private record Room(int free, int least) {}

    /** Lays a board out anew, and moves it so that what the maker is at lies where it lay before. */
    public static void keep(ScrolledComposite board, Laying laying) {
        watch(board.getDisplay());
        if (board.getData(LAYING) instanceof Room room) {
            laying.lay(room.free(), room.least());
            return;
        }
        Control kept = kept(board);
        if (kept == null || !isSeen(kept, board)) {
            lay(board, laying, new Room(0, 0));
            return;
        }
        int before = top(kept, board);
        Room room = new Room(0, board.getOrigin().y + board.getClientArea().height);
        lay(board, laying, room);
        for (int i = 0; i < ROUNDS && isThere(kept) && top(kept, board) != before; i++) {
            int origin = board.getOrigin().y - room.free() + top(kept, board) - before;
            room = new Room(Math.max(0, -origin), Math.max(0, origin) + board.getClientArea().height);
            lay(board, laying, room);
            board.setOrigin(board.getOrigin().x, Math.max(0, origin));
        }
    }

    /** Whether any of it lies where the board shows it: what a board holds that has not got its size yet lies anywhere. */
    private static boolean isSeen(Control control, ScrolledComposite board) {
        Rectangle place = control.getDisplay().map(control.getParent(), board, control.getBounds());
        return place.intersects(board.getClientArea());
    }

    private static boolean isThere(Control kept) {
        return !kept.isDisposed() && kept.isVisible();
    }

    private static void lay(ScrolledComposite board, Laying laying, Room room) {
        board.setData(LAYING, room);
        laying.lay(room.free(), room.least());
        board.setData(LAYING, null);
    }

    /** From the first time on it is known whether the pointer or a key was moved last. */
    private static void watch(Display display) {
        if (display.getData(WATCHED) == null) {
            display.setData(WATCHED, true);
            display.addFilter(SWT.MouseMove, event -> display.setData(POINTS, event.widget));
            display.addFilter(SWT.KeyDown, event -> display.setData(POINTS, null));
            // what is dragged is let go where the pointer comes to lie, which no board may choose
            display.addFilter(SWT.MouseDown, event -> display.setData(POINTS, null));
        }
    }

    private static Control kept(ScrolledComposite board) {
        boolean points = board.getDisplay().getData(POINTS) instanceof Control over && isIn(over, board);
        Control pointed = points ? pointed(board) : null;
        return pointed == null ? focus(board) : pointed;
    }

    private static int top(Control control, ScrolledComposite board) {
        return control.getDisplay().map(control, board, 0, 0).y;
    }

    private static Control focus(ScrolledComposite board) {
        Control focus = board.getDisplay().getFocusControl();
        return focus != board && isIn(focus, board) ? focus : null;
    }

    private static boolean isIn(Control control, ScrolledComposite board) {
        Control at = control;
        while (at != null && !at.isDisposed() && at != board) {
            at = at.getParent();
        }
        return at == board;
    }

    /** What can be clicked nearest to the pointer; null where the pointer is elsewhere. */
    private static Control pointed(ScrolledComposite board) {
        Control over = board.getDisplay().getCursorControl();
        if (!isIn(over, board)) {
            return null;
        }
        Point at = board.getDisplay().getCursorLocation();
        for (Control round = over; round != board; round = round.getParent()) {
            List<Control> found = new ArrayList<>();
            collect(round, found);
            if (!found.isEmpty()) {
                return found.stream()
                        .min(Comparator.comparing(control -> distance(control, at)))
                        .get();
            }
        }
        return null;
    }

    private static void collect(Control control, List<Control> found) {
        boolean clicked = control instanceof Text
                || control instanceof Combo
                || control instanceof Button
                || control instanceof Link;
        if (clicked && control.isVisible()) {
            found.add(control);
        } else if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                collect(child, found);
            }
        }
    }

    private static double distance(Control control, Point at) {
        Rectangle place = control.getDisplay().map(control.getParent(), null, control.getBounds());
        return Math.hypot(outside(at.x, place.x, place.width), outside(at.y, place.y, place.height));
    }

    private static int outside(int at, int from, int length) {
        return Math.max(0, Math.max(from - at, at - from - length));
    }
}
