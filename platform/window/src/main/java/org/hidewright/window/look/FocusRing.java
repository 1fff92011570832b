package org.hidewright.window.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;

/** A frame round what is painted by ourselves, while the keyboard works on it; and the way on from it with the key Tab. */
public final class FocusRing {
    private static final int WIDTH = 2;

    private FocusRing() {}

    /** To be called once all else that paints on it has been added. */
    public static void on(Canvas canvas, Inks inks) {
        canvas.addPaintListener(event -> {
            if (canvas.isFocusControl()) {
                draw(event.gc, inks, canvas.getSize());
            }
        });
        Spoken.hides(canvas);
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        // what hears keys is not left with Tab unless it says so
        canvas.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
                event.doit = true;
            }
        });
    }

    private static void draw(GC gc, Inks inks, Point size) {
        gc.setForeground(inks.color(inks.palette().accent()));
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(WIDTH);
        gc.drawRectangle(WIDTH / 2, WIDTH / 2, size.x - WIDTH, size.y - WIDTH);
    }
}
