package org.hidewright.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.hidewright.core.project.Project;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WorkshopFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Table;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.words.WindowTexts;
import org.hidewright.window.workshop.KnownProjects;
import org.hidewright.window.workshop.NoWorkshopPage;
import org.hidewright.window.workshop.OpenWorkshop;
import org.hidewright.window.workshop.Recordable;
import org.hidewright.window.workshop.Recorded;
import org.hidewright.window.workshop.RowUse;
import org.hidewright.window.workshop.RowUses;
import org.hidewright.window.workshop.WorkshopPage;

/** The workshop beside the project: which file it is, its page, and what the project takes from it. For the thread of the window. */
final class WorkshopDesk implements WorkshopPage.Round {
    /** A copy of what is not saved is written when nothing has changed for so long. */
    private static final int COPY_AFTER_MS = 1000;

    private static final String NAME = "workshop.json";

    private final MainWindow window;
    private final Workroom room;
    private final WindowTexts texts;
    private final Inks inks;
    private final Composite body;
    private final StackLayout bodies;
    private final KnownProjects known = new KnownProjects();
    private final Copies copies;
    private final DrawnHide drawnHide;
    private final Runnable copy = this::keepCopy;
    private OpenWorkshop open;
    /** Null while it is not shown. */
    private Composite page;

    private Control beneath;
    /** For the thread that works projects out. */
    private volatile OpenWorkshop taken;

    WorkshopDesk(MainWindow window, Workroom room, Inks inks, Composite body, StackLayout bodies, Copies copies) {
        this.window = window;
        this.room = room;
        this.texts = room.texts();
        this.inks = inks;
        this.body = body;
        this.bodies = bodies;
        this.copies = copies;
        this.drawnHide = new DrawnHide(window, this, room);
        body.getShell().addListener(SWT.Activate, event -> look(open));
    }

    /** Whoever comes back to the window is told what another program has done to the file meanwhile. */
    private void look(OpenWorkshop at) {
        if (at != null) {
            room.work().execute(() -> {
                if (at.changedMeanwhile()) {
                    window.onWindow(() -> tellOnPage(texts.text("workshop.changed.help")));
                }
            });
        }
    }

    /** What a project can take. */
    Stock stock() {
        OpenWorkshop from = taken;
        return from == null ? room.stock() : from.stock(room.stock());
    }

    /** The workshop, while its page is shown: what is undone and saved is then its own. */
    Optional<OpenWorkshop> shown() {
        return page == null ? Optional.empty() : Optional.ofNullable(open);
    }

    /** Opens the one that the maker has opened before, where there is one. */
    void openRemembered() {
        room.memory().workshop().ifPresent(this::open);
    }

    /** Opens a workshop in place of the one that is open, if it can be read. */
    void open(Path file) {
        if (!mayLeave(() -> open(file))) {
            return;
        }
        try {
            WorkshopFile read = WorkshopFile.open(file, room.stock());
            boolean wasShown = page != null;
            hide();
            copies.drop();
            open = new OpenWorkshop(
                    file, read, room.catalogue(), window::wording, texts, room.work(), window::onWindow, this::changed);
            taken = open;
            copies.of(file);
            window.tell(read.remarks());
            copies.offerLeft(open.text(), open::takeOver);
            window.project().ifPresent(OpenProject::workOut);
            if (wasShown) {
                show();
            }
        } catch (FileTrouble e) {
            tell(e.remarks());
        }
    }

    /** Of a workshop that the maker has chosen here, it is kept for the next time which it was. */
    private void choose(Path file) {
        open(file);
        if (open != null && open.path().equals(file)) {
            room.memory().workshop(file);
            show();
        }
    }

    void askToOpen() {
        room.asks().toOpen(texts.text("deed.workshop-open"), "json").ifPresent(this::choose);
    }

    /** Begins a workshop with nothing made up in it. */
    void askForNew() {
        room.asks().toSave(texts.text("deed.workshop-new"), window.beside(NAME)).ifPresent(file -> {
            try {
                WorkshopFile.begin(file, nameOf(file));
                choose(file);
            } catch (FileTrouble e) {
                tell(e.remarks());
            }
        });
    }

    /** What a file is called, without its ending. */
    private static String nameOf(Path file) {
        return String.valueOf(file.getFileName()).replaceAll("\\.json$", "");
    }

    private void changed() {
        window.project().ifPresent(OpenProject::workOut);
        body.getDisplay().timerExec(COPY_AFTER_MS, copy);
    }

    /** Reads it anew, as when bundles have come or gone, or other units are shown. */
    void refresh() {
        shown().ifPresent(OpenWorkshop::show);
    }

    /** Shows the page over what is there. */
    void show() {
        if (page != null) {
            return;
        }
        beneath = bodies.topControl;
        page = open == null
                ? new NoWorkshopPage(body, inks, texts, this::leave, this::askForNew, this::askToOpen)
                : new WorkshopPage(body, inks, texts, open, this);
        bodies.topControl = page;
        body.layout();
        if (open != null && !open.unsaved()) {
            copies.offerLeft(open.text(), open::takeOver); // what was told at the start may have been covered
        }
    }

    @Override
    public void leave() {
        hide();
        body.layout();
    }

    /** What is shown, or lies beneath the page of the workshop. */
    Control under() {
        return page == null ? bodies.topControl : beneath;
    }

    /** Takes the page away, so that what was beneath it is on top again. */
    void hide() {
        if (page != null) {
            bodies.topControl = beneath;
            page.dispose();
            page = null;
        }
    }

