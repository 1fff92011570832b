package org.hidewright.window.workshop;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Tools;
import org.hidewright.window.slip.Editing;
import org.hidewright.window.slip.QuestionList;
import org.hidewright.window.slip.RowDeeds;
import org.hidewright.window.words.WindowTexts;

/**
 * The workshop: on the left its tables, in the middle the rows of one and below them the projects that take the row that is
 * chosen, on the right its fields.
 */
public final class WorkshopPage extends Composite {
    private static final int[] ACROSS = {20, 50, 30};
    private static final int[] DOWN = {64, 36};
    private static final int MARGIN = 12;
    private static final int WIDTH = 120;

    private final Inks inks;
    private final OpenWorkshop workshop;
    private final Round round;
    private final Label name;
    private final Label told;
    private final org.eclipse.swt.widgets.List tables;
    private final QuestionList head;
    private final Label wrong;
    private final Label purpose;
    private final RowsTable rows;
    private final RowPane row;
    private final UsesPane uses;
    private final Link readHide;
    private WorkshopFace face;
    private String table = "";
    /** The uses of an earlier row are not shown any more. */
    private long latest;
    /** Whether the row that comes next is to be typed in. */
    private boolean entering;

    /** What happens outside of the page when something is asked for on it. */
    public interface Round {
        /** Goes back to what was there before. */
        void leave();

        /** Saves the workshop. */
        void save();

        /** Reads its file anew. */
        void readAgain();

        /** Opens a project. */
        void openProject(Path project);

        /** Whether hides that are read from drawings go into a table. */
        boolean hidesGoInto(String table);

        /** Asks for the drawing of a hide, and adds it. */
        void readHide();

        /** Asks for a folder of projects that are to be known too. */
        void look();

        /** Finds the projects that take a row, and shows them on the thread of the window. */
        void uses(String table, String row, Consumer<List<RowUse>> shows);
    }

