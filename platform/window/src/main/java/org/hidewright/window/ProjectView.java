package org.hidewright.window;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.find.Goal;
import org.hidewright.core.find.InstalledThings;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.window.addons.BundlesPage;
import org.hidewright.window.addons.OffersPage;
import org.hidewright.window.compare.ComparePage;
import org.hidewright.window.find.FindPage;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.ProjectThings;
import org.hidewright.window.model.SlipFace;
import org.hidewright.window.papers.Pages;
import org.hidewright.window.papers.PapersPage;
import org.hidewright.window.piece.PieceBar;
import org.hidewright.window.piece.ScreenPage;
import org.hidewright.window.slip.Desk;
import org.hidewright.window.slip.SlipBoard;
import org.hidewright.window.slip.SlipCard;
import org.hidewright.window.tables.TablesPage;
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
    /** How long old values stand beside new ones. */
    private static final int SETTLE_MS = 6000;

    private final Workroom room;
    private final Desk desk;
    private final OpenProject project;
    private final WorkshopDesk workshop;
    private final Runnable changed;
    private final SashForm sash;
    private final SlipBoard drives;
    private final SlipBoard follows;
    private final Composite middle;
    private final StackLayout pages = new StackLayout();
    private final PieceBar piece;
    private final ComparePage compare;
    private final Set<String> folded;
    private final Runnable settle = this::settle;
    private ProjectFace shown;
    private String lastRevealed = "";
    /** A slip that is about to come, or a question of it; nowhere where none is. */
    private Goal toReveal = NOWHERE;

    /** @param changed called when bundles have come or gone */
    ProjectView(
            Composite parent, Workroom room, Inks inks, OpenProject project, WorkshopDesk workshop, Runnable changed) {
        super(parent, SWT.NONE);
        this.room = room;
        this.project = project;
        this.workshop = workshop;
        this.changed = changed;
        this.desk = new Desk(inks, room.texts(), project, this);
        this.folded = new HashSet<>(room.memory().folded(project.path()));
        setLayout(new FillLayout());
        sash = inks.dress(
                new SashForm(this, SWT.HORIZONTAL | SWT.SMOOTH),
                inks.palette().ink(),
                inks.palette().board());
        drives = new SlipBoard(sash, desk);
        middle = inks.dress(
                new Composite(sash, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        middle.setLayout(pages);
        piece = new PieceBar(middle, inks, room.texts(), project.wording());
        room.memory().pixelsPerMm().ifPresent(piece.view()::pixelsPerMm);
        compare = new ComparePage(middle, inks, room.texts(), this::backToPiece);
        follows = new SlipBoard(sash, desk);
        sash.setWeights(SHARES);
        turnTo(piece);
    }

    /** Shows the project as it is now. */
    void show(ProjectFace face) {
        List<SlipFace> driving = face.slips().stream().filter(SlipFace::drives).toList();
        List<SlipFace> following =
                face.slips().stream().filter(slip -> !slip.drives()).toList();
        shown = face;
        drives.show(driving);
        follows.show(following);
        piece.show(face, project.wording());
        if (pages.topControl == compare) {
            compare.show(face);
        } else if (pages.topControl instanceof TablesPage tables) {
            tables.show(face);
        } else if (pages.topControl instanceof FindPage find) {
            find.onBench(ProjectThings.of(face));
        }
        if (face.slip(toReveal.slip()).isPresent()) {
            reveal(toReveal);
            toReveal = NOWHERE;
        }
        getDisplay().timerExec(SETTLE_MS, settle);
    }

    private void settle() {
        if (!isDisposed()) {
            drives.settle();
            follows.settle();
        }
    }

    /** Pages that are made when they are asked for go when they are left. */
    private void turnTo(Control page) {
        Control before = pages.topControl;
        pages.topControl = page;
        middle.layout();
        if (before != null && before != page && before != piece && before != compare) {
            before.dispose();
        }
    }

    /** Shows the documents page by page; whether somebody is there who can. */
    boolean showPapers(Runnable export) {
        Optional<PdfWriter> pdf = room.writers().pdf();
        Optional<PagePictures> pictures = room.writers().pictures();
        if (pdf.isEmpty() || pictures.isEmpty() || project.worked().isEmpty()) {
            return false;
        }
        PapersPage papers = new PapersPage(
                middle, desk.inks(), room.texts(), pictures.get(), room.work(), this::backToPiece, export);
        turnTo(papers);
        papers.expect();
        WorkedProject worked = project.worked().get();
        Wording wording = project.wording();
        LocalDate day = LocalDate.now(ZoneId.systemDefault());
        room.work().execute(() -> {
            Pages made = new Pages(worked, wording, day, room.catalogue().contributors(), pdf.get(), pictures.get());
            if (!isDisposed()) {
                getDisplay().asyncExec(() -> {
                    if (!papers.isDisposed()) {
                        papers.show(made);
                    }
                });
            }
        });
        return true;
    }

    /** Prints the document that is shown; shows documents first where none is. */
    boolean print(Runnable export) {
        if (pages.topControl instanceof PapersPage papers) {
            papers.print();
            return true;
        }
        return showPapers(export);
    }

    @Override
    public void tables(String slip) {
        TablesPage tables = new TablesPage(middle, desk.inks(), room.texts(), slip, this::backToPiece);
        tables.show(shown);
        turnTo(tables);
    }

    @Override
    public void installed(String calculator) {
        room.addOns().ifPresent(addOns -> {
            BundlesPage bundles = new BundlesPage(
                    middle,
                    desk.inks(),
                    room.texts(),
                    addOns,
                    this::called,
                    room.work(),
                    () -> room.asks().toOpen(room.texts().text("bundles.add"), "jar"),
                    () -> room.asks()
                            .toOpen(room.texts().text("bundles.index"), "xml", "jar")
                            .ifPresent(index -> offers(index, addOns, calculator)),
                    this::backToPiece,
                    changed);
            bundles.choose(calculator);
            turnTo(bundles);
        });
    }

    private void offers(Path index, AddOns addOns, String calculator) {
        turnTo(new OffersPage(
                middle,
                desk.inks(),
                room.texts(),
                addOns,
                this::called,
                room.work(),
                index,
                () -> installed(calculator),
                changed));
    }

    /** What a calculator is called; its id where it is not there to say so. */
    private String called(String calculator) {
        return room.catalogue()
                .find(calculator)
                .map(Installed::calculator)
                .map(known -> project.wording()
                        .text(known.texts(), known.declaration().titleKey()))
                .orElse(calculator);
    }

    @Override
    public List<Recordable> recordable(String slip) {
        return workshop.recordable(slip);
    }

    @Override
    public void record(Recordable answer) {
        workshop.record(answer.cells());
    }

    /** Lets the maker measure the screen, so that true size is true. */
    void measureScreen() {
        turnTo(new ScreenPage(middle, desk.inks(), room.texts(), this::backToPiece, pixels -> {
            room.memory().measured(pixels);
            piece.view().pixelsPerMm(pixels);
        }));
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

    /** All of what takes the middle: the drawing, or a page. */
    void fit() {
        if (pages.topControl instanceof PapersPage papers) {
            papers.fit();
        } else {
            piece.fit();
        }
    }

    void larger() {
        if (pages.topControl instanceof PapersPage papers) {
            papers.zoom(PieceBar.STEP);
        } else {
            piece.larger();
        }
    }

    void smaller() {
        if (pages.topControl instanceof PapersPage papers) {
            papers.zoom(1 / PieceBar.STEP);
        } else {
            piece.smaller();
        }
    }

    void backToPiece() {
        turnTo(piece);
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
        compare.compare(slip, other);
        compare.show(shown);
        turnTo(compare);
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
        piece.choose(slip);
        backToPiece();
    }

    /** Brings the next slip into view on which there is something to look at. */
    void revealUrgent() {
        List<String> urgent = shown.slips().stream()
                .filter(slip -> slip.urgent() > 0)
                .map(SlipFace::id)
                .toList();
        if (!urgent.isEmpty()) {
            int next = urgent.indexOf(lastRevealed) + 1;
            lastRevealed = urgent.get(next % urgent.size());
            reveal(lastRevealed);
        }
    }

    /** Brings a slip into view as soon as it is there. */
    void revealOnceShown(String slip) {
        toReveal = new Goal("", slip, "");
    }

    /** Lets the maker find things by their words. */
    void find() {
        FindPage find = new FindPage(middle, desk.inks(), room.texts(), this::go, this::backToPiece);
        find.onBench(ProjectThings.of(shown));
        find.installed(() -> InstalledThings.of(room.catalogue(), project.wording()), room.work());
        turnTo(find);
        find.setFocus();
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
        return piece;
    }

    OpenProject project() {
        return project;
    }
}
