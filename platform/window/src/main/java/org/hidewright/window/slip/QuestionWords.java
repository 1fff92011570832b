package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Origin;

/** What is said of a question beside its editor: what it means, and below it how it stands. */
final class QuestionWords {
    private final Editing editing;
    private final Control editor;

    QuestionWords(Editing editing, Control editor) {
        this.editing = editing;
        this.editor = editor;
    }

    /** @param pointing whether it is told that there is a drawing */
    String help(QuestionFace face, boolean pointing) {
        StringBuilder text = new StringBuilder(face.help());
        if (!face.limits().isEmpty()) {
            text.append('\n').append(editing.texts().text("question.usual.help", face.limits()));
        }
        if (face.isTaken()) {
            text.append('\n').append(editing.texts().text("question.unlink.help"));
        }
        if (pointing && face.question().stock().isPresent() && editing.links().isPresent()) {
            text.append('\n').append(editing.texts().text("question.take-row.help"));
        }
        if (pointing && face.question().picture().isPresent() && editing.links().isPresent()) {
            text.append('\n').append(editing.texts().text("question.picture.help"));
        }
        return text.toString().strip();
    }

    /** How it was understood, where it is linked to, what is wrong with it, or what is usual. */
    String told(QuestionFace shown) {
        String whole = isCut() ? editing.texts().text("question.understood", shown.read()) : "";
        return lines(whole, toldBeside(shown));
    }

    private static String lines(String above, String below) {
        return above.isEmpty() || below.isEmpty() ? above + below : above + "\n" + below;
    }

    private String toldBeside(QuestionFace shown) {
        if (!shown.wrong().isEmpty()) {
            return String.join("\n", shown.wrong());
        } else if (shown.isTaken()) {
            String key = shown.origin() == Origin.LINKED ? "question.linked" : "question.workshop";
            return lines(editing.texts().text(key, shown.text()), String.join("\n", shown.notes()));
        } else if (!shown.notes().isEmpty()) {
            return String.join("\n", shown.notes());
        }
        if (editor instanceof Text text
                && text.isFocusControl()
                && text.getText().isEmpty()
                && !text.getMessage().isEmpty()) {
            return editing.texts().text("question.usual.help", text.getMessage());
        }
        boolean typed = shown.choices().isEmpty() && !shown.holdsOthers() && shown.origin() == Origin.TYPED;
        return typed && !shown.understood().isEmpty()
                ? editing.texts().text("question.understood", shown.understood())
                : "";
    }

    private boolean isCut() {
        int room = editor.getSize().x;
        return editor instanceof Combo && room > 0 && editor.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > room;
    }
}
