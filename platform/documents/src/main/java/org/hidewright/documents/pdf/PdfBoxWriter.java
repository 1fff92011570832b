package org.hidewright.documents.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.hidewright.api.document.Document;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.documents.page.Face;
import org.hidewright.documents.page.PageLayout;
import org.osgi.service.component.annotations.Component;

/** Writes arranged pages with PDFBox. */
@Component
public final class PdfBoxWriter implements PdfWriter {
    private static final double POINTS_PER_MM = 72 / 25.4;

    @Override
    public byte[] write(Document document, Paper paper) {
        try (PDDocument pdf = new PDDocument()) {
            describe(pdf, document);
            PdfTypeface typeface = new PdfTypeface();
            Map<Face, PDFont> fonts = new EnumMap<>(Face.class);
            for (Face face : Face.values()) {
                fonts.put(face, PDType0Font.load(pdf, typeface.font(face), true));
            }
            PageLayout layout = new PageLayout(document, paper, typeface);
            for (int page = 1; page <= layout.pages(); page++) {
                addPage(pdf, paper, layout, page, fonts);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            pdf.save(bytes);
            return bytes.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static void addPage(PDDocument pdf, Paper paper, PageLayout layout, int number, Map<Face, PDFont> fonts)
            throws IOException {
        PDPage page = new PDPage(
                new PDRectangle((float) (paper.widthMm() * POINTS_PER_MM), (float) (paper.heightMm() * POINTS_PER_MM)));
        pdf.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
            layout.draw(number, new PdfCanvas(content, fonts, paper.heightMm()));
        }
    }

    /** Title, language and day; nothing of the machine, the hour or the user. */
    private static void describe(PDDocument pdf, Document document) {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(document.project() + " \u2013 " + document.title());
        information.setCreator("Hidewright");
        Calendar day = GregorianCalendar.from(document.date().atStartOfDay(ZoneOffset.UTC));
        information.setCreationDate(day);
        information.setModificationDate(day);
        pdf.setDocumentInformation(information);
        pdf.setDocumentId(document.date().toEpochDay() * 1_000_003L
                + information.getTitle().hashCode());
        pdf.getDocumentCatalog().setLanguage(document.language().toLanguageTag());
        PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
        viewer.setDisplayDocTitle(true);
        viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        pdf.getDocumentCatalog().setViewerPreferences(viewer);
    }
}
