package org.hidewright.window.look;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * Tables that are seen from edge to edge: where their columns do not fit beside each other, the wide ones share what room there
 * is, and what stands in them takes more lines. Where a system gives all lines one height, they are rolled across as before.
 */
public final class WrappedCells {
    private static final String WHOLE = "cells";
    /** What a column takes besides its text. */
    private static final int AROUND = 10;
    /** And besides its head, whose letters the system writes bold. */
    private static final int HEAD = 2 * AROUND;
    /** So long, in heights of a line, a head stays at least. */
    private static final int SHORT = 5;

    private WrappedCells() {}

    /** Gives a column its head, which is told in full by pointing at it where there is no room for all of it. */
    public static void head(TableColumn column, String text) {
        column.setData(WHOLE, text);
        column.setText(text);
        column.setToolTipText(text);
    }

    /** Gives a line its texts; they are laid out by {@link #lay}. */
    public static void set(TableItem item, String... cells) {
        item.setData(WHOLE, cells);
        item.setText(cells);
    }

    /**
     * Lays out all columns.
     *
     * @param room there is for them
     * @param shares of the room that is over, one for each column
     * @return how wide all of them are
     */
    public static int lay(Table table, int room, int... shares) {
        if (room <= 0) {
            return 0;
        }
        GC gc = new GC(table);
        FontData letters = table.getFont().getFontData()[0];
        Font bold = new Font(table.getDisplay(), letters.getName(), letters.getHeight(), SWT.BOLD);
        int[] wanted = widths(table, gc, bold, false);
        int[] widths = "gtk".equals(SWT.getPlatform()) ? within(wanted, widths(table, gc, bold, true), room) : wanted;
        int over = Math.max(0, room - Arrays.stream(widths).sum());
        int all = Math.max(1, Arrays.stream(shares).sum());
        for (int i = 0; i < widths.length; i++) {
            int width = widths[i] + over * shares[i] / all;
            if (table.getColumn(i).getWidth() != width) {
                table.getColumn(i).setWidth(width);
            }
            gc.setFont(bold);
            String head = shortened(gc, whole(table.getColumn(i)), width - HEAD);
            if (!table.getColumn(i).getText().equals(head)) {
                table.getColumn(i).setText(head);
            }
            for (TableItem item : table.getItems()) {
                gc.setFont(item.getFont());
                String cell = whole(item)[i];
                String text = wanted[i] > width ? Wrapped.within(gc, cell, width - AROUND) : cell;
                if (!item.getText(i).equals(text)) {
                    item.setText(i, text);
                }
            }
        }
        gc.dispose();
        bold.dispose();
        return Arrays.stream(table.getColumns()).mapToInt(TableColumn::getWidth).sum();
    }

    /** How high a table is that shows its head and all of its lines: a system that has not measured them yet says too little. */
    public static int height(Table table) {
        GC gc = new GC(table);
        gc.setFont(table.getFont());
        int line = gc.getFontMetrics().getHeight();
        gc.dispose();
        int height = table.getHeaderHeight();
        for (TableItem item : table.getItems()) {
            int most = IntStream.range(0, table.getColumnCount())
                    .map(i -> item.getText(i).split("\n", -1).length)
                    .max()
                    .orElse(1);
            height += table.getItemHeight() + (most - 1) * line;
        }
        return height;
    }

    private static String[] whole(TableItem item) {
        return (String[]) item.getData(WHOLE);
    }

    private static String whole(TableColumn column) {
        return (String) column.getData(WHOLE);
    }

    /** What each column needs: for all of it on one line, or for its longest word. */
    private static int[] widths(Table table, GC gc, Font bold, boolean wordByWord) {
        int[] widths = new int[table.getColumnCount()];
        for (int i = 0; i < widths.length; i++) {
            gc.setFont(bold);
            int head = gc.textExtent(whole(table.getColumn(i))).x;
            int enough = SHORT * gc.getFontMetrics().getHeight();
            widths[i] = HEAD + (wordByWord ? Math.min(head, enough) : head);
            for (TableItem item : table.getItems()) {
                gc.setFont(item.getFont());
                for (String part : whole(item)[i].split(wordByWord ? "[ \n]" : "\n")) {
                    widths[i] = Math.max(widths[i], gc.textExtent(part).x + AROUND);
                }
            }
        }
        return widths;
    }

    /** None is wider than it wants to be nor narrower than its longest word; the widest give way first. */
    private static int[] within(int[] wanted, int[] least, int room) {
        int most = Arrays.stream(wanted).max().orElse(0);
        int[] widths = wanted;
        while (Arrays.stream(widths).sum() > room && most > 0) {
            most--;
            int limit = most;
            widths = IntStream.range(0, wanted.length)
                    .map(i -> Math.max(least[i], Math.min(wanted[i], limit)))
                    .toArray();
        }
        return widths;
    }

    /** Without what is in its middle, where there is no room for it: titles of slips often differ at their ends. */
    private static String shortened(GC gc, String text, int room) {
        String shown = text;
        for (int left = text.length() - 1; left > 0 && gc.textExtent(shown).x > room; left--) {
            shown = text.substring(0, left / 2) + "…" + text.substring(text.length() - (left + 1) / 2);
        }
        return shown;
    }
}
