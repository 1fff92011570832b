package org.hidewright.window.model;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.Slip;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;

/**
 * A project that is open in a window. Everything but the working out is done on the thread of the window; calculators are
 * called on another, and only what was changed last is worked out where changes come faster than answers.
 */
public final class OpenProject {
    private final Supplier<Bench> bench;
    private final Executor work;
    private final Executor window;
    private final Consumer<ProjectFace> shows;
    private final Wording wording;

    private final History history;
    private ProjectFile file;

    /** Counts the changes; what was worked out for an earlier one is not shown any more. */
    private volatile long latest;

    /** Known to the working thread alone. */
    private WorkedProject worked;

    /**
     * A project from its file.
     *
     * @param bench what works it out; asked for each time, since bundles come and go
     * @param work the one thread calculators are called on
     * @param window the thread of the window
     * @param shows what shows the project, called on the thread of the window
     */
    public OpenProject(
            ProjectFile file,
            Wording wording,
            Supplier<Bench> bench,
            Executor work,
            Executor window,
            Consumer<ProjectFace> shows) {
        this.file = file;
        this.bench = bench;
        this.work = work;
        this.window = window;
        this.shows = shows;
        this.history = new History(file.project());
        this.wording = new Wording(
                wording.language(),
                file.project().shown("units").flatMap(UnitSystem::of).orElse(UnitSystem.METRIC));
    }

    public Project project() {
        return history.now();
    }

    /** Whether what is shown is not in the file. */
    public boolean unsaved() {
        return !history.now().text().equals(file.project().text());
    }

    /** Answers a question as it was typed; nothing typed lets the preset stand. */
    public void type(String slip, AnswerPath path, String text) {
        change(
                slip + "/" + path,
                slip(slip),
                one -> text.isBlank() ? one.clearing(path) : one.answering(path, JsonText.quoted(text)));
    }

    /** Chooses a variant; what was typed for the others stays. */
    public void choose(String slip, AnswerPath path, String variant) {
        change("", slip(slip), one -> one.choosing(path, variant));
    }

    private Slip slip(String id) {
        return history.now().slip(id).orElseThrow(() -> new IllegalArgumentException("no slip " + id));
    }

    /** A change of a slip’s text. */
    private interface Edit {
        Slip of(Slip slip) throws JsonTrouble;
    }

    private void change(String spot, Slip slip, Edit edit) {
        try {
            history.change(history.now().with(edit.of(slip)), spot);
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what the window writes is JSON", e);
        }
        workOut();
    }

    public boolean canUndo() {
        return history.canUndo();
    }

    public boolean canRedo() {
        return history.canRedo();
    }

    public void undo() {
        history.undo();
        workOut();
    }

    public void redo() {
        history.redo();
        workOut();
    }

    /** Says that what is typed next is another change, as when a field is left. */
    public void settle() {
        history.settle();
    }

    /**
     * Saves the project into its file.
     *
     * @return what is to be told
     */
    public List<Remark> save() {
        try {
            file = file.save(history.now());
            history.settle();
            return file.remarks();
        } catch (FileTrouble e) {
            return e.remarks();
        }
    }

    /** Works out what there is, and shows it: first without ranges, then whole. */
    public void workOut() {
        long mine = ++latest;
        Project project = history.now();
        work.execute(() -> {
            if (mine != latest) {
                return; // a later change is waiting
            }
            worked = bench.get().work(project, worked);
            show(mine, Faces.atOnce(worked, wording));
            Faces.whole(worked, wording, () -> mine == latest).ifPresent(face -> show(mine, face));
        });
    }

    private void show(long mine, ProjectFace face) {
        window.execute(() -> {
            if (mine == latest) {
                shows.accept(face);
            }
        });
    }

    /** What was answered for a question, as it stands in the file; empty where nothing was. */
    public Optional<String> typed(String slip, AnswerPath path) {
        Slip from = slip(slip);
        return from.answer(path).map(from::textOf);
    }
}
