package org.hidewright.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.text.WordUtils;

/** Cells in columns that are as wide as their widest cell; where that is too wide for a page, long cells are wrapped. */
final class TextTable {
    private static final String GAP = "  ";
    private static final int WIDEST = 110;
    /** A column is not made narrower than this. */
    private static final int NARROWEST = 16;

    private final List<List<String>> rows;

    TextTable(List<List<String>> rows) {
        this.rows = rows;
    }

    void print(PrintStream out) {
        int[] widths = widths();
        for (List<String> row : rows) {
            List<String[]> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(wrapped(row.get(i), widths[i]));
            }
            int height = cells.stream().mapToInt(cell -> cell.length).max().orElse(0);
            for (int line = 0; line < height; line++) {
                out.println(line(cells, widths, line));
            }
        }
    }

    private static String line(List<String[]> cells, int[] widths, int line) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String part = line < cells.get(i).length ? cells.get(i)[line] : "";
            text.append(GAP).append(part).append(" ".repeat(Math.max(0, widths[i] - length(part))));
        }
        return text.toString().stripTrailing();
    }

    private int[] widths() {
        int[] widths = new int[rows.stream().mapToInt(List::size).max().orElse(0)];
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        }
        int widest = widest(widths);
        while (Arrays.stream(widths).sum() > WIDEST && widths[widest] > NARROWEST) {
            widths[widest]--;
            widest = widest(widths);
        }
        return widths;
    }

    private static int widest(int[] widths) {
        int widest = 0;
        for (int i = 1; i < widths.length; i++) {
            widest = widths[i] > widths[widest] ? i : widest;
        }
        return widest;
    }

    private static String[] wrapped(String cell, int width) {
        return length(cell) <= width
                ? new String[] {cell}
                : WordUtils.wrap(cell, width, "\n", false).split("\n");
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
