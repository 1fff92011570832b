package org.hidewright.window.piece;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Transform;
import org.hidewright.documents.page.Canvas;
import org.hidewright.documents.page.Face;
import org.hidewright.documents.page.Line;
import org.hidewright.documents.page.Style;
import org.hidewright.documents.page.Tone;
import org.hidewright.documents.page.Typeface;
import org.hidewright.window.look.Inks;

/** Draws on a screen what the documents draw on paper. */
public final class GcCanvas implements Canvas, Typeface {
    private static final double MM_PER_INCH = 25.4;
    private static final double POINTS_PER_INCH = 72;
    private static final double POINTS_PER_MM = POINTS_PER_INCH / MM_PER_INCH;
    /** Letters this large are measured, so that rounding to whole pixels does not count. */
    private static final int MEASURED_POINTS = 100;

    private final GC gc;
    private final Inks inks;
    private final double pixelsPerMm;
    private Path path;

    /** @param pixelsPerMm of the screen */
    public GcCanvas(GC gc, Inks inks, double pixelsPerMm) {
        this.gc = gc;
        this.inks = inks;
        this.pixelsPerMm = pixelsPerMm;
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
    }

    private float px(double mm) {
        return (float) (mm * pixelsPerMm);
    }

    private Path path() {
        if (path == null) {
            path = new Path(gc.getDevice());
        }
        return path;
    }

    @Override
    public void moveTo(double x, double y) {
        path().moveTo(px(x), px(y));
    }

    @Override
    public void lineTo(double x, double y) {
        path().lineTo(px(x), px(y));
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
        path().cubicTo(px(x1), px(y1), px(x2), px(y2), px(x3), px(y3));
    }

    @Override
    public void close() {
        if (path != null) {
            path.close();
        }
    }

    private void end() {
        if (path != null) {
            path.dispose();
            path = null;
        }
    }

    @Override
    public void stroke(Line line) {
        ink(line);
        end();
    }

    @Override
    public void fill(Tone tone) {
        pour(tone);
        end();
    }

    @Override
    public void fillAndStroke(Tone tone, Line line) {
        pour(tone);
        ink(line);
        end();
    }

    private void pour(Tone tone) {
        gc.setBackground(inks.color(inks.palette().of(tone)));
        gc.fillPath(path());
    }

    private void ink(Line line) {
        gc.setForeground(inks.color(inks.palette().of(line.tone())));
        LineAttributes look = new LineAttributes(Math.max(1, px(line.widthMm())));
        look.cap = line.round() ? SWT.CAP_ROUND : SWT.CAP_FLAT;
        look.join = SWT.JOIN_MITER;
        if (!line.dashes().isEmpty()) {
            look.style = SWT.LINE_CUSTOM;
            look.dash = new float[line.dashes().size()];
            for (int i = 0; i < look.dash.length; i++) {
                look.dash[i] = Math.max(0.1f, px(line.dashes().get(i)));
            }
        }
        gc.setLineAttributes(look);
        gc.drawPath(path());
    }

    @Override
    public void within(double x, double y, double width, double height, Runnable drawing) {
        var before = gc.getClipping();
        gc.setClipping(Math.round(px(x)), Math.round(px(y)), Math.round(px(width)), Math.round(px(height)));
        drawing.run();
        gc.setClipping(before);
    }

    @Override
    public void text(String text, double x, double y, Style style, double turnRad) {
        Transform turn = new Transform(gc.getDevice());
        Transform before = new Transform(gc.getDevice());
        gc.getTransform(before);
        gc.getTransform(turn);
        turn.translate(px(x), px(y));
        turn.rotate((float) Math.toDegrees(-turnRad));
        gc.setTransform(turn);
        gc.setFont(font(style));
        gc.setForeground(inks.color(inks.palette().of(style.tone())));
        gc.drawText(
                text, 0, -gc.getFontMetrics().getAscent() - gc.getFontMetrics().getLeading(), true);
        gc.setTransform(before);
        turn.dispose();
        before.dispose();
    }

    private Font font(Style style) {
        double points =
                style.sizeMm() * POINTS_PER_MM * pixelsPerMm / (gc.getDevice().getDPI().x / MM_PER_INCH);
        return inks.fontOf((int) Math.round(points), style.face() == Face.SEMIBOLD);
    }

    @Override
    public double width(Face face, String text) {
        gc.setFont(inks.fontOf(MEASURED_POINTS, face == Face.SEMIBOLD));
        Point extent = gc.textExtent(text);
        return extent.x / (MEASURED_POINTS * gc.getDevice().getDPI().x / POINTS_PER_INCH);
    }

    @Override
    public String printable(String text) {
        return text;
    }
}
