package org.hidewright.window;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.find.Goal;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Slip;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.History;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.Searches;
import org.hidewright.window.model.SlipFace;
import org.hidewright.window.piece.PieceBar;
import org.hidewright.window.slip.Desk;
import org.hidewright.window.slip.SlipBoard;
import org.hidewright.window.slip.SlipCard;
import org.hidewright.window.workshop.Recordable;

/**
 * A project on the bench: on the left what drives the piece (what it holds, its leather, its template), in the middle the
 * piece, on the right what follows from it. What else there is to look at takes the middle for as long as it is looked at.
 */
final class ProjectView extends Composite implements Desk.Round {
    private static final int[] SHARES = {26, 42, 32};
    /** The middle is made wider or narrower by this part of all on either side. */
    private static final int WIDENED = 20;

    private static final Goal NOWHERE = Goal.calculator("", "");
    /** How long old values stand beside new ones after what changed them is done. */
    private static final int SETTLE_MS = 6000;

    private final Workroom room;
    private final Desk desk;
    private final OpenProject project;
    private final Searches searches;
    private final WorkshopDesk workshop;
    private final SashForm sash;
    private final SlipBoard drives;
    private final SlipBoard follows;
    private final Middle middle;
    private final Set<String> folded;
    private final Runnable settle = this::settle;
    private ProjectFace shown;
    /** What was done before the answers that are shown. */
    private History.Step step;

    private String lastRevealed = "";
    /** A slip that is about to come, or a question of it; nowhere where none is. */
    private Goal toReveal = NOWHERE;

    /** @param changed called when bundles have come or gone */
    ProjectView(
            Composite parent, Workroom room, Inks inks, OpenProject project, WorkshopDesk workshop, Runnable changed) {
        super(parent, SWT.NONE);
        this.room = room;
        this.project = project;
        this.step = project.step();
        this.workshop = workshop;
        this.searches = new Searches(
                project,
                ProjectView::search,
                this::onWindow,
                System::nanoTime,
                Runtime.getRuntime().availableProcessors());
        addListener(SWT.Dispose, event -> searches.stop());
        this.desk = new Desk(inks, room.texts(), project, searches, this);
        this.folded = new HashSet<>(room.memory().folded(project.path()));
        setLayout(new FillLayout());
        sash = inks.dress(
                new SashForm(this, SWT.HORIZONTAL | SWT.SMOOTH),
                inks.palette().ink(),
                inks.palette().board());
        drives = new SlipBoard(sash, desk);
        middle = new Middle(sash, room, desk, changed);
        follows = new SlipBoard(sash, desk);
        sash.setWeights(SHARES);
    }

    /** On a thread that ends with it and keeps no program alive. */
    private static void search(Runnable search) {
        Thread thread = new Thread(search, "searching");
        thread.setDaemon(true);
        thread.start();
    }

    private void onWindow(Runnable does) {
        if (!isDisposed()) {
            getDisplay().asyncExec(() -> {
                if (!isDisposed()) {
                    does.run();
                }
            });
        }
    }

    /** Shows the project as it is now. */
    void show(ProjectFace face) {
        List<SlipFace> driving = face.slips().stream().filter(SlipFace::drives).toList();
        List<SlipFace> following =
                face.slips().stream().filter(slip -> !slip.drives()).toList();
        shown = face;
        if (project.step().number() != step.number()) {
            forgetOld(); // old values are those before it, and as long as it goes on
        }
        step = project.step();
        drives.show(driving);
        follows.show(following);
        if (follows.getVisible() == following.isEmpty()) { // nothing follows: its room is the others’
            follows.setVisible(!following.isEmpty());
            sash.layout();
        }
        middle.show(face);
        if (face.slip(toReveal.slip()).isPresent()) {
            reveal(toReveal);
            toReveal = NOWHERE;
        }
        getDisplay().timerExec(SETTLE_MS, settle);
    }

    private void settle() {
        if (isDisposed()) {
            return;
        }
        if (step.open()) {
            step = project.step(); // what has just been done is still looked at
            getDisplay().timerExec(SETTLE_MS, settle);
        } else {
            forgetOld();
        }
    }

    private void forgetOld() {
        drives.settle();
        follows.settle();
    }

    /** Shows the documents page by page; whether somebody is there who can. */
    boolean showPapers(Runnable export) {
        return middle.showPapers(export);
    }

    /** Prints the document that is shown; shows documents first where none is. */
    boolean print(Runnable export) {
        return middle.print(export);
    }

    @Override
    public void tables(String slip) {
        middle.tables(slip);
    }

    @Override
    public void installed(String calculator) {
        middle.installed(calculator);
    }

