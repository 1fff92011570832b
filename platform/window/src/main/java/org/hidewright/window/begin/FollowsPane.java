package org.hidewright.window.begin;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.begin.Follower;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.AnswerFace;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SlipFace;

/** What follows from the piece: each can be left out, and those that are in say what they come to. */
final class FollowsPane implements StepPane {
    private static final int STEP_IN = 24;
    /** In heights of a line of text. */
    private static final int WIDTH = 14;

    private final Map<String, Label> answers = new HashMap<>();
    private final Map<String, Label> checks = new HashMap<>();

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
            Label told = line(parent, inks, inks.palette().warning());
            told.setData("id", "begin.told." + id);
            checks.put(id, told);
            say(told, "");
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
            other |= say(
                    answer.getValue(),
                    face.slip(answer.getKey()).map(FollowsPane::comesTo).orElse(""));
        }
        for (Map.Entry<String, Label> check : checks.entrySet()) {
            other |= say(
                    check.getValue(),
                    face.slip(check.getKey()).map(FollowsPane::isToBeChecked).orElse(""));
        }
        return other;
    }

    private static String comesTo(SlipFace slip) {
        return slip.stateText()
                + slip.answers().stream()
                        .filter(AnswerFace::lead)
                        .map(lead -> lead.label() + " " + lead.inline())
                        .collect(Collectors.joining("; "));
    }

    /** What a sum leaves out has to be read beside it, as has what it waits for: a price that lacks the buckle is none. */
    private static String isToBeChecked(SlipFace slip) {
        return Stream.concat(
                        slip.told().stream()
                                .filter(told -> told.how() == Severity.CHECK)
                                .map(told -> told.severity() + ": " + told.what()),
                        slip.questions().stream().flatMap(question -> question.wrong().stream()))
                .collect(Collectors.joining("\n"));
    }

    private static boolean say(Label label, String text) {
        if (label.getText().equals(text) && label.getVisible() == !text.isEmpty()) {
            return false;
        }
        label.setText(text);
        label.setVisible(!text.isEmpty());
        ((GridData) label.getLayoutData()).exclude = text.isEmpty();
        return true;
    }
}
