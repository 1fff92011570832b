package org.hidewright.window.piece;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.hidewright.window.look.Inks;

/** A cross on a drawing that keys move: it points at what the pointer points at for others. */
final class Cross {
    private static final int ARM = 12;

    private boolean shown;
    private int x;
    private int y;

    /** In the middle at first, then where it was. */
    void show(Rectangle area) {
        if (!shown || !area.contains(x, y)) {
            x = area.width / 2;
            y = area.height / 2;
        }
        shown = true;
    }

    void hide() {
        shown = false;
    }

    /** Moves it by a key of arrows; whether it was one. */
    boolean move(int key, int step, Rectangle area) {
        int across = key == SWT.ARROW_LEFT ? -step : key == SWT.ARROW_RIGHT ? step : 0;
        int down = key == SWT.ARROW_UP ? -step : key == SWT.ARROW_DOWN ? step : 0;
        if (across == 0 && down == 0) {
            return false;
        }
        show(area);
        x = Math.max(0, Math.min(area.width - 1, x + across));
        y = Math.max(0, Math.min(area.height - 1, y + down));
        return true;
    }

    int x() {
        return x;
    }

    int y() {
        return y;
    }

    void draw(GC gc, Inks inks) {
        if (shown) {
            gc.setForeground(inks.color(inks.palette().accent()));
            gc.setLineStyle(SWT.LINE_SOLID);
            gc.setLineWidth(2);
            gc.drawLine(x - ARM, y, x + ARM, y);
            gc.drawLine(x, y - ARM, x, y + ARM);
        }
    }
}
