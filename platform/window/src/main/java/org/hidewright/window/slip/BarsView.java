package org.hidewright.window.slip;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.hidewright.api.document.Bars;
import org.hidewright.documents.page.BarsPlot;
import org.hidewright.window.look.Inks;
import org.hidewright.window.piece.GcCanvas;

/** Bars as they are printed, in pixels: a line of them is as high as a small line of the window. For as long as its GC lives. */
final class BarsView {
    private static final double SMALL = 0.95;

    private final GcCanvas canvas;
    private final double pixelsPerMm;
    private final int width;
    private final BarsPlot plot;

    BarsView(GC gc, Inks inks, List<Bars> bars, int width) {
        this.width = width;
        pixelsPerMm = inks.em() * SMALL / BarsPlot.lineMm();
        canvas = new GcCanvas(gc, inks, pixelsPerMm);
        plot = new BarsPlot(bars, width / pixelsPerMm, canvas);
    }

    int height() {
        return pixels(plot.height());
    }

    void draw(int left, int top) {
        plot.draw(canvas, left / pixelsPerMm, top / pixelsPerMm);
    }

    /** The bar at a height below its top. */
    OptionalInt at(int y) {
        double mm = y / pixelsPerMm;
        List<BarsPlot.Row> rows = plot.rows();
        return IntStream.range(0, rows.size())
                .filter(row -> rows.get(row).top() <= mm && mm < rows.get(row).bottom())
                .findFirst();
    }

    /** Where a bar lies, with its name and its amount. */
    Rectangle place(int row) {
        BarsPlot.Row bar = plot.rows().get(row);
        int top = pixels(bar.top());
        return new Rectangle(0, top, width, pixels(bar.bottom()) - top);
    }

    private int pixels(double mm) {
        return (int) Math.ceil(mm * pixelsPerMm);
    }
}
