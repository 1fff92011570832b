package org.hidewright.window.piece;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Wrapped;

/** What the numbers in drawings stand for, below all of them: a drawing that is enlarged has its own foot out of sight. */
final class Legend {
    private static final int MARGIN = 12;
    private static final String BETWEEN = "   ";

    private final GC gc;
    private final Inks inks;
    private final Rectangle area;

    Legend(GC gc, Inks inks, Rectangle area) {
        this.gc = gc;
        this.inks = inks;
        this.area = area;
        gc.setFont(inks.font(1, false));
    }

    /** How much of the foot of a view it takes, in pixels. */
    int height(List<Placed> drawings) {
        return lines(drawings).size() * gc.getFontMetrics().getHeight();
    }

    void draw(List<Placed> drawings) {
        gc.setFont(inks.font(1, false));
        List<String> lines = lines(drawings);
        if (lines.isEmpty()) {
            return;
        }
        int line = gc.getFontMetrics().getHeight();
        int y = area.height - line * lines.size() - 4;
        gc.setBackground(inks.color(inks.palette().paper()));
        gc.fillRectangle(0, y - 2, area.width, area.height - y + 2);
        gc.setForeground(inks.color(inks.palette().ink()));
        for (String text : lines) {
            gc.drawText(text, MARGIN, y, true);
            y += line;
        }
    }

    List<String> lines(List<Placed> drawings) {
        int width = area.width - 2 * MARGIN;
        List<String> lines = new ArrayList<>();
        for (Placed one : drawings) {
            String line =
                    drawings.size() > 1 && !one.legend().isEmpty() ? one.face().label() + ":" : "";
            for (String each : one.legend()) {
                String text = Wrapped.within(gc, each, width);
                String longer = line.isEmpty() ? text : line + BETWEEN + text;
                if (!line.isEmpty() && gc.textExtent(longer).x > width) {
                    lines.add(line);
                    longer = text;
                }
                line = longer;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
        }
        return lines.stream().flatMap(String::lines).toList();
    }
}
