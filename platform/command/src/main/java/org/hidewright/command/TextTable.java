package org.hidewright.command;

import java.io.PrintStream;
import java.util.List;

/** Cells in columns that are as wide as their widest cell. */
final class TextTable {
    private static final String GAP = "  ";

    private final List<List<String>> rows;

    TextTable(List<List<String>> rows) {
        this.rows = rows;
    }

    void print(PrintStream out) {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                line.append(GAP).append(row.get(i)).append(" ".repeat(widths[i] - length(row.get(i))));
            }
            out.println(line.toString().stripTrailing());
        }
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
