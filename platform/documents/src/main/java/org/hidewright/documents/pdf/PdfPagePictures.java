package org.hidewright.documents.pdf;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.hidewright.core.paper.PagePictures;
import org.osgi.service.component.annotations.Component;

/** Shows pages with PDFBox, so that what is seen and printed is what is in the file. */
@Component
public final class PdfPagePictures implements PagePictures {
    private static final double MM_PER_INCH = 25.4;

    @Override
    public int pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public Picture picture(byte[] pdf, int page, double pixelsPerMm) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document)
                    .renderImageWithDPI(page - 1, (float) (pixelsPerMm * MM_PER_INCH), ImageType.RGB);
            int width = image.getWidth();
            int height = image.getHeight();
            return new Picture(width, height, image.getRGB(0, 0, width, height, null, 0, width));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
