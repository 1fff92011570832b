package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.wording.IdWords;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Table;

/** Places in the workshop in words: {@code leather[natural-side].thickness} as “Leather, natural side, Thickness”. */
public final class CellText {
    private static final Pattern CELL = Pattern.compile("([^\\[.]+)(?:\\[([^\\]]*)])?(?:\\.([^\\[]+))?.*");
    /** The column that says what a row is called, in every table that has one. */
    private static final String NAME = "name";

    private CellText() {}

    /** The title of the table, what the row is called, and the label of the column, as far as they are named. */
    public static String of(String cell, WorkedProject worked, Wording wording) {
        Matcher parts = CELL.matcher(cell);
        if (!parts.matches()) {
            return cell;
        }
        Shelf shelf = worked.shelf();
        Optional<Table> table = shelf.tables().find(parts.group(1));
        List<String> words = new ArrayList<>();
        words.add(table.map(Table::declared)
                .map(declared -> wording.text(declared.texts(), declared.titleKey()))
                .orElseGet(() -> IdWords.of(parts.group(1))));
        String row = parts.group(2);
        if (row != null) {
            words.add(shelf.row(parts.group(1), row)
                    .flatMap(taken -> taken.row().cell(NAME))
                    .orElseGet(() -> IdWords.of(row)));
        }
        String column = parts.group(3);
        if (column != null) {
            words.add(table.flatMap(known -> known.column(column))
                    .map(known -> wording.label(known.texts(), known.question()))
                    .orElseGet(() -> IdWords.of(column)));
        }
        return String.join(", ", words);
    }
}
