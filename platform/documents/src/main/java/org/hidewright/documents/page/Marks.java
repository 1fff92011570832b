package org.hidewright.documents.page;

/** The simple marks. */
final class Marks {
    private Marks() {}

    /** One line of letters; its height is that of its line. */
    record Text(String text, double x, double top, Style style) implements Mark {
        @Override
        public double bottom() {
            return top + style.lineMm();
        }

        @Override
        public void draw(Canvas canvas, double x0, double y0) {
            canvas.text(text, x0 + x, y0 + top + style.baselineMm(), style, 0);
        }
    }

    /** A level line. */
    record Rule(double fromX, double toX, double y, Line line) implements Mark {
        @Override
        public double top() {
            return y;
        }

        @Override
        public double bottom() {
            return y;
        }

        @Override
        public void draw(Canvas canvas, double x0, double y0) {
            canvas.moveTo(x0 + fromX, y0 + y);
            canvas.lineTo(x0 + toX, y0 + y);
            canvas.stroke(line);
        }
    }

    /** A level bar, filled, or in outline alone. */
    record Bar(double x, double top, double width, double height, boolean faint) implements Mark {
        @Override
        public double bottom() {
            return top + height;
        }

        @Override
        public void draw(Canvas canvas, double x0, double y0) {
            rectangle(canvas, x0 + x, y0 + top, width, height);
            canvas.fillAndStroke(faint ? Tone.PAPER : Tone.METAL, Line.solid(0.2, Tone.QUIET));
        }
    }

    /** An upright rectangle in outline. */
    record Frame(double x, double top, double width, double height, Line line) implements Mark {
        @Override
        public double bottom() {
            return top + height;
        }

        @Override
        public void draw(Canvas canvas, double x0, double y0) {
            rectangle(canvas, x0 + x, y0 + top, width, height);
            canvas.stroke(line);
        }
    }

    private static void rectangle(Canvas canvas, double x, double y, double width, double height) {
        canvas.moveTo(x, y);
        canvas.lineTo(x + width, y);
        canvas.lineTo(x + width, y + height);
        canvas.lineTo(x, y + height);
        canvas.close();
    }
}
