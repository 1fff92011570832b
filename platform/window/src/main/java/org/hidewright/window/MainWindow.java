package org.hidewright.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.store.WholeFile;
import org.hidewright.core.store.WriteFault;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.Bench;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.UnsavedCopy;
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
    private final Runnable copy = this::keepCopy;
    private ProjectView view;
    private UnsavedCopy unsaved;

    MainWindow(Display display, Inks inks, Workroom room, Shell shell) {
        this.room = room;
        this.inks = inks;
        this.shell = shell;
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
        line = new ProjectLine(shell, inks, room.texts(), () -> view.revealUrgent(), this::switchUnits);
        line.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        body = inks.dress(
                new Composite(shell, SWT.NONE),
                inks.palette().ink(),
                inks.palette().board());
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        body.setLayout(bodies);
        new WindowDeeds(this, room, shell).build();
        shell.addListener(SWT.Close, this::closing);
        begin();
    }

    void open() {
        shell.open();
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
                        body, inks, room.texts(), room.memory().recent(), this::open, this::askToOpen, this::askForNew),
                false);
    }

    private void turnTo(Composite page, boolean withLine) {
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
        leaving(() -> openNow(path));
    }

    private void openNow(Path path) {
        try {
            ProjectFile file = ProjectFile.open(path);
            leaveNow();
            OpenProject project = new OpenProject(
                    path,
                    file,
                    room.texts().language(),
                    () -> new Bench(room.catalogue(), room.stock()),
                    room.work(),
                    this::onWindow,
                    this::show);
            view = new ProjectView(body, room, inks, project, this::catalogueChanged);
            turnTo(view, true);
            unsaved = new UnsavedCopy(room.settings(), path);
            room.memory().opened(path);
            line.tell("");
            tell(file.remarks());
            offerLeft(project, unsaved);
            project.workOut();
        } catch (FileTrouble e) {
            tell(e.remarks());
        }
    }

    /** What was said of the project that was open is of no use for another. */
    private void leaveNow() {
        dropCopy();
        project().ifPresent(OpenProject::leave);
        told.hide();
    }

    private void onWindow(Runnable does) {
        if (!shell.isDisposed()) {
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    does.run();
                }
            });
        }
    }

    private void offerLeft(OpenProject project, UnsavedCopy copy) {
        withCopy(() -> copy.left(project.project().text()).ifPresent(text -> offer(project, copy, text)));
    }

    /** What was not saved when the program ended the last time is taken over only if the maker says so. */
    private void offer(OpenProject project, UnsavedCopy copy, String text) {
        told.tell(
                room.texts().text("told.unsaved.help"),
                List.of(
                        new TellBar.Choice("take", room.texts().text("told.take"), () -> {
                            if (project.takeOver(text)) {
                                withCopy(() -> {
                                    copy.want(text);
                                    copy.write();
                                    copy.dropLeft();
                                });
                            } else {
                                line.tell(room.texts().text("told.no-project.help"));
                            }
                        }),
                        new TellBar.Choice("leave", room.texts().text("told.leave"), () -> withCopy(copy::dropLeft))));
    }

    /** Something done to the copy of what is not saved. */
    private interface CopyDeed {
        void run() throws IOException;
    }

    private void withCopy(CopyDeed deed) {
        try {
            deed.run();
        } catch (IOException e) {
            line.tell(room.texts().text("told.no-copy.help", WriteFault.reason(e)));
        }
    }

    void tell(List<Remark> remarks) {
        if (!remarks.isEmpty()) {
            told.tell(
                    remarks.stream().map(room.texts()::told).collect(Collectors.joining("\n")),
                    List.of(new TellBar.Choice("seen", room.texts().text("told.seen"), () -> {})));
        }
    }

    /** Tells something that needs no answer. */
    void tell(String text) {
        line.tell(text);
    }

    private void show(ProjectFace face) {
        view.show(face);
        line.show(
                face,
                String.valueOf(view.project().path().getFileName()),
                view.project().unsaved());
        shell.setText((face.name().isEmpty() ? view.project().path().getFileName() : face.name()) + " – Hidewright");
        shell.getDisplay().timerExec(COPY_AFTER_MS, copy);
    }

    private void keepCopy() {
        if (shell.isDisposed() || view == null || view.isDisposed()) {
            return;
        }
        if (!view.project().unsaved()) {
            dropCopy(); // what was changed has been taken back
            return;
        }
        UnsavedCopy to = unsaved;
        to.want(view.project().project().text());
        room.work().execute(() -> {
            try {
                to.write();
            } catch (IOException e) {
                onWindow(() -> line.tell(room.texts().text("told.no-copy.help", WriteFault.reason(e))));
            }
        });
    }

    private void dropCopy() {
        if (unsaved != null) {
            withCopy(unsaved::drop);
        }
    }

    void askForNew() {
        room.asks()
                .toSave(room.texts().text("deed.new"), beside("project.json"))
                .ifPresent(this::openNew);
    }

    /** Beside the project that is open, or that was open last. */
    private Path beside(String name) {
        return project()
                .map(OpenProject::path)
                .or(() -> room.memory().recent().stream().findFirst())
                .map(path -> path.toAbsolutePath().resolveSibling(name))
                .orElseGet(() -> Path.of(name));
    }

    /** Writes a project without a slip and opens it. */
    private void openNew(Path path) {
        Map<String, Object> project = new LinkedHashMap<>();
        project.put("hidewright", ProjectReader.FORMAT);
        project.put("name", nameOf(path));
        project.put("slips", List.of());
        try {
            WholeFile.write(path, JsonOut.write(project).getBytes(StandardCharsets.UTF_8));
            open(path);
        } catch (IOException e) {
            line.tell(room.texts().text("told.not-written.help", path, WriteFault.reason(e)));
        }
    }

    private static String nameOf(Path path) {
        return String.valueOf(path.getFileName()).replaceAll("\\.json$", "");
    }

    /** Saves the project; whether it is in its file now. */
    boolean save() {
        List<Remark> remarks = view.project().save();
        return saved(remarks);
    }

    void saveAs() {
        room.asks()
                .toSave(room.texts().text("deed.save-as"), view.project().path().toAbsolutePath())
                .ifPresent(path -> {
                    if (saved(view.project().saveAs(path))) {
                        unsaved = new UnsavedCopy(room.settings(), path);
                        room.memory().opened(path);
                    }
                });
    }

    private boolean saved(List<Remark> remarks) {
        tell(remarks);
        boolean whole = !view.project().unsaved();
        if (whole) {
            dropCopy();
            view.project().face().ifPresent(this::show);
            line.tell(room.texts().text("told.saved.help", view.project().path()));
        }
        return whole;
    }

    /** Asks for a folder and writes the packet into it. */
    void export() {
        Path beside = view.project().path().toAbsolutePath().resolveSibling("out");
        room.asks()
                .folder(room.texts().text("deed.export"), beside)
                .ifPresent(folder -> view.project()
                        .worked()
                        .ifPresent(worked -> new PacketExport(
                                        room, view.project().wording())
                                .write(worked, folder, said -> onWindow(() -> line.tell(said)))));
    }

    void showPapers() {
        if (!view.showPapers(this::export)) {
            line.tell(room.texts().text("told.no-writer.help"));
        }
    }

    void print() {
        if (!view.print(this::export)) {
            line.tell(room.texts().text("told.no-writer.help"));
        }
    }

    void close() {
        leaving(() -> {
            leaveNow();
            view = null;
            shell.setText("Hidewright");
            begin();
        });
    }

    void switchUnits() {
        project().ifPresent(open -> open.showInches(!open.wording().inches()));
    }

    /** Does something that leaves the project behind; asks first where it is not saved. */
    private void leaving(Runnable does) {
        if (view == null || view.isDisposed() || !view.project().unsaved()) {
            does.run();
            return;
        }
        told.tell(
                room.texts().text("told.leaving.help"),
                List.of(
                        new TellBar.Choice("save", room.texts().text("told.save-first"), () -> {
                            if (save()) {
                                does.run();
                            }
                        }),
                        new TellBar.Choice("lose", room.texts().text("told.lose"), () -> {
                            dropCopy();
                            does.run();
                        }),
                        new TellBar.Choice("stay", room.texts().text("told.stay"), () -> {})));
    }

    private void closing(Event event) {
        if (view != null && !view.isDisposed() && view.project().unsaved()) {
            event.doit = false;
            leaving(shell::dispose);
        } else {
            dropCopy();
        }
    }

    /** Something broke that should not have: it is told, and the work goes on. */
    void broke(RuntimeException thrown) {
        if (!shell.isDisposed()) {
            told.tell(
                    room.texts().text("told.broke.help", String.valueOf(thrown)),
                    List.of(new TellBar.Choice("seen", room.texts().text("told.seen"), () -> {})));
        }
    }

    /** Works everything out anew, as when bundles have come or gone. */
    void catalogueChanged() {
        project().ifPresent(OpenProject::workOutAnew);
    }

    /** Whether a file is there that could be opened. */
    static boolean isThere(Path path) {
        return Files.isRegularFile(path);
    }
}
