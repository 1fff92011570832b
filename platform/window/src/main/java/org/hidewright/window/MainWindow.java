package org.hidewright.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.begin.Beginning;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.store.WriteFault;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.begin.BeginPage;
import org.hidewright.window.look.AltLetters;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SavedProject;
import org.hidewright.window.model.WorkPlace;
import org.hidewright.window.start.Sample;
import org.hidewright.window.start.StartPage;

/** The window: one project at a time, or the page to begin at. For the thread of the window. */
final class MainWindow {
    /** A copy of what is not saved is written when nothing has changed for so long. */
    private static final int COPY_AFTER_MS = 1000;

    private static final double OF_SCREEN = 0.85;

    private final Workroom room;
    private final Inks inks;
    private final Shell shell;
    private final TellBar told;
    private final ProjectLine line;
    private final Composite body;
    private final StackLayout bodies = new StackLayout();
    private final WorkPlace place;
    private final Copies copies;
    private final Runnable copy = this::keepCopy;
    private final Saving saving;
    private final Leaving leaving;
    private final WorkshopDesk workshop;
    private ProjectView view;

    MainWindow(Display display, Inks inks, Workroom room, Shell shell) {
        this.room = room;
        this.inks = inks;
        this.shell = shell;
        this.place = new WorkPlace(room.catalogue(), () -> workshop().stock(), room.work(), this::onWindow);
        shell.setText("Hidewright");
        inks.dress(shell, inks.palette().ink(), inks.palette().board());
        Rectangle screen = display.getPrimaryMonitor().getClientArea();
        shell.setSize((int) (screen.width * OF_SCREEN), (int) (screen.height * OF_SCREEN));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 1;
        shell.setLayout(layout);
        told = new TellBar(shell, inks);
        told.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        told.hide();
        line = new ProjectLine(
                shell,
                inks,
                room.texts(),
                () -> workshop().settleDifferences(),
                () -> view.revealUrgent(),
                this::switchUnits);
        line.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        body = inks.dress(
                new Composite(shell, SWT.NONE),
                inks.palette().ink(),
                inks.palette().board());
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        body.setLayout(bodies);
        copies = new Copies(room, told, line, this::onWindow, "told.unsaved.help");
        saving = new Saving(this, room, copies);
        leaving = new Leaving(this, room, copies);
        workshop = new WorkshopDesk(
                this, room, inks, body, bodies, new Copies(room, told, line, this::onWindow, "workshop.unsaved.help"));
        new WindowDeeds(this, room, shell).build();
        AltLetters.on(shell);
        shell.addListener(SWT.Close, leaving::closing);
        begin();
    }

    void open() {
        shell.open();
        copies.offerUntitled(text -> {
            Optional<Project> left = ProjectReader.read(text).project();
            left.ifPresent(this::begun);
            return left.isPresent();
        });
    }

    Shell shell() {
        return shell;
    }

    /** The project that is open; empty while none is. */
    Optional<OpenProject> project() {
        return Optional.ofNullable(view).map(ProjectView::project);
    }

    /** Its view; only while one is open. */
    ProjectView view() {
        return view;
    }

    /** Shows the page to begin at. */
    private void begin() {
        turnTo(
                new StartPage(
                        body,
                        inks,
                        room.texts(),
                        room.memory().recent(),
                        new StartPage.Ways(
                                this::askToBegin, this::open, this::askToOpen, this::askForNew, this::takeApart),
                        place,
                        room.samples()),
                false);
    }

    /** Opens a copy of a sample, so that the sample never changes. */
    private void takeApart(Sample sample) {
        openUntitled(
                String.valueOf(sample.file().getFileName()),
                sample.project(),
                sample.project().text());
    }

    /** Asks, in steps, for a project to begin. */
    void askToBegin() {
        leaving.before(() -> {
            Beginning beginning = BeginPage.beginning(place, room.texts());
            if (beginning.templates().isEmpty()) {
                told.tell(room.texts().text("begin.no-template.help"), seen());
                return;
            }
            leaveNow();
            view = null;
            shell.setText("Hidewright");
            turnTo(
                    new BeginPage(
                            body,
                            inks,
                            room.texts(),
                            place,
                            beginning,
                            room.units().ofBegun(),
                            new BeginPage.Ways(this::begun, this::begin, this::switchUnits)),
                    false);
        });
    }

    void begun(Project project) {
        openUntitled(project.name() + ".json", project, "");
    }

    private void turnTo(Composite page, boolean withLine) {
        workshop.hide();
        Composite before = (Composite) bodies.topControl;
        bodies.topControl = page;
        if (before != null) {
            before.dispose();
        }
        ((GridData) line.getLayoutData()).exclude = !withLine;
        line.setVisible(withLine);
        shell.layout(true, true);
        body.layout();
    }

    void askToOpen() {
        room.asks().toOpen(room.texts().text("deed.open"), "json").ifPresent(this::open);
    }

    /** Opens a project in place of the one that is open. */
    void open(Path path) {
        leaving.before(() -> openNow(path));
    }

