package org.hidewright.documents.csv;

import java.util.List;
import java.util.stream.Collectors;
import org.hidewright.core.paper.CsvWriter;
import org.osgi.service.component.annotations.Component;

/** Comma separated values after RFC 4180 in which no cell is a formula. */
@Component
public final class SafeCsvWriter implements CsvWriter {
    @Override
    public String write(List<? extends List<String>> rows) {
        return rows.stream()
                .map(row -> row.stream().map(SafeCsvWriter::field).collect(Collectors.joining(",")) + "\r\n")
                .collect(Collectors.joining());
    }

    /** Texts are always quoted: a reader set to another separator then still sees most of them whole. */
    private static String field(String cell) {
        if (cell.isEmpty() || PlainNumber.is(cell) && cell.indexOf(',') < 0) {
            return cell;
        }
        return '"' + FormulaGuard.guarded(cell).replace("\"", "\"\"") + '"';
    }
}
