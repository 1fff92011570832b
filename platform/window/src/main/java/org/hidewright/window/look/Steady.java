package org.hidewright.window.look;

import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * What the keyboard works on stays where it is on the screen, and with it what lies below: what comes or goes above it moves
 * the board instead.
 */
public final class Steady {
    private Steady() {}

    /** Lays a board out anew, and moves it so that what has the focus on it lies where it lay before. */
    public static void keep(ScrolledComposite board, Runnable laysOut) {
        Control focus = focus(board);
        int before = focus == null ? 0 : top(focus, board);
        laysOut.run();
        if (focus == null || focus.isDisposed()) {
            return;
        }
        int origin = Math.max(0, board.getOrigin().y + top(focus, board) - before);
        if (origin != board.getOrigin().y) {
            int least = origin + board.getClientArea().height;
            if (board.getMinHeight() < least) {
                board.setMinHeight(least); // its end may lie higher than it did, and is not pulled down for it
            }
            board.setOrigin(board.getOrigin().x, origin);
        }
    }

    private static int top(Control control, ScrolledComposite board) {
        return control.getDisplay().map(control, board, 0, 0).y;
    }

    private static Control focus(ScrolledComposite board) {
        Control focus = board.getDisplay().getFocusControl();
        Composite round = focus == null ? null : focus.getParent();
        while (round != null && round != board) {
            round = round.getParent();
        }
        return round == null ? null : focus;
    }
}
