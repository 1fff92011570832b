package org.hidewright.window.compare;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Tools;
import org.hidewright.window.look.WrappedCells;
import org.hidewright.window.model.Comparison;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SlipFace;
import org.hidewright.window.words.WindowTexts;

/** Two slips of a kind line by line: what differs is marked, what is the same is quiet. Both go on being worked meanwhile. */
public final class ComparePage extends Composite {
    private static final String DIFFERS = "≠";
    private static final String INSIDE = "    ";

    private final Inks inks;
    private final WindowTexts texts;
    private final Label count;
    private final Combo left;
    private final Combo right;
    private final Table table;
    private List<SlipFace> alike = List.of();
    private String leftId = "";
    private String rightId = "";
    private ProjectFace shown;

    /** @param leave called when the maker has seen enough */
    public ComparePage(Composite parent, Inks inks, WindowTexts texts, Runnable leave) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.texts = texts;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 12;
        setLayout(layout);
        inks.words(this, texts.text("page.back"), leave).setData("id", "compare.back");
        count = inks.dress(
                new Label(this, SWT.WRAP), inks.palette().ink(), inks.palette().paper());
        count.setFont(inks.font(1, true));
        count.setData("id", "compare.count");
        count.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Tools both = new Tools(this, inks);
        left = choice(both, "compare.left");
        right = choice(both, "compare.right");
        left.addListener(SWT.Selection, event -> choose(true));
        right.addListener(SWT.Selection, event -> choose(false));
        table = new Table(this, SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setData("id", "compare.lines");
        table.setHeaderVisible(true);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        for (int i = 0; i < 4; i++) {
            WrappedCells.head(new TableColumn(table, SWT.LEFT), "");
        }
        Spoken.name(table, () -> left.getText() + ", " + right.getText() + ": " + count.getText());
        Spoken.name(left, () -> texts.text("compare.left"));
        Spoken.name(right, () -> texts.text("compare.right"));
        table.addListener(SWT.Resize, event -> widths());
    }

    private static Combo choice(Composite in, String id) {
        Combo combo = new Combo(in, SWT.READ_ONLY);
        combo.setData("id", id);
        return combo;
    }

    /**
     * Compares two slips of a kind.
     *
     * @param other the other one, which may be about to come; empty for the next of the kind
     */
    public void compare(String slip, String other) {
        leftId = slip;
        rightId = other;
    }

    /** Shows both as they are now. */
    public void show(ProjectFace face) {
        shown = face;
        String kind = face.slip(leftId).map(SlipFace::calculator).orElse("");
        alike = face.slips().stream()
                .filter(slip -> slip.calculator().equals(kind))
                .toList();
        if (rightId.isEmpty()) {
            List<String> others = alike.stream()
                    .map(SlipFace::id)
                    .filter(id -> !id.equals(leftId))
                    .toList();
            List<String> all = alike.stream().map(SlipFace::id).toList();
            rightId = others.stream()
                    .filter(id -> all.indexOf(id) > all.indexOf(leftId))
                    .findFirst()
                    .or(() -> others.stream().findFirst())
                    .orElse("");
        }
        select(left, leftId);
        select(right, rightId);
        if (face.slip(leftId).isPresent() && face.slip(rightId).isPresent()) {
            show(Comparison.of(
                    face.slip(leftId).orElseThrow(), face.slip(rightId).orElseThrow()));
        } else {
            table.removeAll();
            count.setText(texts.text("compare.alone.help"));
        }
    }

    private void select(Combo combo, String id) {
        String[] titles = alike.stream().map(SlipFace::title).toArray(String[]::new);
        if (!List.of(titles).equals(List.of(combo.getItems()))) {
            combo.setItems(titles);
            layout(true, true); // they may need another row
        }
        int index = alike.stream().map(SlipFace::id).toList().indexOf(id);
        if (index >= 0 && combo.getSelectionIndex() != index) {
            combo.select(index);
        }
    }

    private void choose(boolean ofLeft) {
        if (ofLeft) {
            leftId = alike.get(left.getSelectionIndex()).id();
        } else {
            rightId = alike.get(right.getSelectionIndex()).id();
        }
        show(shown);
    }

    private void show(Comparison comparison) {
        count.setText(texts.many("compare.count", comparison.differences()));
        String[] head = {"", "", comparison.left(), comparison.right()};
        for (int i = 0; i < head.length; i++) {
            WrappedCells.head(table.getColumn(i), head[i]);
        }
        List<Comparison.Line> lines = new ArrayList<>(comparison.answers());
        lines.addAll(comparison.questions());
        table.setRedraw(false);
        table.setItemCount(lines.size());
        for (int i = 0; i < lines.size(); i++) {
            Comparison.Line line = lines.get(i);
            TableItem item = table.getItem(i);
            item.setFont(inks.font(1, line.differs()));
            WrappedCells.set(
                    item,
                    line.differs() ? DIFFERS : "",
                    INSIDE.repeat(line.depth()) + line.label(),
                    line.left(),
                    line.right());
            item.setForeground(inks.color(
                    line.differs() ? inks.palette().ink() : inks.palette().quiet()));
        }
        table.setRedraw(true);
        List.of(table, left, right).forEach(Spoken::tell);
        widths();
    }

    private void widths() {
        WrappedCells.lay(table, table.getClientArea().width, 0, 1, 1, 1);
    }
}
