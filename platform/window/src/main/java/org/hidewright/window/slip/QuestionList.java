package org.hidewright.window.slip;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.hidewright.window.model.QuestionFace;

/** Questions under each other. Those that stay keep their editors, and with them what is being typed. */
public final class QuestionList {
    private final Editing editing;
    private final String slip;
    private final Runnable changed;
    private final Composite all;
    private final Map<String, QuestionRow> rows = new LinkedHashMap<>();

    /** @param changed called when something in it takes another height */
    public QuestionList(Composite parent, Editing editing, String slip, Runnable changed) {
        this.editing = editing;
        this.slip = slip;
        this.changed = changed;
        all = editing.inks()
                .dress(
                        new Composite(parent, SWT.NONE),
                        editing.inks().palette().ink(),
                        editing.inks().palette().paper());
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        all.setLayout(layout);
    }

    public Control control() {
        return all;
    }

    /** Shows questions; whether they take another height than those before. */
    public boolean show(List<QuestionFace> faces) {
        Set<String> wanted = faces.stream().map(QuestionList::key).collect(Collectors.toSet());
        boolean taller = rows.keySet().removeIf(key -> {
            boolean gone = !wanted.contains(key);
            if (gone) {
                rows.get(key).dispose();
            }
            return gone;
        });
        boolean moved = taller;
        for (QuestionFace face : faces) {
            QuestionRow row = rows.get(key(face));
            if (row != null && row.canShow(face)) {
                taller |= row.show(face);
            } else {
                if (row != null) {
                    row.dispose();
                }
                rows.put(key(face), new QuestionRow(all, editing, slip, face, changed));
                moved = true;
            }
        }
        if (moved) {
            Control last = null;
            for (QuestionFace face : faces) {
                last = rows.get(key(face)).after(last);
            }
        }
        return taller || moved;
    }

    /** Fields that no longer say what the project has are written anew. */
    void restore() {
        rows.values().forEach(QuestionRow::restore);
    }

    /** Brings a question to the keyboard; whether it is here. */
    boolean focus(String path) {
        QuestionRow row = rows.get(path);
        return row != null && row.focus();
    }

    private static String key(QuestionFace face) {
        return face.path().toString();
    }
}
