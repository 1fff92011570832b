package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A window on a small screen: what stands in columns is seen from edge to edge. */
@EnabledOnOs(OS.LINUX)
class NarrowWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), Nets.bag(folder));
        real.shell.setSize(1024, 700);
        real.settle();
    }

    @AfterEach
    void close() {
        real.close();
    }

    private void isSeen(Table table) {
        int across = 0;
        GC gc = new GC(table);
        for (int i = 0; i < table.getColumnCount(); i++) {
            int width = table.getColumn(i).getWidth();
            across += width;
            for (TableItem item : table.getItems()) {
                gc.setFont(item.getFont());
                assertTrue(gc.textExtent(item.getText(i)).x <= width, i + ": " + item.getText(i));
            }
        }
        gc.dispose();
        assertTrue(
                across <= table.getClientArea().width, "columns " + across + ", room " + table.getClientArea().width);
    }

    @Test
    void bothSlipsThatAreCompared() {
        real.press("bag/what-if");
        Table lines = real.find(Table.class, "compare.lines");
        assertTrue(lines.getItemCount() > 5, lines.getItemCount() + " lines");
        isSeen(lines);
        real.shell.setSize(1366, 700);
        real.settle();
        isSeen(lines);
    }

    @Test
    void aTableOfAnswers() {
        real.press("bag/tables");
        isSeen(real.find(Table.class, "tables.punched"));
    }

    /** Before anything follows from the piece there is a third of the window more for it. */
    @Test
    void whereNothingFollowsThePieceHasTheRoom() throws Exception {
        real.close();
        Path alone = Nets.write(
                folder.resolve("alone.json"),
                "{\"hidewright\": 1, \"slips\": [{\"id\": \"bag\", \"calculator\": \"bag\", \"questions\": {\"width\": \"90 mm\"}}]}");
        real = RealWindow.at(folder.resolve("settings"), Nets.catalogue(), alone);
        real.shell.setSize(1024, 700);
        real.settle();
        Control middle = real.find(Control.class, "drawing");
        int whole = right(middle);
        assertTrue(whole >= real.shell.getClientArea().width - 20, whole + " of " + real.shell.getClientArea().width);
        real.window.project().orElseThrow().addSlip("cord", "org.example.nets");
        real.settle();
        assertTrue(right(middle) < whole - 100, "what follows has its place again: " + right(middle));
        real.press("deed.undo");
        assertEquals(whole, right(middle));
    }

    private int right(Control part) {
        return real.display().map(part, real.shell, part.getSize().x, 0).x;
    }
}
