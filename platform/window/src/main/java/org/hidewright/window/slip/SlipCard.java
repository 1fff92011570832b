package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.SlipFace;

/** One slip: how it stands, its answers, what is told of it, its questions. */
public final class SlipCard extends Composite {
    private final Inks inks;
    private final OpenProject project;
    private final String id;
    private final Label sign;
    private final Label title;
    private final Label state;
    private final AnswersPane answers;
    private final Label urgent;
    private final Label noted;
    private final Composite questions;
    private final List<QuestionRow> rows = new ArrayList<>();

    SlipCard(Composite parent, Inks inks, OpenProject project, SlipFace face) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.project = project;
        this.id = face.id();
        Palette palette = inks.palette();
        inks.dress(this, palette.ink(), palette.paper());
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 10;
        setLayout(layout);
        sign = inks.dress(new Label(this, SWT.NONE), palette.ink(), palette.paper());
        title = inks.dress(new Label(this, SWT.NONE), palette.ink(), palette.paper());
        title.setFont(inks.font(1.1, true));
        title.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        title.setToolTipText(face.purpose());
        state = wide(new Label(this, SWT.WRAP), palette.warning());
        answers = new AnswersPane(this, inks);
        answers.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        answers.setData("answers", id);
        urgent = wide(new Label(this, SWT.WRAP), palette.warning());
        noted = wide(new Label(this, SWT.WRAP), palette.quiet());
        questions = inks.dress(new Composite(this, SWT.NONE), palette.ink(), palette.paper());
        questions.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        GridLayout inside = new GridLayout(2, false);
        inside.marginWidth = 0;
        inside.marginHeight = 4;
        inside.verticalSpacing = 3;
        questions.setLayout(inside);
        show(face);
    }

    private Label wide(Label label, int colour) {
        inks.dress(label, colour, inks.palette().paper());
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
        data.widthHint = 200;
        label.setLayoutData(data);
        return label;
    }

    public String slip() {
        return id;
    }

    /** Shows the slip as it is now; whether it may take another height than before. */
    boolean show(SlipFace face) {
        sign.setText(sign(face.state()));
        sign.setForeground(inks.color(
                face.state() == State.WORKED
                        ? inks.palette().accent()
                        : inks.palette().warning()));
        title.setText(face.title());
        boolean taller = text(state, face.stateText());
        taller |= text(urgent, told(face, true));
        taller |= text(noted, told(face, false));
        taller |= answers.show(face.answers());
        return questions(face.questions()) || taller;
    }

    private static String told(SlipFace face, boolean urgent) {
        return face.told().stream()
                .filter(one -> one.urgent() == urgent)
                .map(one -> one.severity() + ": " + one.what() + "\n→ " + one.next())
                .collect(Collectors.joining("\n"));
    }

    /** Told apart by shape as well as by colour. */
    private static String sign(State state) {
        return switch (state) {
            case WORKED -> "●";
            case REFUSED -> "▲";
            case WAITING -> "◔";
            case DORMANT -> "◌";
            case BROKEN -> "✕";
        };
    }

    private static boolean text(Label label, String text) {
        boolean other = !label.getText().equals(text);
        GridData data = (GridData) label.getLayoutData();
        if (other) {
            label.setText(text);
        }
        data.exclude = text.isEmpty();
        label.setVisible(!text.isEmpty());
        return other;
    }

    private boolean questions(List<QuestionFace> faces) {
        boolean same = rows.size() == faces.size();
        for (int i = 0; same && i < faces.size(); i++) {
            same = rows.get(i).canShow(faces.get(i));
        }
        boolean taller = !same;
        if (same) {
            for (int i = 0; i < faces.size(); i++) {
                taller |= rows.get(i).show(faces.get(i));
            }
        } else {
            rows.forEach(QuestionRow::dispose);
            rows.clear();
            faces.forEach(face -> rows.add(new QuestionRow(questions, inks, id, project, face)));
        }
        return taller;
    }

    /** Forgets what its answers were before. */
    void settle() {
        answers.settle();
    }

    /** Its answers as text. */
    public String answers() {
        return answers.text();
    }
}
