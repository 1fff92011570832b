package org.hidewright.documents.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.hidewright.documents.page.Canvas;
import org.hidewright.documents.page.Face;
import org.hidewright.documents.page.Line;
import org.hidewright.documents.page.Style;
import org.hidewright.documents.page.Tone;

/** One page of a PDF; the page's own unit is set to the millimetre, so that no coordinate is converted by hand. */
final class PdfCanvas implements Canvas {
    private static final float POINTS_PER_MM = (float) (72 / 25.4);

    private final PDPageContentStream content;
    private final Map<Face, PDFont> fonts;
    private final double height;

    PdfCanvas(PDPageContentStream content, Map<Face, PDFont> fonts, double heightMm) {
        this.content = content;
        this.fonts = fonts;
        this.height = heightMm;
        ink(() -> content.transform(Matrix.getScaleInstance(POINTS_PER_MM, POINTS_PER_MM)));
    }

    private interface Inking {
        void run() throws IOException;
    }

    /** The content goes to memory, so that an I/O error is a bug and not something a caller can answer. */
    private static void ink(Inking inking) {
        try {
            inking.run();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private float y(double y) {
        return (float) (height - y);
    }

    @Override
    public void text(String text, double x, double y, Style style, double turnRad) {
        ink(() -> {
            content.beginText();
            content.setFont(fonts.get(style.face()), (float) style.sizeMm());
            fillWith(style.tone());
            content.setTextMatrix(
                    turnRad == 0
                            ? Matrix.getTranslateInstance((float) x, y(y))
                            : Matrix.getRotateInstance(turnRad, (float) x, y(y)));
            content.showText(text);
            content.endText();
        });
    }

    @Override
    public void moveTo(double x, double y) {
        ink(() -> content.moveTo((float) x, y(y)));
    }

    @Override
    public void lineTo(double x, double y) {
        ink(() -> content.lineTo((float) x, y(y)));
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
        ink(() -> content.curveTo((float) x1, y(y1), (float) x2, y(y2), (float) x3, y(y3)));
    }

    @Override
    public void close() {
        ink(content::closePath);
    }

    @Override
    public void stroke(Line line) {
        ink(() -> {
            strokeWith(line);
            content.stroke();
        });
    }

    @Override
    public void fill(Tone tone) {
        ink(() -> {
            fillWith(tone);
            content.fill();
        });
    }

    @Override
    public void fillAndStroke(Tone tone, Line line) {
        ink(() -> {
            fillWith(tone);
            strokeWith(line);
            content.fillAndStroke();
        });
    }

    @Override
    public void within(double left, double top, double width, double height, Runnable drawing) {
        ink(() -> {
            content.saveGraphicsState();
            content.addRect((float) left, y(top + height), (float) width, (float) height);
            content.clip();
            drawing.run();
            content.restoreGraphicsState();
        });
    }

    private void fillWith(Tone tone) throws IOException {
        if (tone.isGrey()) {
            content.setNonStrokingColor(tone.red());
        } else {
            content.setNonStrokingColor(tone.red(), tone.green(), tone.blue());
        }
    }

    private void strokeWith(Line line) throws IOException {
        if (line.tone().isGrey()) {
            content.setStrokingColor(line.tone().red());
        } else {
            content.setStrokingColor(
                    line.tone().red(), line.tone().green(), line.tone().blue());
        }
        content.setLineWidth((float) line.widthMm());
        content.setLineCapStyle(line.round() ? 1 : 0);
        float[] dashes = new float[line.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = line.dashes().get(i).floatValue();
        }
        content.setLineDashPattern(dashes, 0);
    }
}
