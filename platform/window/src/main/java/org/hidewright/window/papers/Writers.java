package org.hidewright.window.papers;

import java.util.List;
import java.util.Optional;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.PdfWriter;

/**
 * Who writes documents.
 *
 * @param pdf pages; empty where no bundle does
 * @param csv rows; empty where no bundle does
 * @param drawings files for machines
 * @param pictures shows pages; empty where no bundle does
 */
public record Writers(
        Optional<PdfWriter> pdf,
        Optional<CsvWriter> csv,
        List<DrawingWriter> drawings,
        Optional<PagePictures> pictures) {}
