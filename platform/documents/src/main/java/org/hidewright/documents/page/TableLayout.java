package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.Table.Align;

/**
 * Tables as one piece a row. Columns are as wide as they must be and stand together at the left, where the eye can go from
 * cell to cell; what is left of the line is free for notes. A table with more columns than the page holds is parted, and
 * each part begins with the first column.
 */
final class TableLayout {
    private static final double BEFORE = 4;
    private static final double PADDING = 1.3;

    private final Typeface typeface;
    private final double width;

    TableLayout(Typeface typeface, double width) {
        this.typeface = typeface;
        this.width = width;
    }

    List<Piece> pieces(Table table) {
        ColumnWidths widths = new ColumnWidths(new Wrapping(typeface), table, width);
        List<Piece> pieces = new ArrayList<>();
        if (!table.caption().isEmpty()) {
            PieceBuilder caption = new PieceBuilder(typeface);
            caption.text(table.caption(), 0, 0, width, Style.ANSWER_LABEL);
            pieces.add(caption.build(BEFORE).keptWithNext());
        }
        for (List<Integer> part : widths.parts()) {
            pieces.addAll(part(table, part, widths.of(part)));
        }
        return pieces;
    }

    private List<Piece> part(Table table, List<Integer> columns, List<Double> widths) {
        List<Piece> pieces = new ArrayList<>();
        Piece head = null;
        if (columns.stream().anyMatch(c -> !table.columns().get(c).title().isEmpty())) {
            head = head(table, columns, widths);
            pieces.add(head);
        }
        for (List<String> cells : table.rows()) {
            Piece row = row(table, cells, columns, widths, pieces.isEmpty());
            pieces.add(head == null ? row : row.under(head));
        }
        keepEndsTogether(pieces, head != null);
        return pieces;
    }

    /** The first two rows stay with the headings, the last two with each other. */
    private static void keepEndsTogether(List<Piece> pieces, boolean hasHead) {
        int first = hasHead ? 1 : 0;
        for (int i : new int[] {0, first, pieces.size() - 2}) {
            if (i >= 0 && i < pieces.size() - 1) {
                pieces.set(i, pieces.get(i).keptWithNext());
            }
        }
    }

    private Piece head(Table table, List<Integer> columns, List<Double> widths) {
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            PieceBuilder trial = new PieceBuilder(typeface);
            heights.add(trial.text(title(table, columns.get(i)), 0, 0, widths.get(i), Style.COLUMN));
        }
        double height = heights.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        PieceBuilder head = new PieceBuilder(typeface);
        double x = 0;
        for (int i = 0; i < columns.size(); i++) {
            Align align = table.columns().get(columns.get(i)).align();
            head.text(title(table, columns.get(i)), x, height - heights.get(i), widths.get(i), Style.COLUMN, align);
            x += widths.get(i) + ColumnWidths.GAP;
        }
        head.add(new Marks.Rule(0, width, height + PADDING, Line.RULE));
        return head.build(BEFORE);
    }

    private static String title(Table table, int column) {
        return table.columns().get(column).title();
    }

    private Piece row(Table table, List<String> cells, List<Integer> columns, List<Double> widths, boolean first) {
        PieceBuilder row = new PieceBuilder(typeface);
        double x = 0;
        for (int i : IntStream.range(0, columns.size()).toArray()) {
            int c = columns.get(i);
            row.text(
                    cells.get(c),
                    x,
                    PADDING,
                    widths.get(i),
                    Style.CELL,
                    table.columns().get(c).align());
            x += widths.get(i) + ColumnWidths.GAP;
        }
        row.downTo(PADDING + Style.CELL.lineMm());
        row.add(new Marks.Rule(0, width, row.bottom() + PADDING, Line.HAIR));
        return row.build(first ? BEFORE : 0);
    }
}
