package org.hidewright.window.tables;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.WrappedCells;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SlipFace;
import org.hidewright.window.model.TableFace;
import org.hidewright.window.words.WindowTexts;

/** The answers of a slip that are tables, in columns, with room to read them. */
public final class TablesPage extends Composite {
    /** What the system paints round a table, in pixels. */
    private static final int EDGE = 2;

    private final Inks inks;
    private final String slip;
    private final Label title;
    private final ScrolledComposite scroll;
    private final Composite all;
    private List<TableFace> shown = List.of();

    /** @param leave called when the maker has seen enough */
    public TablesPage(Composite parent, Inks inks, WindowTexts texts, String slip, Runnable leave) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.slip = slip;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 12;
        setLayout(layout);
        inks.words(this, texts.text("page.back"), leave).setData("id", "tables.back");
        title = label(this, 1.25);
        scroll = inks.dress(
                new ScrolledComposite(this, SWT.H_SCROLL | SWT.V_SCROLL),
                inks.palette().ink(),
                inks.palette().paper());
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        scroll.setExpandHorizontal(true);
        all = inks.dress(
                new Composite(scroll, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout inside = new GridLayout(1, false);
        inside.marginWidth = 0;
        all.setLayout(inside);
        scroll.setContent(all);
        scroll.addListener(SWT.Resize, event -> lay());
    }

    private Label label(Composite in, double larger) {
        Label label = inks.dress(
                new Label(in, SWT.WRAP), inks.palette().ink(), inks.palette().paper());
        label.setFont(inks.font(larger, true));
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return label;
    }

    /** Shows the tables as they are now; none where the slip has none any more. */
    public void show(ProjectFace face) {
        title.setText(face.slip(slip).map(SlipFace::title).orElse(""));
        List<TableFace> tables = face.slip(slip).map(SlipFace::tables).orElse(List.of());
        if (!tables.equals(shown)) {
            shown = tables;
            for (Control old : all.getChildren()) {
                old.dispose();
            }
            tables.forEach(this::add);
            lay();
        }
        layout(true, true);
    }

    private void lay() {
        for (Control control : all.getChildren()) {
            if (control instanceof Table table) {
                int[] shares = new int[table.getColumnCount()]; // none: a table is as wide as what stands in it
                GridData data = (GridData) table.getLayoutData();
                data.widthHint = WrappedCells.lay(
                        table, scroll.getClientArea().width - 2 * table.getBorderWidth() - EDGE, shares);
                data.heightHint = WrappedCells.height(table) + EDGE;
            }
        }
        all.setSize(all.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        scroll.setMinWidth(all.getSize().x);
        all.layout(true, true);
    }

    private void add(TableFace face) {
        label(all, 1.1).setText(face.label());
        Table table = new Table(all, SWT.FULL_SELECTION | SWT.NO_SCROLL | SWT.BORDER);
        table.setData("id", "tables." + face.key());
        Spoken.name(table, face::label);
        Spoken.tell(table);
        table.setHeaderVisible(true);
        for (String head : face.head()) {
            WrappedCells.head(new TableColumn(table, SWT.LEFT), head);
        }
        for (List<String> row : face.rows()) {
            WrappedCells.set(new TableItem(table, SWT.NONE), row.toArray(String[]::new));
        }
        table.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
    }
}
