package org.hidewright.window.piece;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.documents.page.FigurePlan;
import org.hidewright.window.look.Inks;

/** A drawing as large as its place lets it be, or larger or smaller as it is asked for. */
public final class PieceView extends Canvas {
    private static final double MM_PER_INCH = 25.4;
    private static final double MARGIN_MM = 4;
    private static final double STEP = 1.25;

    private final Inks inks;
    private Optional<Drawing> drawing = Optional.empty();
    private double zoom = 1;

    public PieceView(Composite parent, Inks inks) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.inks = inks;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        addPaintListener(event -> paint(event.gc));
        addListener(SWT.MouseWheel, event -> zoom(event.count > 0 ? STEP : 1 / STEP));
    }

    /** Shows a drawing, or nothing. */
    public void show(Optional<Drawing> shown) {
        if (!shown.equals(drawing)) {
            drawing = shown;
            redraw();
        }
    }

    public Optional<Drawing> drawing() {
        return drawing;
    }

    /** Larger by a factor. */
    public void zoom(double factor) {
        zoom = Math.max(0.1, Math.min(100, zoom * factor));
        redraw();
    }

    private void paint(GC gc) {
        drawing.ifPresent(shown -> paint(gc, shown));
    }

    private void paint(GC gc, Drawing shown) {
        Rectangle area = getClientArea();
        double pixelsPerMm = getDisplay().getDPI().x / MM_PER_INCH;
        GcCanvas canvas = new GcCanvas(gc, inks, pixelsPerMm);
        double width = area.width / pixelsPerMm - 2 * MARGIN_MM;
        double height = area.height / pixelsPerMm - 2 * MARGIN_MM;
        Box box = shown.bounds();
        double factor = zoom * Math.min(width / Math.max(1, box.width()), height / Math.max(1, box.height()));
        if (factor <= 0) {
            return;
        }
        FigurePlan plan = FigurePlan.at(shown, factor, canvas);
        // letters and measures keep their size, so that a small drawing needs another look at the room they take
        double over = Math.max(plan.box().width() / width, plan.box().height() / height);
        if (zoom == 1 && over > 1) {
            plan = FigurePlan.at(shown, factor / over, canvas);
        }
        plan.draw(
                canvas,
                MARGIN_MM + Math.max(0, (width - plan.box().width()) / 2),
                MARGIN_MM + Math.max(0, (height - plan.box().height()) / 2));
    }
}
