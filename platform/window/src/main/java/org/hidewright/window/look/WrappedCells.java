package org.hidewright.window.look;

import java.util.Arrays;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/**
 * Tables that are seen from edge to edge: where their columns do not fit beside each other, the wide ones share what room there
 * is, and what stands in them takes more lines. Where a system gives all lines one height, they are rolled across as before.
 */
public final class WrappedCells {
    private static final String WHOLE = "cells";
    /** What a column takes besides its text. */
    private static final int AROUND = 10;

    private WrappedCells() {}

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
     */
    public static void lay(Table table, int room, int... shares) {
        if (room <= 0) {
            return;
        }
        GC gc = new GC(table);
        int[] wanted = wanted(table, gc);
        int[] widths = "gtk".equals(SWT.getPlatform()) ? within(wanted, room) : wanted;
        int over = Math.max(0, room - Arrays.stream(widths).sum());
        int all = Math.max(1, Arrays.stream(shares).sum());
        for (int i = 0; i < widths.length; i++) {
            int width = widths[i] + over * shares[i] / all;
            if (table.getColumn(i).getWidth() != width) {
                table.getColumn(i).setWidth(width);
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
    }

    private static String[] whole(TableItem item) {
        return (String[]) item.getData(WHOLE);
    }

    private static int[] wanted(Table table, GC gc) {
        int[] wanted = new int[table.getColumnCount()];
        for (int i = 0; i < wanted.length; i++) {
            gc.setFont(table.getFont());
            wanted[i] = gc.textExtent(table.getColumn(i).getText()).x + 2 * AROUND; // its head is bold
            for (TableItem item : table.getItems()) {
                gc.setFont(item.getFont());
                wanted[i] = Math.max(wanted[i], gc.textExtent(whole(item)[i]).x + AROUND);
            }
        }
        return wanted;
    }

    /** What is narrow keeps its width; the others share what is left. */
    private static int[] within(int[] wanted, int room) {
        int[] widths = new int[wanted.length];
        int left = room;
        int open = wanted.length;
        boolean more = true;
        while (more) {
            more = false;
            for (int i = 0; i < wanted.length; i++) {
                if (widths[i] == 0 && wanted[i] <= left / open) {
                    widths[i] = wanted[i];
                    left -= wanted[i];
                    open--;
                    more = open > 0;
                }
            }
        }
        for (int i = 0; i < wanted.length; i++) {
            widths[i] = widths[i] == 0 ? left / open : widths[i];
        }
        return widths;
    }
}
