package org.hidewright.documents;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Writes rows of cells for a spreadsheet. */
@ProviderType
public interface CsvWriter {
    /**
     * Rows as comma separated values (RFC 4180): UTF-8 without a byte order mark, each row ended by CR LF, every cell that
     * is not a plain number in double quotes.
     *
     * <p>A cell cannot bring a formula into a spreadsheet: where a text, or a part of it after a mark at which a
     * spreadsheet may part cells, begins like one, an apostrophe is put before it. Plain numbers, such as {@code -2.5}, stay
     * as they are.
     */
    String write(List<? extends List<String>> rows);
}
