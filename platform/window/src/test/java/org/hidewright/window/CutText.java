package org.hidewright.window;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.hidewright.window.look.WritesItself;

/** Looks at every control that can be seen, whether there is room for its text. */
final class CutText {
    /** What a field or a cell keeps free on either side of its letters, in pixels, at the least. */
    private static final int MARGIN = 2;

    private final List<String> faults = new ArrayList<>();
    private int looks;

    private final String typed;

    private CutText(String typed) {
        this.typed = typed;
    }

    /**
     * What was looked at.
     *
     * @param faults each text that has no room, with its control
     * @param looks how many texts were looked at
     */
    record Found(List<String> faults, int looks) {}

    /** @param typed what the maker has typed: a field scrolls it, with the caret in it */
    static Found in(Shell shell, String typed) {
        CutText look = new CutText(typed);
        look.inside(shell);
        return new Found(look.faults, look.looks);
    }

    private void inside(Composite all) {
        Rectangle room = all.getClientArea();
        for (Control control : all.getChildren()) {
            if (control.isVisible() && !(control instanceof Shell)) {
                within(control, room, all);
                look(control);
                if (control instanceof Composite more && !(control instanceof Combo)) {
                    inside(more);
                }
            }
        }
    }

    /** What reaches out of its parent is cut, except where that scrolls. */
    private void within(Control control, Rectangle room, Composite in) {
        boolean scrolls = in instanceof ScrolledComposite;
        Rectangle place = control.getBounds();
        boolean across = !scrolls || (in.getStyle() & SWT.H_SCROLL) == 0;
        boolean down = !scrolls || (in.getStyle() & SWT.V_SCROLL) == 0;
        if (across && (place.x < room.x || place.x + place.width > room.x + room.width)
                || down && (place.y < room.y || place.y + place.height > room.y + room.height)) {
            fault(control, "at " + place + " reaches out of " + room);
        }
    }

    private void look(Control control) {
        if (control instanceof WritesItself own) {
            looks++;
            own.cut().forEach(text -> fault(control, "writes “" + text + "”"));
        } else if (control.getClass() == Canvas.class
                || control instanceof Canvas && !control.getClass().getName().startsWith("org.eclipse.swt.")) {
            if (control.getData("wordless") == null) {
                fault(control, "paints, and does not say whether its text had room");
            }
        } else if (control instanceof Label label) {
            lines(label, label.getText(), (label.getStyle() & SWT.WRAP) != 0);
        } else if (control instanceof Link link) {
            lines(link, link.getText().replaceAll("</?a>", ""), true);
        } else if (control instanceof Button || control instanceof CLabel) {
            looks++;
            Point wanted = control.computeSize(SWT.DEFAULT, SWT.DEFAULT);
            if (wanted.x > control.getSize().x || wanted.y > control.getSize().y) {
                fault(control, "wants " + wanted);
            }
        } else if (control instanceof Combo combo) {
            combo(combo);
        } else if (control instanceof Text text && (text.getStyle() & SWT.MULTI) == 0) {
            int room = typed.contains('"' + text.getText() + '"')
                    ? Integer.MAX_VALUE
                    : text.getClientArea().width - 2 * MARGIN;
            fits(text, text.getText().isEmpty() ? text.getMessage() : text.getText(), text.getFont(), room);
        } else if (control instanceof org.eclipse.swt.widgets.List list) {
            if ((list.getStyle() & SWT.H_SCROLL) == 0) {
                for (String line : list.getItems()) {
                    fits(list, line, list.getFont(), list.getClientArea().width - 2 * MARGIN);
                }
            }
            lineOf(list, list.getClientArea().height, list.getItemHeight());
        } else if (control instanceof Table table) {
            table(table);
        } else if (control instanceof Tree tree) {
            tree(tree);
        }
    }

