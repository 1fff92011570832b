package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.window.look.FoldWords;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Tools;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.SlipFace;

/**
 * One slip: how it stands, its answers, what is told of it, its questions; tables, working and sources folded away. Questions
 * that nobody has answered and that have a preset stand behind a line that opens them.
 */
public final class SlipCard extends Composite {
    private static final int MANY = 3;
    private static final int LEAST_WORDS = 200;

    private final Desk desk;
    private final String id;
    private final Runnable taller;
    private final SlipHead head;
    private final Composite trial;
    private final Label state;
    private final AnswersPane answers;
    private final FoldedBars bars;
    private final Label urgent;
    private final Label cautioned;
    private final Foldable cautions;
    private final Link installed;
    private final Label noted;
    /** Made once something is searched for on the slip, which is so on few. */
    private Optional<SearchPane> search = Optional.empty();

    private final QuestionList questions;
    private final Link rest;
    private final QuestionList presets;
    /** The questions that stood at their usual answer when they were last sorted. */
    private final Set<AnswerPath> leftBefore = new HashSet<>();

    private final Link tables;
    private final Foldable working;
    private final Foldable sources;
    private SlipFace face;

    private boolean restOpen;
    private boolean shownFolded;
    private boolean first = true;

    /** @param taller called when something in it takes another height */
    SlipCard(Composite parent, Desk desk, SlipFace face, Runnable taller) {
        super(parent, SWT.NONE);
        this.desk = desk;
        this.id = face.id();
        this.taller = taller;
        this.face = face;
        Palette palette = desk.inks().palette();
        desk.inks().dress(this, palette.ink(), palette.paper());
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 8;
        layout.verticalSpacing = 4;
        setLayout(layout);
        head = new SlipHead(this, desk, face);
        Spoken.name(this, () -> this.face.title() + ", " + standing());
        trial = trial();
        state = words(palette.warning());
        answers = wide(new AnswersPane(this, desk, id));
        answers.setData("id", id + "/answers");
        bars = new FoldedBars(this, desk.inks(), desk.texts(), id + "/bars", taller);
        urgent = words(palette.warning());
        urgent.setData("id", id + "/urgent");
        installed = wide(desk.inks()
                .words(
                        this,
                        desk.texts().text("deed.bundles"),
                        () -> desk.round().installed(this.face.calculator())));
        installed.setData("id", id + "/installed");
        cautioned = words(palette.ink()); // what is wrong has the colour of a warning to itself
        cautioned.setData("id", id + "/cautioned");
        cautions = new Foldable(this, desk.inks(), desk.texts(), id + "/cautions", taller);
        noted = words(palette.quiet());
        questions = new QuestionList(this, desk.editing(), id, taller);
        wide(questions.control());
        rest = wide(desk.inks().words(this, "", this::turnRest));
        rest.setData("id", id + "/rest");
        presets = new QuestionList(this, desk.editing(), id, taller);
        wide(presets.control());
        tables = wide(desk.inks().words(this, "", () -> desk.round().tables(id)));
        tables.setData("id", id + "/tables");
        working = new Foldable(this, desk.inks(), desk.texts(), id + "/working", taller);
        sources = new Foldable(this, desk.inks(), desk.texts(), id + "/sources", taller);
        show(face);
    }

    /** How it stands, in words; what a sign and its colour say to the eye. */
    private String standing() {
        if (!face.stateText().isEmpty()) {
            return face.stateText();
        }
        return face.urgent() == 0
                ? desk.texts().text("slip.worked")
                : desk.texts().many("project.look", face.urgent());
    }

    private <C extends Control> C wide(C control) {
        desk.inks()
                .dress(
                        control,
                        desk.inks().palette().ink(),
                        desk.inks().palette().paper());
        control.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        return control;
    }