    public WorkshopPage(Composite parent, Inks inks, WindowTexts texts, OpenWorkshop workshop, Round round) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.workshop = workshop;
        this.round = round;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = MARGIN;
        setLayout(layout);
        Tools tools = new Tools(this, inks);
        tools.words(texts.text("workshop.back"), "workshop.back", round::leave);
        name = inks.dress(
                new Label(tools, SWT.NONE), inks.palette().ink(), inks.palette().paper());
        name.setFont(inks.font(1.25, true));
        name.setData("id", "workshop.title");
        tools.words(texts.text("deed.save"), "workshop.save", round::save);
        tools.words(texts.text("workshop.read-again"), "workshop.read-again", round::readAgain)
                .setToolTipText(texts.text("workshop.read-again.help"));
        tools.words(texts.text("deed.record"), "workshop.record", this::record)
                .setToolTipText(texts.text("workshop.record.help"));
        told = label(this, inks.palette().warning());
        told.setData("id", "workshop.told");
        Editing editing = new Editing(inks, texts, workshop, Optional.empty());
        SashForm across = sash(this, SWT.HORIZONTAL);
        across.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        Composite left = column(across);
        tables = inks.dress(
                new org.eclipse.swt.widgets.List(left, SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL),
                inks.palette().ink(),
                inks.palette().paper());
        tables.setData("id", "workshop.tables");
        tables.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        tables.addListener(SWT.Selection, event -> choose(tables.getSelectionIndex()));
        head = new QuestionList(left, editing, OpenWorkshop.PLACE, () -> left.layout(true, true));
        head.control().setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        wrong = label(left, inks.palette().warning());
        wrong.setData("id", "workshop.wrong");
        SashForm down = sash(across, SWT.VERTICAL);
        Composite middle = column(down);
        purpose = label(middle, inks.palette().quiet());
        purpose.setData("id", "workshop.purpose");
        Tools deeds = new Tools(middle, inks);
        rows = new RowsTable(middle, inks, texts, this::rowChosen, this::enter);
        rows.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        new RowDeeds(editing, OpenWorkshop.PLACE, () -> AnswerPath.of(table), this::ownRow, rows.control())
                .into(deeds, "workshop");
        deeds.words(texts.text("workshop.copy"), "workshop.copy", this::copy);
        readHide = deeds.words(texts.text("deed.hide-drawn"), "workshop.hide-drawn", round::readHide);
        readHide.setLayoutData(new RowData());
        uses = new UsesPane(down, inks, texts, round::openProject, round::look);
        down.setWeights(DOWN);
        row = new RowPane(across, editing, workshop, this::copy);
        across.setWeights(ACROSS);
        tell("");
        workshop.shownBy(this::show);
        tables.setFocus();
    }

    private SashForm sash(Composite in, int way) {
        return inks.dress(
                new SashForm(in, way | SWT.SMOOTH),
                inks.palette().ink(),
                inks.palette().paper());
    }

    private Composite column(Composite in) {
        Composite column = inks.dress(
                new Composite(in, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        column.setLayout(layout);
        return column;
    }

    private Label label(Composite in, int ink) {
        Label label = inks.dress(new Label(in, SWT.WRAP), ink, inks.palette().paper());
        GridData across = new GridData(SWT.FILL, SWT.TOP, true, false);
        across.widthHint = WIDTH;
        label.setLayoutData(across);
        return label;
    }

    /** Tells something on the page that is to be looked at. */
    public void warn(String text) {
        told.setForeground(inks.color(inks.palette().warning()));
        say(text);
    }

    /** Tells something on the page. */
    public void tell(String text) {
        told.setForeground(inks.color(inks.palette().quiet()));
        say(text);
    }

    private void say(String text) {
        told.setText(text);
        ((GridData) told.getLayoutData()).exclude = text.isEmpty();
        layout(true, true);
    }

    private void show(WorkshopFace now) {
        if (isDisposed()) {
            return;
        }
        face = now;
        String file = String.valueOf(workshop.path().getFileName());
        name.setText((now.name().isEmpty() ? file : now.name()) + (workshop.unsaved() ? " *" : ""));
        name.setToolTipText(workshop.path().toString());
        name.requestLayout();
        List<String> titles = now.tables().stream().map(WorkshopPage::title).toList();
        if (!List.of(tables.getItems()).equals(titles)) {
            int chosen = tables.getSelectionIndex();
            tables.setItems(titles.toArray(String[]::new));
            tables.setSelection(chosen);
        }
        if (now.table(table).isEmpty() && !now.tables().isEmpty()) {
            table = now.tables().stream()
                    .filter(one -> one.own() > 0)
                    .findFirst()
                    .orElse(now.tables().get(0))
                    .id();
        }
        tables.setSelection(
                now.tables().stream().map(WorkshopFace.Shown::id).toList().indexOf(table));
        boolean higher = head.show(now.head());
        String problems = String.join("\n", now.told());
        if (higher || !wrong.getText().equals(problems)) {
            wrong.setText(problems);
            wrong.getParent().layout(true, true);
        }
        rows();
    }

    private static String title(WorkshopFace.Shown table) {
        return table.title() + (table.own() == 0 ? "" : "  " + table.own()) + (table.wrong() == 0 ? "" : "  !");
    }

    private void choose(int index) {
        if (index >= 0 && index < face.tables().size()) {
            table = face.tables().get(index).id();
            rows();
        }
    }

    private void rows() {
        face.table(table).ifPresent(now -> {
            if (!purpose.getText().equals(now.purpose())) {
                purpose.setText(now.purpose());
                purpose.getParent().layout();
            }
            offerToReadHides(round.hidesGoInto(table));
            rows.show(now);
            rowChosen();
        });
    }

    private void offerToReadHides(boolean here) {
        RowData place = (RowData) readHide.getLayoutData();
        if (place.exclude == here) {
            place.exclude = !here;
            readHide.setVisible(here);
            readHide.requestLayout();
        }
    }

    private void rowChosen() {
        Optional<WorkshopFace.Line> line = rows.line();
        row.show(table, line);
        if (entering && line.isPresent()) {
            entering = false;
            row.enter();
        }
        long mine = ++latest;
        if (line.isEmpty()) {
            uses.show("", List.of());
            return;
        }
        round.uses(table, line.get().id(), found -> {
            if (mine == latest && !isDisposed()) {
                uses.show(line.get().id(), found);
            }
        });
    }

    private void enter() {
        row.enter();
    }

    /** Of a bundle’s row nothing can be changed. */
    private String ownRow() {
        return rows.line()
                .filter(WorkshopFace.Line::own)
                .map(WorkshopFace.Line::id)
                .orElse("");
    }

    private void copy() {
        rows.line()
                .flatMap(line -> workshop.copyRow(table, line.id(), line.own()))
                .ifPresent(rows::choose);
    }

    /** Shows a table, and a row of it that is there or about to come. */
    public void reveal(String of, String id) {
        table = of;
        entering = true;
        rows.choose(id);
        if (face != null) {
            show(face);
        }
    }

    private void record() {
        reveal(Recorded.TABLE, new Recorded(workshop).now(Map.of()));
    }
}
