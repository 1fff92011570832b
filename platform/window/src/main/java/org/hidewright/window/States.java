package org.hidewright.window;

import java.io.IOException;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.window.look.FoldWords;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Origin;
import org.hidewright.window.model.SlipFace;

/**
 * Brings the window into each of its main states, with the project that is open, and has it looked at there; nothing of it is
 * saved. Pictures are made of these states, and tests look whether each can be read, reached and heard: a new page gets its
 * state here.
 */
final class States {
    /** Documents are made, then a picture of a page, then it is shown. */
    private static final int ROUNDS = 3;

    private final MainWindow window;
    private final Workroom room;
    private final long settleMs;
    private final Look look;
    private final Display display;

    /** What is done with the window in a state. */
    interface Look {
        void at(String state) throws IOException;
    }

    /** @param settleMs how long a state is left alone before it is looked at */
    States(MainWindow window, Workroom room, long settleMs, Look look) {
        this.window = window;
        this.room = room;
        this.settleMs = settleMs;
        this.look = look;
        this.display = window.shell().getDisplay();
    }

    /** All of them, one after the other; in the end the window is where a project begins. */
    void walk() throws IOException, FileTrouble {
        settle();
        if (window.project().isPresent()) {
            project();
            workshop();
            window.view().backToPiece();
            opened().rename(face().name() + " …");
            window.shell().close();
            look("leaving");
            while (opened().canUndo()) {
                opened().undo();
            }
            window.close();
        }
        look("start");
        window.askToBegin();
        look("begin");
    }

    private OpenProject opened() {
        return window.project().orElseThrow();
    }

    private ProjectFace face() {
        return opened().face().orElseThrow();
    }

    private void project() throws IOException, FileTrouble {
        ProjectView view = window.view();
        look("project");
        view.piece().likeness();
        look("in-leather");
        view.piece().likeness();
        drawings(view);
        Optional<Changed> typed = typed();
        if (typed.isPresent()) {
            changes(view, typed.get());
        }
        view.foldAll(true);
        look("folded");
        view.foldAll(false);
        settle();
        unfold(window.shell());
        look("unfolded");
        unfold(window.shell());
        tables(view);
        window.switchUnits();
        look("inches");
        window.switchUnits();
        window.showPapers();
        look("pages");
        view.measureScreen();
        look("measure-screen");
        bundles(view);
    }

    /** As the maker has it, or as one is begun. */
    private void workshop() throws IOException {
        window.workshop().show();
        look("workshop");
        if (window.workshop().shown().isPresent()) {
            window.workshop().record(Map.of());
            look("measured");
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
            look("side-by-side");
        }
        view.draw("");
        view.piece().trueSize();
        look("true-size");
        view.piece().fit();
    }

    /** Opens whatever is folded away under words, or folds it again. */
    private static void unfold(Composite in) {
        for (Control inside : in.getChildren()) {
            if (inside instanceof Link words && FoldWords.are(words)) {
                words.notifyListeners(SWT.Selection, new Event());
            } else if (inside instanceof Composite more && more.getVisible()) {
                unfold(more);
            }
        }
    }

    private void tables(ProjectView view) throws IOException {
        Optional<SlipFace> tables =
                face().slips().stream().filter(slip -> !slip.tables().isEmpty()).findFirst();
        if (tables.isPresent()) {
            view.tables(tables.get().id());
            look("tables");
            view.backToPiece();
        }
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
        look("changed");
        opened().type(changed.slip(), changed.question().path(), "a hand’s breadth");
        settle();
        view.revealUrgent();
        look("refused");
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
        look("compared");
        view.backToPiece();
        opened().removeSlip(copy);
    }

    private void bundles(ProjectView view) throws IOException, FileTrouble {
        if (room.addOns().isEmpty()) {
            return;
        }
        view.installed(face().slips().get(0).calculator());
        look("bundles");
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
            look("bundle-off");
            addOns.turn(bundle, true);
            addOns.takeEffect();
            window.catalogueChanged();
            settle();
        }
    }

    private void look(String state) throws IOException {
        settle();
        look.at(state);
    }

    /** Lets everything that is under way come to its end. */
    private void settle() {
        for (int i = 0; i < ROUNDS; i++) {
            AtomicBoolean idle = new AtomicBoolean();
            // behind what was handed to the window before
            room.work().execute(() -> display.asyncExec(() -> idle.set(true)));
            long end = System.currentTimeMillis() + settleMs;
            while (!idle.get() || System.currentTimeMillis() < end) {
                if (!display.readAndDispatch()) {
                    display.timerExec(20, () -> {});
                    display.sleep();
                }
            }
        }
    }
}
