package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.core.picture.PictureReader;
import org.hidewright.documents.page.FigurePlan;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.piece.GcCanvas;

/** A small drawing of what a question measures, with letters as large as those round it. */
final class PictureView extends Canvas {
    /** In heights of a line of text. */
    private static final double WIDE = 13;

    private static final double HIGH = 8;
    /** Capitals as a share of the height of a line. */
    private static final double CAPITALS = 0.42;

    private static final double SMALLER = 0.92;
    private static final double LEAST = 0.2;

    private final Inks inks;
    private final Drawing drawing;

    /** @param told what is drawn, for who cannot see it */
    PictureView(Composite parent, Inks inks, Drawing drawing, String told) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.inks = inks;
        this.drawing = drawing;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        addPaintListener(event -> paint(event.gc));
        Spoken.name(this, () -> told);
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point((int) (WIDE * inks.em()), (int) (HIGH * inks.em()));
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        double pixelsPerMm = inks.em() * CAPITALS / PictureReader.LETTERS_MM;
        GcCanvas canvas = new GcCanvas(gc, inks, pixelsPerMm);
        double width = area.width / pixelsPerMm;
        double height = area.height / pixelsPerMm;
        FigurePlan plan = FigurePlan.at(drawing, 1, canvas);
        for (double factor = 1; !fits(plan, width, height) && factor > LEAST; factor *= SMALLER) {
            plan = FigurePlan.at(drawing, factor * SMALLER, canvas);
        }
        plan.draw(
                canvas,
                Math.max(0, (width - plan.box().width()) / 2),
                Math.max(0, (height - plan.box().height()) / 2));
    }

    private static boolean fits(FigurePlan plan, double width, double height) {
        return plan.box().width() <= width && plan.box().height() <= height;
    }
}