    @Override
    public List<Recordable> recordable(String slip) {
        return workshop.recordable(slip);
    }

    @Override
    public void record(Recordable answer) {
        workshop.record(answer.cells());
    }

    void measureScreen() {
        middle.measureScreen();
    }

    /** Gives the middle more of the window, or less, as moving its edges does. */
    void widen(int steps) {
        int[] weights = sash.getWeights();
        int all = weights[0] + weights[1] + weights[2];
        int step = steps * all / WIDENED;
        if (Math.min(weights[0], weights[2]) - step > all / WIDENED && weights[1] + 2 * step > all / WIDENED) {
            sash.setWeights(weights[0] - step, weights[1] + 2 * step, weights[2] - step);
        }
    }

    void fit() {
        middle.fit();
    }

    void larger() {
        middle.larger();
    }

    void smaller() {
        middle.smaller();
    }

    void backToPiece() {
        middle.backToPiece();
    }

    @Override
    public boolean isFolded(String slip) {
        return folded.contains(slip);
    }

    @Override
    public void fold(String slip, boolean fold) {
        if (fold ? folded.add(slip) : folded.remove(slip)) {
            room.memory().fold(project.path(), folded);
            show(shown);
        }
    }

    /** Folds every slip, or opens it. */
    void foldAll(boolean fold) {
        folded.clear();
        if (fold) {
            shown.slips().forEach(slip -> folded.add(slip.id()));
        }
        room.memory().fold(project.path(), folded);
        show(shown);
    }

    @Override
    public void compare(String slip) {
        Optional<String> of = project.project().slip(slip).map(Slip::calculator);
        if (of.isEmpty()) {
            return; // taken out since it was shown
        }
        String kind = of.get();
        boolean alone = project.project().slips().stream()
                        .filter(one -> one.calculator().equals(kind))
                        .count()
                < 2;
        if (alone) {
            tryOut(slip);
        } else {
            compare(slip, "");
        }
    }

    @Override
    public void tryOut(String slip) {
        String trial = project.tryOut(slip, room.texts().text("slip.what-if-of", title(slip)));
        revealOnceShown(trial);
        compare(slip, trial);
    }

    /** Shows two slips of a kind beside each other; the other may be about to come. */
    void compare(String slip, String other) {
        middle.compare(slip, other);
    }

    private String title(String slip) {
        return shown.slip(slip).map(SlipFace::title).orElse(slip);
    }

    @Override
    public void take(String slip, AnswerPath path, StockLink row) {
        project.take(slip, path, row);
    }

    @Override
    public void draw(String slip) {
        middle.draw(slip);
    }

    /** Brings the next slip into view on which there is something to look at, and what is to be put right there to the keyboard. */
    void revealUrgent() {
        List<SlipFace> urgent =
                shown.slips().stream().filter(slip -> slip.urgent() > 0).toList();
        if (!urgent.isEmpty()) {
            int next = urgent.stream().map(SlipFace::id).toList().indexOf(lastRevealed) + 1;
            SlipFace slip = urgent.get(next % urgent.size());
            lastRevealed = slip.id();
            reveal(new Goal("", lastRevealed, slip.firstWrong()));
        }
    }

    /** Brings a slip into view as soon as it is there. */
    void revealOnceShown(String slip) {
        toReveal = new Goal("", slip, "");
    }

    /** Lets the maker find things by their words. */
    void find() {
        middle.find(this::go);
    }

    /** Leads to what was found; what stands on no slip becomes one. */
    private void go(Goal goal) {
        if (goal.slip().isEmpty()) {
            String bundle = room.catalogue()
                    .find(goal.calculator())
                    .map(Installed::bundle)
                    .orElse("");
            toReveal = new Goal(goal.calculator(), project.addSlip(goal.calculator(), bundle), goal.question());
            backToPiece();
        } else {
            reveal(goal);
        }
    }

    private void reveal(Goal goal) {
        reveal(goal.slip());
        cards().filter(card -> card.slip().equals(goal.slip())).forEach(card -> card.focus(goal.question()));
    }

    private Stream<SlipCard> cards() {
        return Stream.concat(drives.cards().stream(), follows.cards().stream());
    }

    /** Brings a slip into view. */
    void reveal(String slip) {
        fold(slip, false);
        drives.reveal(slip);
        follows.reveal(slip);
    }

    /** The answers of a slip as they are shown; empty where it is not there. */
    String answers(String slip) {
        return cards().filter(card -> card.slip().equals(slip))
                .map(SlipCard::answers)
                .findFirst()
                .orElse("");
    }

    PieceBar piece() {
        return middle.piece();
    }

    OpenProject project() {
        return project;
    }
}