    private void lines(Control control, String text, boolean wraps) {
        if (text.isEmpty()) {
            return;
        }
        looks++;
        Point room = control.getSize();
        Point wanted = control.computeSize(wraps ? Math.max(1, room.x) : SWT.DEFAULT, SWT.DEFAULT);
        if (wanted.y > room.y || !wraps && wanted.x > room.x) {
            fault(control, "“" + text + "” wants " + wanted + " and has " + room);
        }
        if (wraps) {
            Stream.of(text.split("[\\s-]+")).forEach(word -> fits(control, word, control.getFont(), room.x));
        }
    }

    /** What is chosen, the arrow beside it; or all of it in words below. */
    private void combo(Combo combo) {
        looks++;
        int around = around(combo);
        int wanted = extent(combo, combo.getText(), combo.getFont()).x + around;
        if (wanted > combo.getSize().x && !below(combo, combo.getText())) {
            fault(combo, "“" + combo.getText() + "” wants " + wanted + " and has " + combo.getSize().x);
        }
        if (combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).y > combo.getSize().y) {
            fault(combo, "is not high enough");
        }
    }

    /** Whether what stands in a field is repeated in full below it. */
    private static boolean below(Control field, String text) {
        return field.getData("whole") instanceof Label whole
                && whole.isVisible()
                && !text.isEmpty()
                && whole.getText().contains(text);
    }

    /** What a combo takes besides its longest text, as the system reckons it. */
    private static int around(Combo combo) {
        int longest = Arrays.stream(combo.getItems())
                .mapToInt(item -> extent(combo, item, combo.getFont()).x)
                .max()
                .orElse(0);
        return Math.max(0, combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x - longest);
    }

    private void table(Table table) {
        TableColumn[] columns = table.getColumns();
        int all = 0;
        for (int i = 0; i < columns.length; i++) {
            int width = columns[i].getWidth();
            all += width;
            fits(table, columns[i].getText(), table.getFont(), width - 2 * MARGIN);
            for (TableItem item : table.getItems()) {
                fits(table, item.getText(i), item.getFont(i), width - 2 * MARGIN);
            }
        }
        across(table, all, table.getClientArea().width);
        lineOf(table, table.getClientArea().height, table.getHeaderHeight() + table.getItemHeight());
    }

    private void tree(Tree tree) {
        TreeColumn[] columns = tree.getColumns();
        int all = 0;
        for (int i = 0; i < columns.length; i++) {
            int width = columns[i].getWidth();
            all += width;
            fits(tree, columns[i].getText(), tree.getFont(), width - 2 * MARGIN);
            for (TreeItem item : tree.getItems()) {
                fits(tree, item.getText(i), item.getFont(i), width - 2 * MARGIN);
            }
        }
        across(tree, all, tree.getClientArea().width);
        lineOf(tree, tree.getClientArea().height, tree.getHeaderHeight() + tree.getItemHeight());
    }

    private void across(Composite columns, int wanted, int room) {
        if (wanted > room && (columns.getStyle() & SWT.H_SCROLL) == 0) {
            fault(columns, "its columns want " + wanted + " and have " + room);
        }
    }

    private void lineOf(Control control, int room, int line) {
        if (room < line) {
            fault(control, "has no room for a line: " + room + " of " + line);
        }
    }

    private void fits(Control control, String text, Font font, int room) {
        if (!text.isEmpty()) {
            looks++;
            int wanted = extent(control, text, font).x;
            if (wanted > room) {
                fault(control, "“" + text + "” wants " + wanted + " and has " + room);
            }
        }
    }

    private static Point extent(Control control, String text, Font font) {
        GC gc = new GC(control);
        gc.setFont(font);
        Point extent = gc.textExtent(text);
        gc.dispose();
        return extent;
    }

    private void fault(Control control, String what) {
        Object id = control.getData("id");
        faults.add(
                control.getClass().getSimpleName() + " " + (id == null ? "in " + idAround(control) : id) + ": " + what);
    }

    private static Object idAround(Control control) {
        for (Composite round = control.getParent(); round != null; round = round.getParent()) {
            if (round.getData("id") != null) {
                return round.getData("id");
            }
        }
        return control.getParent().getClass().getSimpleName();
    }
}
