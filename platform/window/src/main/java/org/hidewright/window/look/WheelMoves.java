package org.hidewright.window.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.List;
import org.eclipse.swt.widgets.Listener;

/** The wheel moves a board, also over what would change its answer or stand still; rows that were entered move themselves. */
public final class WheelMoves {
    private final ScrolledComposite board;
    private final Inks inks;

    private WheelMoves(ScrolledComposite board, Inks inks) {
        this.board = board;
        this.inks = inks;
    }

    /** For as long as the board is there. */
    public static void on(ScrolledComposite board, Inks inks) {
        Listener wheel = new WheelMoves(board, inks)::turned;
        board.getDisplay().addFilter(SWT.MouseVerticalWheel, wheel);
        board.addListener(SWT.Dispose, event -> board.getDisplay().removeFilter(SWT.MouseVerticalWheel, wheel));
    }

    private void turned(Event event) {
        boolean takesIt = event.widget instanceof Combo || event.widget instanceof List rows && !rows.isFocusControl();
        if (takesIt && isOn((Control) event.widget)) {
            event.doit = false;
            board.setOrigin(0, Math.max(0, board.getOrigin().y - event.count * inks.em()));
        }
    }

    private boolean isOn(Control control) {
        Composite round = control.getParent();
        while (round != null && round != board) {
            round = round.getParent();
        }
        return round == board;
    }
}
