package org.hidewright.window;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.find.Goal;
import org.hidewright.core.find.InstalledThings;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.window.addons.BundlesPage;
import org.hidewright.window.addons.OffersPage;
import org.hidewright.window.addons.Titles;
import org.hidewright.window.compare.ComparePage;
import org.hidewright.window.find.FindPage;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.ProjectThings;
import org.hidewright.window.papers.Pages;
import org.hidewright.window.papers.PapersPage;
import org.hidewright.window.piece.PieceBar;
import org.hidewright.window.piece.ScreenPage;
import org.hidewright.window.slip.Desk;
import org.hidewright.window.tables.TablesPage;

/** What takes the middle of a project: the piece, or what else there is to look at for as long as it is looked at. */
final class Middle extends Composite {
    private final Workroom room;
    private final Desk desk;
    private final OpenProject project;
    private final Runnable changed;
    private final StackLayout pages = new StackLayout();
    private final PieceBar piece;
    private final ComparePage compare;
    private ProjectFace shown;

    /** @param changed called when bundles have come or gone */
    Middle(Composite parent, Workroom room, Desk desk, Runnable changed) {
        super(parent, SWT.NONE);
        this.room = room;
        this.desk = desk;
        this.project = desk.project();
        this.changed = changed;
        Inks inks = desk.inks();
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        setLayout(pages);
        piece = new PieceBar(this, inks, room.texts(), project.wording());
        room.memory().pixelsPerMm().ifPresent(piece.view()::pixelsPerMm);
        compare = new ComparePage(this, inks, room.texts(), this::backToPiece);
        turnTo(piece);
    }

    /** Shows the project as it is now. */
    void show(ProjectFace face) {
        shown = face;
        piece.show(face, project.wording());
        if (pages.topControl == compare) {
            compare.show(face);
        } else if (pages.topControl instanceof TablesPage tables) {
            tables.show(face);
        } else if (pages.topControl instanceof FindPage find) {
            find.onBench(ProjectThings.of(face));
        }
    }

    /** Pages that are made when they are asked for go when they are left. */
    private void turnTo(Control page) {
        Control before = pages.topControl;
        pages.topControl = page;
        layout();
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
        PapersPage papers =
                new PapersPage(this, desk.inks(), room.texts(), pictures.get(), room.work(), this::backToPiece, export);
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

    /** Shows the answers of a slip that are tables. */
    void tables(String slip) {
        TablesPage tables = new TablesPage(this, desk.inks(), room.texts(), slip, this::backToPiece);
        tables.show(shown);
        turnTo(tables);
    }

    /** Shows what is installed, the bundle that brings a calculator chosen. */
    void installed(String calculator) {
        room.addOns().ifPresent(addOns -> {
            BundlesPage bundles = new BundlesPage(
                    this,
                    desk.inks(),
                    room.texts(),
                    addOns,
                    titles(),
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
                this,
                desk.inks(),
                room.texts(),
                addOns,
                titles(),
                room.work(),
                index,
                () -> installed(calculator),
                changed));
    }

    private Titles titles() {
        return new Titles(this::called, this::table);
    }

    private String table(String id) {
        return room.catalogue()
                .tables()
                .find(id)
                .map(known -> project.wording()
                        .text(known.declared().texts(), known.declared().titleKey()))
                .orElse(id);
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

    /** Lets the maker measure the screen, so that true size is true. */
    void measureScreen() {
        turnTo(new ScreenPage(this, desk.inks(), room.texts(), this::backToPiece, pixels -> {
            room.memory().measured(pixels);
            piece.view().pixelsPerMm(pixels);
        }));
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

    /** Shows two slips of a kind beside each other; the other may be about to come. */
    void compare(String slip, String other) {
        compare.compare(slip, other);
        compare.show(shown);
        turnTo(compare);
    }

    /** Shows the drawings of a slip. */
    void draw(String slip) {
        piece.choose(slip);
        backToPiece();
    }

    /**
     * Lets the maker find things by their words.
     *
     * @param goes leads to what was found
     */
    void find(Consumer<Goal> goes) {
        FindPage find = new FindPage(this, desk.inks(), room.texts(), goes, this::backToPiece);
        find.onBench(ProjectThings.of(shown));
        find.installed(() -> InstalledThings.of(room.catalogue(), project.wording()), room.work());
        turnTo(find);
        find.setFocus();
    }

    PieceBar piece() {
        return piece;
    }
}
