package org.hidewright.window.slip;

import java.util.Objects;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.api.declaration.Kind;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Origin;

/** One question: its label, its editor, and below it how it was understood, or what is wrong with it. */
final class QuestionRow {
    private static final double SMALL = 0.85;
    private static final int STEP_IN = 12;

    private final String slip;
    private final OpenProject project;
    private final Inks inks;
    private final Label label;
    private final Control editor;
    private final Label under;
    private QuestionFace face;
    private boolean showing;

    QuestionRow(Composite parent, Inks inks, String slip, OpenProject project, QuestionFace face) {
        this.slip = slip;
        this.project = project;
        this.inks = inks;
        this.face = face;
        Palette palette = inks.palette();
        label = inks.dress(new Label(parent, SWT.WRAP), palette.quiet(), palette.paper());
        GridData left = new GridData(SWT.FILL, SWT.CENTER, true, false);
        left.horizontalIndent = STEP_IN * face.depth();
        label.setLayoutData(left);
        label.setText(face.label());
        editor = editor(parent);
        GridData right = new GridData(SWT.FILL, SWT.CENTER, true, false);
        right.widthHint = 130;
        editor.setLayoutData(right);
        under = inks.dress(new Label(parent, SWT.WRAP), palette.quiet(), palette.paper());
        under.setFont(inks.font(SMALL, false));
        GridData below = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
        below.horizontalIndent = STEP_IN * face.depth();
        below.widthHint = 200;
        under.setLayoutData(below);
        editor.setData("question", slip + "/" + face.path());
        editor.setToolTipText(face.help() + (face.limits().isEmpty() ? "" : "\n" + face.limits()));
        apply();
    }

    /** Questions of the same path and kind can show each other’s answers. */
    boolean canShow(QuestionFace other) {
        return other.path().equals(face.path())
                && other.question().kind() == face.question().kind()
                && other.choices().equals(face.choices());
    }

    /** Shows how the question stands; whether it takes another height than before. */
    boolean show(QuestionFace other) {
        boolean taller = !Objects.equals(told(other), told(face));
        face = other;
        apply();
        return taller;
    }

    private Control editor(Composite parent) {
        Palette palette = inks.palette();
        if (!face.choices().isEmpty()) {
            Combo combo = new Combo(parent, SWT.READ_ONLY);
            face.choices().forEach(choice -> combo.add(choice.label()));
            combo.addListener(SWT.Selection, event -> chosen(combo.getSelectionIndex()));
            return combo;
        }
        if (face.question().kind() == Kind.GROUP
                || face.question().kind() == Kind.ROWS
                || face.question().kind() == Kind.ITEM) {
            return inks.dress(new Label(parent, SWT.RIGHT), palette.ink(), palette.paper());
        }
        Text text = inks.dress(new Text(parent, SWT.SINGLE | SWT.BORDER), palette.ink(), palette.paper());
        text.addListener(SWT.Modify, event -> {
            if (!showing) {
                project.type(slip, face.path(), text.getText());
            }
        });
        text.addListener(SWT.FocusOut, event -> project.settle());
        return text;
    }

    private void chosen(int index) {
        String key = face.choices().get(index).key();
        if (face.question().kind() == Kind.VARIANTS) {
            project.choose(slip, face.path(), key);
        } else {
            project.type(slip, face.path(), key);
        }
        project.settle();
    }

    private void apply() {
        showing = true;
        Palette palette = inks.palette();
        if (editor instanceof Combo combo) {
            int at = face.choices().stream()
                    .map(QuestionFace.Choice::label)
                    .toList()
                    .indexOf(face.text());
            int byKey = face.choices().stream()
                    .map(QuestionFace.Choice::key)
                    .toList()
                    .indexOf(face.text());
            int index = at >= 0 ? at : byKey;
            if (combo.getSelectionIndex() != index) {
                combo.select(index);
            }
        } else if (editor instanceof Text text) {
            boolean preset = face.origin() == Origin.PRESET || face.origin() == Origin.OPEN;
            boolean linked = face.origin() == Origin.LINKED || face.origin() == Origin.WORKSHOP;
            text.setMessage(preset ? face.text() : "");
            String typed = preset ? "" : face.text();
            if (!text.getText().equals(typed) && !(text.isFocusControl() && !linked && !typed.isEmpty())) {
                text.setText(typed);
            }
            text.setEditable(!linked);
            text.setForeground(inks.color(linked ? palette.accent() : palette.ink()));
        } else {
            ((Label) editor).setText(face.text());
        }
        String told = told(face);
        if (!under.getText().equals(told)) {
            under.setText(told);
            ((GridData) under.getLayoutData()).exclude = told.isEmpty();
            under.setVisible(!told.isEmpty());
        } else if (told.isEmpty()) {
            ((GridData) under.getLayoutData()).exclude = true;
            under.setVisible(false);
        }
        under.setForeground(inks.color(face.wrong().isEmpty() ? palette.quiet() : palette.warning()));
        showing = false;
    }

    private static String told(QuestionFace face) {
        if (!face.wrong().isEmpty()) {
            return String.join("\n", face.wrong());
        } else if (!face.notes().isEmpty()) {
            return String.join("\n", face.notes());
        }
        return face.choices().isEmpty()
                        && face.question().kind() != Kind.ROWS
                        && face.question().kind() != Kind.GROUP
                ? face.understood()
                : "";
    }

    void dispose() {
        label.dispose();
        editor.dispose();
        under.dispose();
    }
}