    /** Appends a result that was measured, and shows it to be filled in. */
    void record(Map<String, String> cells) {
        if (open != null && page instanceof NoWorkshopPage) {
            hide();
        }
        show();
        if (page instanceof WorkshopPage shown) {
            shown.reveal(Recorded.TABLE, new Recorded(open).now(cells));
        }
    }

    /** The workshop that is open, shown or not. */
    Optional<OpenWorkshop> opened() {
        return Optional.ofNullable(open);
    }

    /**
     * Shows a row, and tells what became of it.
     *
     * @param sound whether nothing of that is to be looked at
     */
    void reveal(String table, String row, String told, boolean sound) {
        show();
        if (page instanceof WorkshopPage shown) {
            shown.reveal(table, row);
            if (sound) {
                shown.tell(told);
            } else {
                shown.warn(told);
            }
        }
    }

    /** Reads hides from drawings into the workshop that is open. */
    DrawnHide drawnHide() {
        return drawnHide;
    }

    @Override
    public boolean hidesGoInto(String table) {
        return drawnHide.goesInto(table);
    }

    @Override
    public void readHide() {
        drawnHide.ask();
    }

    /** The answers of a slip that can be recorded. */
    List<Recordable> recordable(String slip) {
        Optional<Table> measured = room.catalogue().tables().find(Recorded.TABLE);
        return window.project()
                .flatMap(OpenProject::worked)
                .map(worked -> worked.slips().get(slip))
                .flatMap(worked -> measured.map(table -> Recordable.of(worked, window.wording(), table)))
                .orElse(List.of());
    }

    @Override
    public void save() {
        if (open == null) {
            return;
        }
        List<Remark> remarks = open.save();
        if (!open.unsaved()) {
            copies.drop();
            if (page instanceof WorkshopPage shown) {
                shown.tell(texts.text("told.saved.help", open.path()));
            }
        }
        tell(remarks);
    }

    @Override
    public void readAgain() {
        tell(open.readAgain());
    }

    void tell(List<Remark> remarks) {
        if (!remarks.isEmpty()) {
            String told = remarks.stream().map(texts::told).collect(Collectors.joining("\n"));
            if (page == null) {
                window.tell(remarks);
            } else {
                tellOnPage(told);
            }
        }
    }

    /** Tells something that is to be looked at. */
    void tell(String text) {
        if (page == null) {
            window.tell(text);
        } else {
            tellOnPage(text);
        }
    }

    private void tellOnPage(String text) {
        if (page instanceof WorkshopPage shown) {
            shown.warn(text);
        } else if (page instanceof NoWorkshopPage none) {
            none.tell(text);
        }
    }

    @Override
    public void openProject(Path project) {
        boolean isOpen = window.project()
                .filter(one -> one.path().toAbsolutePath().normalize().equals(project))
                .isPresent();
        if (isOpen) {
            leave();
        } else {
            window.open(project);
        }
    }

    @Override
    public void look() {
        room.asks()
                .folder(texts.text("uses.folder"), window.beside("").toAbsolutePath())
                .ifPresent(folder -> {
                    room.memory().lookInto(folder);
                    refresh();
                });
    }

    @Override
    public void uses(String table, String row, Consumer<List<RowUse>> shows) {
        List<Path> folders = new ArrayList<>(room.memory().folders());
        Optional<Path> at =
                window.project().map(one -> one.path().toAbsolutePath().normalize());
        at.map(Path::getParent).ifPresent(folders::add);
        List<Path> files = room.memory().recent();
        Map<Path, Project> shownNow = new LinkedHashMap<>();
        at.ifPresent(path -> shownNow.put(path, window.project().orElseThrow().project()));
        RowUses uses = new RowUses(room.catalogue(), window.wording(), texts);
        OpenWorkshop from = open;
        room.work().execute(() -> {
            Map<Path, Project> projects = new LinkedHashMap<>(shownNow);
            known.in(files, folders).forEach(projects::putIfAbsent);
            List<RowUse> found = room.catalogue()
                    .tables()
                    .find(table)
                    .flatMap(in -> from.taken(table, row).map(of -> uses.of(in, of, projects)))
                    .orElse(List.of());
            window.onWindow(() -> shows.accept(found));
        });
    }

    /** Tells where the project and the workshop differ, and lets the maker take the workshop’s rows over. */
    void settleDifferences() {
        window.project()
                .ifPresent(project -> window.ask(
                        String.join(
                                "\n", project.face().map(ProjectFace::differs).orElse(List.of())),
                        List.of(
                                new TellBar.Choice("renew", texts.text("differs.take"), project::takeFromWorkshop),
                                new TellBar.Choice("workshop", texts.text("deed.workshop"), this::show),
                                new TellBar.Choice("leave", texts.text("told.leave"), () -> {}))));
    }

    /** Whether nothing of it would be lost; else it is asked first, and perhaps done then. */
    boolean mayLeave(Runnable then) {
        if (open == null || !open.unsaved()) {
            return true;
        }
        window.ask(
                texts.text("workshop.leaving.help"),
                List.of(
                        new TellBar.Choice("save", texts.text("told.save-first"), () -> {
                            save();
                            if (!open.unsaved()) {
                                then.run();
                            }
                        }),
                        new TellBar.Choice("lose", texts.text("told.lose"), () -> {
                            copies.drop();
                            open = null;
                            taken = null;
                            then.run();
                        }),
                        new TellBar.Choice("stay", texts.text("told.stay"), () -> {})));
        return false;
    }

    private void keepCopy() {
        if (open != null && !body.isDisposed()) {
            copies.keep(open.unsaved(), open.text());
        }
    }
}