    /** Of a slip that only tries something out: that it is not made, and how that ends. */
    private Composite trial() {
        Composite all = wide(new Composite(this, SWT.NONE));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        all.setLayout(layout);
        Label not = desk.inks()
                .dress(
                        new Label(all, SWT.WRAP),
                        desk.inks().palette().ink(),
                        desk.inks().palette().paper());
        not.setText(desk.texts().text("slip.trial"));
        not.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        ((GridData) not.getLayoutData()).widthHint = LEAST_WORDS;
        Tools tools = new Tools(all, desk.inks());
        tools.words(
                desk.texts().text("slip.trial-take"),
                id + "/take",
                () -> desk.project().takeOverTrial(id));
        tools.words(
                desk.texts().text("slip.trial-drop"),
                id + "/drop",
                () -> desk.project().removeSlip(id));
        return all;
    }

    private Label words(int colour) {
        Label label = wide(new Label(this, SWT.WRAP));
        label.setForeground(desk.inks().color(colour));
        ((GridData) label.getLayoutData()).widthHint = LEAST_WORDS;
        return label;
    }

    public String slip() {
        return id;
    }

    private boolean isFolded() {
        return desk.round().isFolded(id);
    }

    /** Shows the slip as it is now; whether it may take another height than before. */
    boolean show(SlipFace shown) {
        if (shownFolded == isFolded() && shown.equals(face) && !first) {
            search.ifPresent(SearchPane::restore);
            questions.restore();
            presets.restore();
            return false;
        }
        first = false;
        boolean foldedBefore = shownFolded;
        face = shown;
        boolean folded = isFolded();
        shownFolded = folded;
        boolean other = head.show(face, folded) || folded != foldedBefore;
        other |= place(trial, !folded && !face.triesFor().isEmpty());
        other |= text(urgent, told(Set.of(Severity.STOP, Severity.CHECK)));
        other |= place(installed, !folded && face.state() == State.DORMANT);
        other |= cautions(folded);
        other |= text(noted, folded ? "" : told(Set.of(Severity.NOTE)));
        other |= answers(folded);
        return questions(folded) | folds(folded) || other;
    }

    /** Answers, or how the slip stands in place of them: what is typed below stays where it is. */
    private boolean answers(boolean folded) {
        boolean open = face.state() == State.REFUSED || face.state() == State.WAITING;
        boolean elsewhere = face.state() == State.WAITING || face.state() == State.DORMANT; // it is to be mended
        Palette palette = desk.inks().palette();
        int colour = elsewhere ? palette.quiet() : palette.warning();
        if (!state.getForeground().equals(desk.inks().color(colour))) {
            state.setForeground(desk.inks().color(colour));
        }
        boolean other =
                open && !answers.isEmpty() ? answers.showOpen(face.stateText(), colour) : answers.show(face.answers());
        other |= text(state, folded || open && !answers.isEmpty() ? "" : face.stateText());
        place(answers, !folded && !answers.isEmpty());
        return other;
    }

    private boolean folds(boolean folded) {
        boolean any = !folded && !face.tables().isEmpty();
        if (any) {
            Inks.say(tables, desk.texts().many("slip.tables", face.tables().size()) + " ▸");
        }
        boolean other = place(tables, any);
        other |= bars.show(folded ? List.of() : face.bars());
        other |= working.show(desk.texts().text("slip.working"), folded ? "" : String.join("\n", face.working()));
        other |= sources.show(
                desk.texts().many("slip.sources", face.sources().size()),
                folded ? "" : String.join("\n", face.sources()));
        return other;
    }

    private boolean questions(boolean folded) {
        List<QuestionFace> left = new ArrayList<>();
        List<QuestionFace> shown = new ArrayList<>();
        List<QuestionFace> sought = face.questions().stream()
                .filter(question -> isSought(question.path()))
                .toList();
        boolean stays = holdsFocus();
        boolean inLeft = false;
        for (QuestionFace question : face.questions()) {
            if (isSought(question.path())) {
                continue;
            }
            if (question.depth() == 0) {
                boolean quiet = question.isLeft() && isLeftInside(question);
                inLeft = stays ? leftBefore.contains(question.path()) && (quiet || restOpen) : quiet;
            }
            (inLeft ? left : shown).add(question);
        }
        long count = left.stream().filter(question -> question.depth() == 0).count();
        if (count < MANY && !stays) {
            left.clear();
            shown = face.questions().stream()
                    .filter(question -> !isSought(question.path()))
                    .toList();
        }
        leftBefore.clear();
        left.forEach(question -> leftBefore.add(question.path()));
        boolean other = search(folded, sought);
        other |= questions.show(folded ? List.of() : shown);
        other |= presets.show(folded || !restOpen ? List.of() : left);
        boolean anyLeft = !left.isEmpty() && !folded;
        if (anyLeft) {
            FoldWords.say(
                    rest,
                    desk.texts().text("slip.rest", count),
                    restOpen,
                    desk.texts().text(restOpen ? "fold.open" : "fold.shut"));
        }
        other |= place(rest, anyLeft);
        place(questions.control(), !folded && !shown.isEmpty());
        place(presets.control(), anyLeft && restOpen);
        return other;
    }

