package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.core.wording.IdWords;
import org.hidewright.core.wording.InWords;
import org.hidewright.core.wording.Wording;

/** Places in the workshop in words: {@code leather[natural-side].thickness} as “Leather, natural side, Thickness”. */
public final class CellWords implements InWords {
    private static final Pattern CELL = Pattern.compile("([^\\[.]+)(?:\\[([^\\]]*)])?(?:\\.([^\\[]+))?.*");
    /** The column that says what a row is called, in every table that has one. */
    private static final String NAME = "name";

    private final String cell;
    private final Shelf shelf;

    private CellWords(String cell, Shelf shelf) {
        this.cell = cell;
        this.shelf = shelf;
    }

    /**
     * A table, a row of it or a cell of that.
     *
     * @param cell as a link to it is written in short
     * @param shelf where it is looked up
     */
    public static CellWords of(String cell, Shelf shelf) {
        return new CellWords(cell, shelf);
    }

    /** The title of the table, what the row is called, and the label of the column, as far as they are named. */
    @Override
    public String in(Wording wording) {
        Matcher parts = CELL.matcher(cell);
        if (!parts.matches()) {
            return cell;
        }
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

    /** Two of one place are one, whatever lies there. */
    @Override
    public boolean equals(Object other) {
        return other instanceof CellWords that && cell.equals(that.cell);
    }

    @Override
    public int hashCode() {
        return cell.hashCode();
    }

    @Override
    public String toString() {
        return cell;
    }
}
