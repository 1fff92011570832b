package org.hidewright.window.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.hidewright.api.drawing.Point;
import org.hidewright.window.look.Inks;

/** Two places of a drawing that were clicked, and how far they are from each other. */
final class Measuring {
    private final List<Point> places = new ArrayList<>();
    private int drawing;

    void clear() {
        places.clear();
    }

    /** Takes a place; the third begins anew, and so does one of another drawing. */
    void take(int on, Point place) {
        if (places.size() == 2 || on != drawing) {
            places.clear();
        }
        drawing = on;
        places.add(place);
    }

    boolean isWhole() {
        return places.size() == 2;
    }

    /** How far, and how far across and up. */
    String told(DoubleFunction<String> lengths) {
        Point from = places.get(0);
        Point to = places.get(1);
        return lengths.apply(from.distanceTo(to)) + "  (" + lengths.apply(Math.abs(to.x() - from.x())) + " → , "
                + lengths.apply(Math.abs(to.y() - from.y())) + " ↑)";
    }

    void draw(GC gc, Inks inks, List<Placed> drawings, DoubleFunction<String> lengths) {
        if (places.isEmpty() || drawing >= drawings.size()) {
            return;
        }
        Sheet sheet = drawings.get(drawing).sheet();
        gc.setForeground(inks.color(inks.palette().accent()));
        gc.setBackground(inks.color(inks.palette().accent()));
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(2);
        for (Point place : places) {
            gc.fillOval((int) sheet.x(place) - 4, (int) sheet.y(place) - 4, 8, 8);
        }
        if (isWhole()) {
            Point from = places.get(0);
            Point to = places.get(1);
            gc.drawLine((int) sheet.x(from), (int) sheet.y(from), (int) sheet.x(to), (int) sheet.y(to));
            gc.setFont(inks.font(1, true));
            gc.setBackground(inks.color(inks.palette().paper()));
            gc.drawText(
                    lengths.apply(from.distanceTo(to)),
                    (int) ((sheet.x(from) + sheet.x(to)) / 2) + 6,
                    (int) ((sheet.y(from) + sheet.y(to)) / 2) + 6,
                    false);
        }
    }
}