    private boolean search(boolean folded, List<QuestionFace> sought) {
        boolean searched = !folded && !face.sought().isEmpty();
        if (searched && search.isEmpty()) {
            SearchPane made = wide(new SearchPane(this, desk, id, taller));
            made.moveAbove(questions.control());
            search = Optional.of(made);
        }
        return search.map(pane -> pane.show(searched ? sought : List.of()) | place(pane, searched))
                .orElse(false);
    }

    private boolean isSought(AnswerPath path) {
        return !face.sought().isEmpty()
                && (path.toString().equals(face.sought()) || path.toString().startsWith(face.sought() + "."));
    }

    /** Whether somebody is at one of the questions: then each stays where it is, and so does what is being typed. */
    private boolean holdsFocus() {
        for (Control at = getDisplay().getFocusControl(); at != null; at = at.getParent()) {
            if (at == questions.control()
                    || at == presets.control()
                    || search.filter(at::equals).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Whether nothing inside a question is wrong, which would have to be seen. */
    private boolean isLeftInside(QuestionFace question) {
        String inside = question.path() + ".";
        return face.questions().stream()
                .filter(other -> other.path().toString().startsWith(inside))
                .allMatch(QuestionFace::isLeft);
    }

    private void turnRest() {
        restOpen = !restOpen;
        questions(isFolded());
        taller.run();
    }

    /** What there is to beware of stands there; what to do about it under words that open it. */
    private boolean cautions(boolean folded) {
        List<SlipFace.Told> told = folded
                ? List.of()
                : face.told().stream()
                        .filter(one -> one.how() == Severity.CAUTION)
                        .toList();
        boolean other = text(
                cautioned,
                told.stream().map(one -> one.severity() + ": " + one.what()).collect(Collectors.joining("\n")));
        String next = told.stream()
                .map(SlipFace.Told::next)
                .filter(text -> !text.isEmpty())
                .map(text -> "→ " + text)
                .collect(Collectors.joining("\n"));
        return cautions.show(desk.texts().text("slip.cautions"), next) | other;
    }

    private String told(Set<Severity> which) {
        return face.told().stream()
                .filter(one -> which.contains(one.how()))
                .map(one -> one.severity() + ": " + one.what() + (one.next().isEmpty() ? "" : "\n→ " + one.next()))
                .collect(Collectors.joining("\n"));
    }

    /** Gives a label its text, and its place where it has any; whether it takes another height than before. */
    private static boolean text(Label label, String text) {
        if (label.getText().equals(text)) {
            return place(label, !text.isEmpty());
        }
        int before = label.getSize().y;
        label.setText(text);
        return place(label, !text.isEmpty())
                || label.computeSize(Math.max(1, label.getSize().x), SWT.DEFAULT).y != before;
    }

    /** Gives a control its place, or none; whether that is another than before. */
    private static boolean place(Control control, boolean there) {
        GridData data = (GridData) control.getLayoutData();
        boolean other = data.exclude == there;
        if (other) {
            data.exclude = !there;
            control.setVisible(there);
        }
        return other;
    }

    /**
     * Brings a question to the keyboard; one that is left to its preset is brought out first.
     *
     * @param question where its answer stands; empty for none
     */
    public void focus(String question) {
        if (question.isEmpty()
                || search.filter(pane -> pane.focus(question)).isPresent()
                || questions.focus(question)) {
            return;
        }
        if (!restOpen) {
            turnRest();
        }
        presets.focus(question);
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
