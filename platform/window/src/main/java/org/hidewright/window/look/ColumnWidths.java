package org.hidewright.window.look;

import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** How wide the columns of a table are: each as wide as what stands in it, and where there is more room it is shared out. */
public final class ColumnWidths {
    private ColumnWidths() {}

    /** @param shares of the room that is over, one for each column */
    public static void share(Table table, int... shares) {
        int over = table.getClientArea().width;
        int all = 0;
        for (int i = 0; i < shares.length; i++) {
            TableColumn column = table.getColumn(i);
            column.pack();
            over -= column.getWidth();
            all += shares[i];
        }
        for (int i = 0; i < shares.length && over > 0; i++) {
            TableColumn column = table.getColumn(i);
            column.setWidth(column.getWidth() + over * shares[i] / all);
        }
    }
}