    private void openNow(Path path) {
        try {
            ProjectFile file = ProjectFile.open(path);
            open(new OpenProject(
                    path,
                    file,
                    new Wording(room.texts().language(), room.units().ofOpened()),
                    place::bench,
                    room.work(),
                    this::onWindow,
                    this::show));
            room.memory().opened(path);
            tell(file.remarks());
            copies.offerLeft(view.project());
        } catch (FileTrouble e) {
            tell(e.remarks());
        }
    }

    /**
     * Opens a project that nobody has saved yet.
     *
     * @param known the text of a sample that it is a copy of; empty for one that is the maker’s own
     */
    void openUntitled(String name, Project project, String known) {
        open(new OpenProject(
                SavedProject.untitled(beside(name), known),
                project,
                new Wording(room.texts().language(), room.units().ofOpened()),
                place::bench,
                room.work(),
                this::onWindow,
                this::show));
    }

    private void open(OpenProject project) {
        leaveNow();
        view = new ProjectView(body, room, inks, project, workshop, this::catalogueChanged);
        turnTo(view, true);
        copies.of(project);
        line.tell("");
        project.workOut();
    }

    /** What was said of the project that was open is of no use for another. */
    private void leaveNow() {
        copies.drop();
        project().ifPresent(OpenProject::leave);
        told.hide();
    }

    void onWindow(Runnable does) {
        if (!shell.isDisposed()) {
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    does.run();
                }
            });
        }
    }

    void tell(List<Remark> remarks) {
        if (!remarks.isEmpty()) {
            told.tell(remarks.stream().map(room.texts()::told).collect(Collectors.joining("\n")), seen());
        }
    }

    private List<TellBar.Choice> seen() {
        return List.of(new TellBar.Choice("seen", room.texts().text("told.seen"), () -> {}));
    }

    /** Tells something that needs no answer. */
    void tell(String text) {
        line.tell(text);
    }

    void show(ProjectFace face) {
        view.show(face);
        line.show(
                face,
                String.valueOf(view.project().path().getFileName()),
                view.project().unsaved());
        shell.setText((face.name().isEmpty() ? view.project().path().getFileName() : face.name()) + " – Hidewright");
        shell.getDisplay().timerExec(COPY_AFTER_MS, copy);
    }

    private void keepCopy() {
        if (!shell.isDisposed() && view != null && !view.isDisposed()) {
            copies.keep(view.project());
        }
    }

    void askForNew() {
        room.asks()
                .toSave(room.texts().text("deed.new"), beside("project.json"))
                .ifPresent(this::openNew);
    }

    /** Beside the project that is open, or that was open last. */
    Path beside(String name) {
        return project()
                .map(OpenProject::path)
                .or(() -> room.memory().recent().stream().findFirst())
                .map(path -> path.toAbsolutePath().resolveSibling(name))
                .orElseGet(() -> Path.of(name));
    }

    /** Writes a project without a slip and opens it. */
    private void openNew(Path path) {
        try {
            EmptyProject.write(path, room.units().ofBegun());
            open(path);
        } catch (IOException e) {
            line.tell(room.texts().text("told.not-written.help", path, WriteFault.reason(e)));
        }
    }

    Saving saving() {
        return saving;
    }

    void showPapers() {
        if (!view.showPapers(saving::export)) {
            line.tell(room.texts().text("told.no-writer.help"));
        }
    }

    void print() {
        if (!view.print(saving::export)) {
            line.tell(room.texts().text("told.no-writer.help"));
        }
    }

    void close() {
        leaving.before(() -> {
            leaveNow();
            view = null;
            shell.setText("Hidewright");
            begin();
        });
    }

    /** The words that things are shown in now. */
    Wording wording() {
        return project()
                .map(OpenProject::wording)
                .orElseGet(
                        () -> new Wording(room.texts().language(), room.units().ofBegun()));
    }

    void switchUnits() {
        UnitSystem to = wording().inches() ? UnitSystem.METRIC : UnitSystem.INCH;
        room.units().switched(to);
        project().ifPresent(open -> open.showIn(to));
        steps().ifPresent(page -> page.showIn(to));
        workshop.refresh();
    }

    /** Whether something is seen that has units. */
    boolean hasUnits() {
        return project().isPresent() || steps().isPresent() || workshop.shown().isPresent();
    }

    /** The steps that a project is being begun in, also while the workshop is looked at. */
    Optional<BeginPage> steps() {
        return workshop.under() instanceof BeginPage page ? Optional.of(page) : Optional.empty();
    }

    /** Something broke that should not have: it is told, and the work goes on. */
    void broke(RuntimeException thrown) {
        if (!shell.isDisposed()) {
            told.tell(room.texts().text("told.broke.help", String.valueOf(thrown)), seen());
        }
    }

    /** Works everything out anew, as when bundles have come or gone. */
    void catalogueChanged() {
        project().ifPresent(OpenProject::workOutAnew);
        workshop.refresh();
    }

    WorkshopDesk workshop() {
        return workshop;
    }

    /** Tells something above all else, with what can be done about it. */
    void ask(String text, List<TellBar.Choice> choices) {
        told.tell(text, choices);
    }
}
