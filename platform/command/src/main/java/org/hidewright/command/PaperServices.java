package org.hidewright.command;

import java.util.List;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.PdfWriter;

/** What writes papers and files, and reads drawings; each is loaded when asked for. */
interface PaperServices {
    /** Null where no bundle writes PDF. */
    PdfWriter pdf();

    /** Null where no bundle writes CSV. */
    CsvWriter csv();

    /** None where no bundle writes drawings. */
    List<DrawingWriter> drawings();

    /** None where no bundle reads drawings. */
    List<DrawingReader> readers();
}
