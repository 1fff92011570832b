package org.hidewright.window.begin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.hidewright.core.begin.Beginning;
import org.hidewright.core.begin.Step;
import org.hidewright.core.begin.Step.Asked;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.window.look.FoldWords;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.slip.Desk;
import org.hidewright.window.slip.QuestionList;

/** Questions of a step, each with what the workshop has for it; those at their usual answer folded away. */
final class AskedPane implements StepPane {
    private final Desk desk;
    private final Beginning beginning;
    private final Step step;
    private final Runnable taller;
    private final Composite main;
    private final Link fold;
    private final Composite rest;
    private final Map<Asked, QuestionList> lists = new HashMap<>();
    private final Map<Asked, StockRow> rows = new HashMap<>();
    private boolean open;

    /** @param taller called when it takes another height */
    AskedPane(Composite parent, Desk desk, Beginning beginning, Step step, Runnable taller) {
        this.desk = desk;
        this.beginning = beginning;
        this.step = step;
        this.taller = taller;
        main = holder(parent);
        fold = desk.inks().words(parent, "", this::turn);
        fold.setData("id", "begin.more");
        fold.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        rest = holder(parent);
        open = step.asked().isEmpty() && step.kind() != Step.Kind.FOLLOWS;
        place(fold, !step.more().isEmpty());
        apply();
    }

    private Composite holder(Composite parent) {
        Inks inks = desk.inks();
        Composite holder = inks.dress(
                new Composite(parent, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 6;
        holder.setLayout(layout);
        holder.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return holder;
    }

    private void turn() {
        open = !open;
        apply();
        desk.project().face().ifPresent(this::show);
        taller.run();
    }

    private void apply() {
        FoldWords.say(
                fold,
                desk.texts().many("begin.more", step.more().size()),
                open,
                desk.texts().text(open ? "fold.open" : "fold.shut"));
        place(rest, open);
        place(main, !step.asked().isEmpty());
    }

    private static void place(Control control, boolean there) {
        ((GridData) control.getLayoutData()).exclude = !there;
        control.setVisible(there);
    }

    @Override
    public boolean show(ProjectFace face) {
        boolean other = false;
        for (Asked asked : step.asked()) {
            other |= show(asked, main, face);
        }
        for (Asked asked : open ? step.more() : List.<Asked>of()) {
            other |= show(asked, rest, face);
        }
        return other;
    }

    private boolean show(Asked asked, Composite in, ProjectFace face) {
        List<QuestionFace> faces = faces(asked, face);
        if (faces.isEmpty()) {
            return false;
        }
        boolean fresh = !lists.containsKey(asked);
        if (fresh) {
            lists.put(asked, list(asked, in));
            row(asked, in, faces.get(0)).ifPresent(row -> rows.put(asked, row));
        }
        boolean other = lists.get(asked).show(faces);
        Optional.ofNullable(rows.get(asked)).ifPresent(row -> row.show(taken(asked)));
        return other || fresh;
    }

    /** A question with those that are inside it now. */
    private static List<QuestionFace> faces(Asked asked, ProjectFace face) {
        String inside = asked.question() + ".";
        List<QuestionFace> faces = new ArrayList<>();
        face.slip(asked.slip())
                .ifPresent(slip -> slip.questions().stream()
                        .filter(question -> question.path().toString().equals(asked.question())
                                || question.path().toString().startsWith(inside))
                        .forEach(faces::add));
        return faces;
    }

    private QuestionList list(Asked asked, Composite in) {
        QuestionList list = new QuestionList(in, desk.editing(), asked.slip(), taller);
        list.control().setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return list;
    }

    private Optional<StockRow> row(Asked asked, Composite in, QuestionFace face) {
        List<Fit> fits = beginning.rows(desk.project().project(), face.question());
        return fits.isEmpty()
                ? Optional.empty()
                : Optional.of(new StockRow(
                        in,
                        desk.inks(),
                        desk.texts(),
                        "begin.stock." + asked.slip() + "/" + asked.question(),
                        fits,
                        link -> desk.round().take(asked.slip(), AnswerPath.of(asked.question()), link)));
    }

    private StockLink taken(Asked asked) {
        return desk.project()
                .project()
                .slip(asked.slip())
                .flatMap(slip -> slip.answer(AnswerPath.of(asked.question())))
                .flatMap(StockLink::in)
                .orElse(null);
    }
}
