package org.hidewright.documents.page;

import java.util.stream.IntStream;
import org.hidewright.api.document.Severity;

/**
 * The sign before a check. The heavier, the more corners are filled: a filled octagon with a bar, a filled diamond with a
 * ring, an empty triangle with a stroke and a dot, an empty circle with a dot and a stroke.
 */
record Sign(Severity severity, double x, double top) implements Mark {
    private static final double SIZE = 8;

    @Override
    public double bottom() {
        return top + SIZE;
    }

    @Override
    public void draw(Canvas canvas, double x0, double y0) {
        double cx = x0 + x + SIZE / 2;
        double cy = y0 + top + SIZE / 2;
        switch (severity) {
            case STOP -> stop(canvas, cx, cy);
            case CHECK -> check(canvas, cx, cy);
            case CAUTION -> caution(canvas, cx, cy);
            default -> note(canvas, cx, cy);
        }
    }

    private static void stop(Canvas canvas, double cx, double cy) {
        polygon(canvas, cx, cy, SIZE / 2, 8, Math.PI / 8);
        canvas.fill(Tone.ACCENT);
        stroke(canvas, cx - 2.1, cy, cx + 2.1, cy, Line.solid(1.3, Tone.PAPER));
    }

    private static void check(Canvas canvas, double cx, double cy) {
        polygon(canvas, cx, cy, SIZE / 2, 4, 0);
        canvas.fill(Tone.ACCENT);
        ring(canvas, cx, cy, 1.1);
        canvas.stroke(Line.solid(0.6, Tone.PAPER));
    }

    private static void caution(Canvas canvas, double cx, double cy) {
        polygon(canvas, cx, cy + 0.8, SIZE / 2, 3, Math.PI / 2);
        canvas.stroke(Line.solid(0.75, Tone.ACCENT));
        stroke(canvas, cx, cy - 1.3, cx, cy + 0.9, Line.solid(0.75, Tone.ACCENT));
        ring(canvas, cx, cy + 1.9, 0.42);
        canvas.fill(Tone.ACCENT);
    }

    private static void note(Canvas canvas, double cx, double cy) {
        ring(canvas, cx, cy, SIZE / 2 - 0.6);
        canvas.stroke(Line.solid(0.5, Tone.QUIET));
        stroke(canvas, cx, cy - 0.4, cx, cy + 1.8, Line.solid(0.7, Tone.QUIET));
        ring(canvas, cx, cy - 1.6, 0.42);
        canvas.fill(Tone.QUIET);
    }

    /** Corners on a circle, the first at an angle counter-clockwise from the right. */
    private static void polygon(Canvas canvas, double cx, double cy, double radius, int corners, double first) {
        IntStream.range(0, corners).forEach(i -> {
            double angle = first + i * 2 * Math.PI / corners;
            double px = cx + radius * Math.cos(angle);
            double py = cy - radius * Math.sin(angle);
            if (i == 0) {
                canvas.moveTo(px, py);
            } else {
                canvas.lineTo(px, py);
            }
        });
        canvas.close();
    }

    private static void ring(Canvas canvas, double cx, double cy, double radius) {
        double k = radius * 4 / 3 * Math.tan(Math.PI / 8);
        canvas.moveTo(cx + radius, cy);
        canvas.curveTo(cx + radius, cy + k, cx + k, cy + radius, cx, cy + radius);
        canvas.curveTo(cx - k, cy + radius, cx - radius, cy + k, cx - radius, cy);
        canvas.curveTo(cx - radius, cy - k, cx - k, cy - radius, cx, cy - radius);
        canvas.curveTo(cx + k, cy - radius, cx + radius, cy - k, cx + radius, cy);
        canvas.close();
    }

    private static void stroke(Canvas canvas, double x1, double y1, double x2, double y2, Line line) {
        canvas.moveTo(x1, y1);
        canvas.lineTo(x2, y2);
        canvas.stroke(line);
    }
}
