package org.hidewright.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Origin;
import org.hidewright.window.model.SlipFace;

/** Makes a picture of the window in each of its main states, with the project that is open; nothing of it is saved. */
final class StatePictures {
    private static final long SETTLE_MS = 350;
    /** Documents are made, then a picture of a page, then it is shown. */
    private static final int ROUNDS = 3;

    private static final int FAILED = 1;

    private final MainWindow window;
    private final Workroom room;
    private final Path folder;
    private final Display display;
    private int number;

    StatePictures(MainWindow window, Workroom room, Path folder) {
        this.window = window;
        this.room = room;
        this.folder = folder;
        this.display = window.shell().getDisplay();
    }

    /** Makes them all; the exit code of the program. */
    int make() {
        try {
            Files.createDirectories(folder);
            settle();
            if (window.project().isPresent()) {
                project();
                workshop();
                window.view().backToPiece();
                opened().rename(face().name() + " …");
                window.shell().close();
                picture("leaving");
                while (window.project().orElseThrow().canUndo()) {
                    window.project().orElseThrow().undo();
                }
                window.close();
            }
            picture("start");
            window.askToBegin();
            picture("begin");
            return 0;
        } catch (IOException | FileTrouble e) {
            window.tell(String.valueOf(e.getMessage()));
            return FAILED;
        } finally {
            window.shell().dispose();
        }
    }

    private OpenProject opened() {
        return window.project().orElseThrow();
    }

    private ProjectFace face() {
        return opened().face().orElseThrow();
    }

    private void project() throws IOException, FileTrouble {
        ProjectView view = window.view();
        picture("project");
        view.piece().likeness();
        picture("in-leather");
        view.piece().likeness();
        drawings(view);
        Optional<Changed> typed = typed();
        if (typed.isPresent()) {
            changes(view, typed.get());
        }
        view.foldAll(true);
        picture("folded");
        view.foldAll(false);
        window.switchUnits();
        picture("inches");
        window.switchUnits();
        window.showPapers();
        picture("pages");
        view.measureScreen();
        picture("measure-screen");
        bundles(view);
    }

    /** As the maker has it, or as one is begun. */
    private void workshop() throws IOException {
        window.workshop().show();
        picture("workshop");
        if (window.workshop().shown().isPresent()) {
            window.workshop().record(Map.of());
            picture("measured");
            window.workshop().shown().get().undo();
        }
        window.workshop().leave();
    }

    private void drawings(ProjectView view) throws IOException {
        Optional<SlipFace> several = face().slips().stream()
                .filter(slip -> slip.drawings().size() > 1)
                .findFirst();
        if (several.isPresent()) {
            view.draw(several.get().id());
            picture("side-by-side");
        }
        view.draw("");
        view.piece().trueSize();
        picture("true-size");
        view.piece().fit();
    }

    /** A question somebody has typed a measure for, and another value for it. */
    private record Changed(String slip, QuestionFace question, String other) {}

    private Optional<Changed> typed() {
        return face().slips().stream()
                .sorted(Comparator.comparing(slip -> !slip.drives()))
                .flatMap(slip -> slip.questions().stream()
                        .filter(question -> question.origin() == Origin.TYPED
                                && question.text().matches("[0-9.]+ mm"))
                        .map(question -> new Changed(
                                slip.id(),
                                question,
                                Double.parseDouble(question.text().split(" ")[0]) * 1.25 + " mm")))
                .findFirst();
    }

    private void changes(ProjectView view, Changed changed) throws IOException {
        opened().type(changed.slip(), changed.question().path(), changed.other());
        picture("changed");
        opened().type(changed.slip(), changed.question().path(), "a hand’s breadth");
        settle();
        view.revealUrgent();
        picture("refused");
        opened().undo();
        settle();
        view.tryOut(changed.slip());
        settle();
        String copy = face().slips().stream()
                .filter(slip -> !slip.triesFor().isEmpty())
                .findFirst()
                .orElseThrow()
                .id();
        opened().type(copy, changed.question().path(), changed.other());
        settle();
        picture("compared");
        view.backToPiece();
        opened().removeSlip(copy);
    }

    private void bundles(ProjectView view) throws IOException, FileTrouble {
        if (room.addOns().isEmpty()) {
            return;
        }
        view.installed(face().slips().get(0).calculator());
        picture("bundles");
        AddOns addOns = room.addOns().get();
        String bundle = room.catalogue()
                .find(face().slips().get(0).calculator())
                .map(installed -> installed.bundle())
                .orElse("");
        if (!bundle.isEmpty()) {
            addOns.turn(bundle, false);
            addOns.takeEffect();
            window.catalogueChanged();
            settle();
            view.installed(face().slips().get(0).calculator());
            picture("bundle-off");
            addOns.turn(bundle, true);
            addOns.takeEffect();
            window.catalogueChanged();
            settle();
        }
    }

    private void picture(String state) throws IOException {
        settle();
        Shell shell = window.shell();
        Rectangle inside = display.map(shell, null, shell.getClientArea());
        Rectangle all =
                inside.union(new Rectangle(shell.getLocation().x, shell.getLocation().y, 1, 1)); // with the menus
        Image image = new Image(display, all.width, all.height);
        GC gc = new GC(display);
        gc.copyArea(image, all.x, all.y);
        gc.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData(shell.getMonitor().getZoom())};
        image.dispose();
        number++;
        loader.save(folder.resolve(String.format("%02d-%s.png", number, state)).toString(), SWT.IMAGE_PNG);
    }

    /** Lets everything that is under way come to its end. */
    private void settle() {
        for (int i = 0; i < ROUNDS; i++) {
            AtomicBoolean idle = new AtomicBoolean();
            // behind what was handed to the window before
            room.work().execute(() -> display.asyncExec(() -> idle.set(true)));
            long end = System.currentTimeMillis() + SETTLE_MS;
            while (!idle.get() || System.currentTimeMillis() < end) {
                if (!display.readAndDispatch()) {
                    display.timerExec(20, () -> {});
                    display.sleep();
                }
            }
        }
    }
}
