package org.hidewright.window.papers;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.jobcard.Packet;
import org.hidewright.core.packet.Papers;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;

/** The documents of a worked project as files of pages: what is seen, printed and written is one and the same. */
public final class Pages {
    private final Map<String, Document> documents = new LinkedHashMap<>();

    /**
     * A document.
     *
     * @param title as it is to be read
     * @param pdf its file
     * @param pages how many pages it has
     * @param paper they are on
     */
    public record Document(String title, byte[] pdf, int pages, Paper paper) {}

    /** Makes every document of what is made, without what is only tried out; takes its time. */
    public Pages(
            WorkedProject worked,
            Wording wording,
            LocalDate date,
            List<Contributor> contributors,
            PdfWriter pdf,
            PagePictures pictures) {
        Paper paper = Papers.usual(worked.project());
        new Packet(worked.toMake(), wording)
                .documents(date, contributors, failed -> {})
                .forEach((name, document) -> {
                    byte[] file = pdf.write(document, paper);
                    documents.put(name, new Document(document.title(), file, pictures.pages(file), paper));
                });
    }

    /** By name, the job card first. */
    public Map<String, Document> documents() {
        return documents;
    }
}
