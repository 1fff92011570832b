package org.hidewright.window.begin;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.core.begin.Follower;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.AnswerFace;
import org.hidewright.window.model.ProjectFace;

/** What follows from the piece: each can be left out, and those that are in say what they come to. */
final class FollowsPane implements StepPane {
    private static final int STEP_IN = 24;
    /** In heights of a line of text. */
    private static final int WIDTH = 14;

    private final Map<String, Label> answers = new HashMap<>();

    /** Is told of one that is taken in or left out. */
    interface Chosen {
        void follow(String calculator, boolean in);
    }

    FollowsPane(Composite parent, Inks inks, Wording wording, List<Follower> followers, Chosen chosen) {
        for (Follower follower : followers) {
            String id = follower.calculator().id();
            Button in = inks.dress(
                    new Button(parent, SWT.CHECK),
                    inks.palette().ink(),
                    inks.palette().paper());
            in.setText(PiecePane.title(follower.calculator(), wording).replace("&", "&&"));
            in.setSelection(follower.in());
            in.setData("id", "begin.follows." + id);
            in.addListener(SWT.Selection, event -> chosen.follow(id, in.getSelection()));
            Label purpose = line(parent, inks, inks.palette().quiet());
            purpose.setText(PiecePane.purpose(follower.calculator(), wording));
            Label comes = line(parent, inks, inks.palette().ink());
            comes.setFont(inks.font(1, true));
            comes.setData("id", "begin.comes." + id);
            answers.put(id, comes);
        }
    }

    private static Label line(Composite parent, Inks inks, int ink) {
        Label label =
                inks.dress(new Label(parent, SWT.WRAP), ink, inks.palette().paper());
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.horizontalIndent = STEP_IN;
        data.widthHint = WIDTH * inks.em();
        label.setLayoutData(data);
        return label;
    }

    @Override
    public boolean show(ProjectFace face) {
        boolean other = false;
        for (Map.Entry<String, Label> answer : answers.entrySet()) {
            String text = face.slip(answer.getKey())
                    .map(slip -> slip.stateText()
                            + slip.answers().stream()
                                    .filter(AnswerFace::lead)
                                    .map(lead -> lead.label() + " " + lead.inline())
                                    .collect(Collectors.joining("; ")))
                    .orElse("");
            if (!answer.getValue().getText().equals(text)) {
                answer.getValue().setText(text);
                other = true;
            }
        }
        return other;
    }
}
