package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.hidewright.window.look.Palette;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Tools;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.RowFace;

/**
 * A table that is asked for: its rows in lines, and below them what the chosen row is asked. Rows are added, moved, taken out
 * and pasted from a spreadsheet.
 */
final class RowsEditor {
    private static final String BETWEEN = "  ·  ";
    /** Less has no room for what scrolls. */
    private static final int LEAST_LINES = 2;

    private static final int MOST_LINES = 8;

    private final Runnable changed;
    private final Composite all;
    private final org.eclipse.swt.widgets.List lines;
    private final QuestionList inside;
    private QuestionFace face;
    private String chosen = "";

    RowsEditor(Composite parent, Editing editing, String slip, QuestionFace face, Runnable changed) {
        this.face = face;
        this.changed = changed;
        Palette palette = editing.inks().palette();
        all = editing.inks().dress(new Composite(parent, SWT.NONE), palette.ink(), palette.paper());
        all.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        layout.verticalSpacing = 3;
        all.setLayout(layout);
        lines = new org.eclipse.swt.widgets.List(all, SWT.SINGLE | SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        lines.setData("id", slip + "/" + face.path() + "/rows");
        Spoken.name(lines, () -> this.face.label());
        Spoken.about(lines, () -> this.face.help());
        lines.addListener(SWT.Selection, event -> choose(lines.getSelectionIndex()));
        Tools tools = new Tools(all, editing.inks());
        new RowDeeds(editing, slip, () -> this.face.path(), () -> index() < 0 ? "" : chosen, lines)
                .into(tools, slip + "/" + face.path());
        inside = new QuestionList(all, editing, slip, changed);
        inside.control().setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        show(face);
    }

    Control control() {
        return all;
    }

    /** Shows the table as it is now; whether it takes another height than before. */
    boolean show(QuestionFace other) {
        boolean more = other.rows().size() != lines.getItemCount();
        face = other;
        List<String> texts = face.rows().stream().map(RowsEditor::line).toList();
        for (int i = 0; i < texts.size(); i++) {
            if (i >= lines.getItemCount()) {
                lines.add(texts.get(i));
            } else if (!lines.getItem(i).equals(texts.get(i))) {
                lines.setItem(i, texts.get(i));
            }
        }
        if (lines.getItemCount() > texts.size()) {
            lines.remove(texts.size(), lines.getItemCount() - 1);
        }
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.heightHint = lines.getItemHeight() * Math.max(LEAST_LINES, Math.min(MOST_LINES, texts.size()));
        data.widthHint = 200;
        lines.setLayoutData(data);
        int index = index();
        if (lines.getSelectionIndex() != index) {
            lines.setSelection(index);
        }
        Spoken.tell(lines);
        return inside() || more;
    }

    void restore() {
        inside.restore();
    }

    private static String line(RowFace row) {
        return row.cells().isEmpty() ? row.id() : row.id() + BETWEEN + String.join(BETWEEN, row.cells());
    }

    private int index() {
        return face.rows().stream().map(RowFace::id).toList().indexOf(chosen);
    }

    private boolean inside() {
        List<QuestionFace> questions = new ArrayList<>();
        int index = index();
        if (index >= 0) {
            questions.addAll(face.rows().get(index).variant());
            questions.addAll(face.rows().get(index).questions());
        }
        return inside.show(questions);
    }

    private void choose(int index) {
        chosen = index < 0 ? "" : face.rows().get(index).id();
        inside();
        changed.run();
    }
}
