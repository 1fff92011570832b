package org.hidewright.window.workshop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.look.Steady;
import org.hidewright.window.look.WheelMoves;
import org.hidewright.window.slip.Editing;
import org.hidewright.window.slip.QuestionList;

/** The row that is chosen: its id and its fields, by the editors of slips; of a bundle’s row what it says, to be read. */
final class RowPane {
    private static final int MARGIN = 12;
    private static final int WIDTH = 200;

    private final Editing editing;
    private final OpenWorkshop workshop;
    private final ScrolledComposite scroll;
    private final Composite all;
    private final Composite called;
    private final Text id;
    private final Label refused;
    private final Label from;
    private final Link copy;
    private final Label read;
    private final QuestionList questions;
    private String table = "";
    private WorkshopFace.Line line;

    /** @param copies copies the row that is shown */
    RowPane(Composite parent, Editing editing, OpenWorkshop workshop, Runnable copies) {
        this.editing = editing;
        this.workshop = workshop;
        Inks inks = editing.inks();
        Palette palette = inks.palette();
        scroll = inks.dress(new ScrolledComposite(parent, SWT.V_SCROLL), palette.ink(), palette.paper());
        WheelMoves.on(scroll, inks);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        all = inks.dress(new Composite(scroll, SWT.NONE), palette.ink(), palette.paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = MARGIN;
        all.setLayout(layout);
        called = inks.dress(new Composite(all, SWT.NONE), palette.ink(), palette.paper());
        GridLayout two = new GridLayout(2, true);
        two.marginWidth = 0;
        two.marginHeight = 0;
        called.setLayout(two);
        called.setLayoutData(across());
        Label label = inks.dress(new Label(called, SWT.NONE), palette.quiet(), palette.paper());
        label.setText(editing.texts().text("workshop.id"));
        id = inks.dress(new Text(called, SWT.SINGLE | SWT.BORDER), palette.ink(), palette.paper());
        id.setData("id", "workshop.id");
        id.setToolTipText(editing.texts().text("workshop.id.help"));
        id.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        id.addListener(SWT.DefaultSelection, event -> call());
        id.addListener(SWT.FocusOut, event -> call());
        refused = label("workshop.id.told", palette.warning());
        from = label("workshop.row-from", palette.quiet());
        copy = inks.words(all, editing.texts().text("workshop.take-from-bundle"), copies);
        copy.setData("id", "workshop.take-from-bundle");
        copy.setLayoutData(across());
        read = label("workshop.row-read", palette.ink());
        questions = new QuestionList(all, editing, OpenWorkshop.PLACE, this::fit);
        questions.control().setLayoutData(across());
        scroll.setContent(all);
        scroll.addListener(SWT.Resize, event -> fit());
        show("", Optional.empty());
    }

    private Label label(String name, int ink) {
        Label label = editing.inks()
                .dress(new Label(all, SWT.WRAP), ink, editing.inks().palette().paper());
        label.setData("id", name);
        label.setLayoutData(across());
        return label;
    }

    private static GridData across() {
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = WIDTH;
        return data;
    }

    Control control() {
        return scroll;
    }

    /** Shows a row as it is now; nothing where none is chosen. */
    void show(String of, Optional<WorkshopFace.Line> now) {
        boolean other = !of.equals(table)
                || !now.map(WorkshopFace.Line::key)
                        .equals(Optional.ofNullable(line).map(WorkshopFace.Line::key));
        table = of;
        line = now.orElse(null);
        boolean own = line != null && line.own();
        if (other) {
            refused.setText("");
        }
        if (own && (other || !id.isFocusControl()) && !id.getText().equals(line.id())) {
            id.setText(line.id());
        }
        place(called, own);
        place(refused, own && !refused.getText().isEmpty());
        from.setText(
                line != null ? line.from() : of.isEmpty() ? "" : editing.texts().text("workshop.no-row.help"));
        place(from, !own);
        place(copy, line != null && !own);
        read.setText(line == null || own ? "" : said(line));
        place(read, line != null && !own);
        questions.show(own ? line.questions() : List.of());
        fit();
        if (other) {
            scroll.setOrigin(0, 0);
        }
    }

    private static String said(WorkshopFace.Line line) {
        return line.questions().stream()
                .filter(face -> !face.text().isEmpty())
                .map(face -> face.label() + "  " + face.read())
                .collect(Collectors.joining("\n"));
    }

    private static void place(Control control, boolean there) {
        ((GridData) control.getLayoutData()).exclude = !there;
        control.setVisible(there);
    }

    /** Another id is taken over when the field is left. */
    private void call() {
        if (line == null || id.getText().equals(line.id())) {
            return;
        }
        String wanted = id.getText();
        if (!workshop.call(table, line.id(), wanted)) {
            refused.setText(editing.texts().text("workshop.id-taken.help", wanted));
            place(refused, true);
            fit();
        }
    }

    private void fit() {
        Steady.keep(scroll, (free, least) -> {
            ((GridLayout) all.getLayout()).marginTop = free;
            int width = Math.max(1, scroll.getClientArea().width);
            Point size = all.computeSize(width, SWT.DEFAULT);
            scroll.setMinSize(size.x, Math.max(size.y, least));
            all.layout(true, true);
        });
    }

    /** Goes to the first field. */
    void enter() {
        if (line != null && line.own()) {
            questions.control().setFocus();
        }
    }
}
