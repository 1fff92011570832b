package org.hidewright.window.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.begin.NewSlips;
import org.hidewright.core.jobcard.SlipWording;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Link;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.project.Slip;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.SlipSearch;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.workshop.Copies;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.core.workshop.Tables;

/** A project that is open in a window: what is changed in it, taken back and saved. For the thread of the window. */
public final class OpenProject implements Answering {
    private final Supplier<Bench> bench;
    private final Wording usual;

    private final History<Project> history;
    private final SavedProject saved;
    private final WorkingOut working;

    /**
     * A project from its file.
     *
     * @param path of that file
     * @param usual the words it is shown in where it says nothing of units itself
     * @param bench what works it out; asked for each time, since bundles come and go
     * @param work the one thread calculators are called on
     * @param window the thread of the window
     * @param shows what shows the project, called on the thread of the window
     */
    public OpenProject(
            Path path,
            ProjectFile file,
            Wording usual,
            Supplier<Bench> bench,
            Executor work,
            Executor window,
            Consumer<ProjectFace> shows) {
        this(SavedProject.in(path, file), file.project(), usual, bench, work, window, shows);
    }

    /** A project that may have no file yet. */
    public OpenProject(
            SavedProject saved,
            Project project,
            Wording usual,
            Supplier<Bench> bench,
            Executor work,
            Executor window,
            Consumer<ProjectFace> shows) {
        this.saved = saved;
        this.bench = bench;
        this.working = new WorkingOut(bench, work, window, shows);
        this.history = new History<>(project, Project::text);
        this.usual = usual;
    }

    /** The words it is shown in: in the units that it is shown in. */
    public Wording wording() {
        return new Wording(usual.language(), units());
    }

    private UnitSystem units() {
        return project().shown("units").flatMap(UnitSystem::of).orElse(usual.units());
    }

    public Project project() {
        return history.now();
    }

    /** Whether what is shown is not in the file. */
    public boolean unsaved() {
        return !saved.holds(history.now());
    }

    @Override
    public void type(String slip, AnswerPath path, String text) {
        change(
                slip + "/" + path,
                slip,
                one -> text.isBlank() ? one.clearing(path) : answers(slip).typed(one, path, text));
    }

    @Override
    public void choose(String slip, AnswerPath path, String variant) {
        change("", slip, one -> answers(slip).laidDown(one, path).choosing(path, variant));
    }

    /** Links a question to an answer, or to the cell of one. */
    public void link(String slip, AnswerPath path, Link to) {
        change("", slip, one -> answers(slip).linked(one, path, to));
    }

    @Override
    public void clear(String slip, AnswerPath path) {
        change("", slip, one -> answers(slip).cleared(one, path));
    }

    /** Puts what a search has found on its slip; all that one search finds is taken back together. */
    void find(SlipSearch.Find found, int search) {
        edit("search " + search, found::in);
    }

    /**
     * Answers a question with a cell of the workshop, or all that a variant asks with a row; a copy of the row is kept.
     *
     * @param row without a column, the whole row
     */
    public void take(String slip, AnswerPath path, StockLink row) {
        edit("", project -> {
            Tables tables = bench.get().shelf(project).tables();
            Project taking = project.with(answers(slip).stocked(slip(slip), path, row, tables));
            Copies copies = new Copies(bench.get().shelf(taking), taking.stock());
            return taking.keeping(copies.with(row).json(false));
        });
    }

    /** What its questions can take their answers from as it is now. */
    public LinkChoices choices() {
        return new LinkChoices(bench.get().shelf(project()), worked(), face(), wording());
    }

    /** What is asked on a slip, as it is shown; nothing where it is not shown yet. */
    private AnswerEdits answers(String slip) {
        return new AnswerEdits(
                path -> face().flatMap(shown -> shown.slip(slip)).flatMap(shown -> shown.question(path)), wording());
    }

    @Override
    public void addRow(String slip, AnswerPath table) {
        addRows(slip, table, List.of(List.of()));
    }

    @Override
    public void addRows(String slip, AnswerPath table, List<List<String>> lines) {
        change("", slip, one -> answers(slip).withRows(one, table, lines, labels(slip)));
    }

    private Function<Question, String> labels(String slip) {
        Optional<WorkedSlip> known =
                worked().flatMap(all -> Optional.ofNullable(all.slips().get(slip)));
        return question -> known.map(one -> new SlipWording(one, wording()).label(question))
                .orElse(question.key());
    }

    @Override
    public void removeRow(String slip, AnswerPath table, String row) {
        change("", slip, one -> answers(slip).withoutRow(one, table, row));
    }

    @Override
    public void moveRow(String slip, AnswerPath table, String row, int by) {
        change("", slip, one -> answers(slip).movingRow(one, table, row, by));
    }

    /**
     * Adds a slip after the last.
     *
     * @return its id
     */
    public String addSlip(String calculator, String bundle) {
        String id = SlipCopies.freeId(history.now(), calculator);
        edit("", project -> project.adding(project.slips().size(), NewSlips.empty(id, calculator, bundle)));
        return id;
    }

    /**
     * Puts a copy of a slip right after it.
     *
     * @param title of the copy
     * @return its id
     */
    public String copySlip(String slip, String title) {
        String id = SlipCopies.freeId(history.now(), slip);
        edit("", project -> SlipCopies.copied(project, slip(slip), id, title));
        return id;
    }

    /**
     * Puts a copy of a slip right after it, to try something out on: it is worked and compared, but not made.
     *
     * @param title of the copy
     * @return its id
     */
    public String tryOut(String slip, String title) {
        String id = SlipCopies.freeId(history.now(), slip);
        edit("", project -> SlipCopies.tried(project, slip(slip), id, title));
        return id;
    }

    /** Takes what was tried out over into the slip it was tried out for. */
    public void takeOverTrial(String slip) {
        edit("", project -> SlipCopies.takenOver(project, slip(slip)));
    }

    /** Takes a slip out. What was linked to it says so until it is linked elsewhere. */
    public void removeSlip(String slip) {
        edit("", project -> project.removing(slip(slip).id()));
    }

    /** Moves a slip up or down among the others; one that is at its end already stays. */
    public void moveSlip(String slip, int by) {
        edit("", project -> {
            int to = project.index().get(slip(slip).id()) + by;
            return to >= 0 && to < project.slips().size() ? project.moving(slip, to) : project;
        });
    }

    /** Gives a slip the maker’s own title; an empty one lets that of its calculator stand. */
    public void titleSlip(String slip, String title) {
        change(slip + "/title", slip, one -> one.titled(title));
    }

    /** Gives the project another name. */
    public void rename(String name) {
        edit("name", project -> project.named(name));
    }

    /** Shows the project in inches or in millimetres. */
    public void showIn(UnitSystem units) {
        edit("", project -> project.showing("units", units.key()));
    }

    /** Takes the rows of the workshop over as they are now, and keeps copies of all that is taken from it. */
    public void takeFromWorkshop() {
        edit("", project -> project.keeping(new Copies(bench.get().shelf(project), project.stock()).json(true)));
    }

    /** Keeps copies of all that is taken from the workshop; those that it has stay as they are. */
    public void keepWhatIsTaken() {
        edit("", project -> project.keeping(new Copies(bench.get().shelf(project), project.stock()).json(false)));
    }

    /** Takes over a text that was not saved the last time. */
    public boolean takeOver(String text) {
        Optional<Project> project = ProjectReader.read(text).project();
        project.ifPresent(this::become);
        return project.isPresent();
    }

    /** Makes it another project, as a guided start does when another piece is chosen. */
    public void become(Project other) {
        edit("", before -> other);
    }

    /** Completes it after what was changed last, with which that is taken back. */
    public void amend(Project whole) {
        history.amend(whole);
        workOut();
    }

    /** What was worked out last, if that is the project as it is now. */
    public Optional<WorkedProject> workedNow() {
        return worked().filter(known -> known.project() == project());
    }

    private Slip slip(String id) {
        return history.now().slip(id).orElseThrow(() -> new Gone(id));
    }

    /** A change of a slip’s text. */
    private interface SlipEdit {
        Slip of(Slip slip) throws JsonTrouble;
    }

    /** A change of a project’s text. */
    private interface ProjectEdit {
        Project of(Project project) throws JsonTrouble;
    }

    private void change(String spot, String slip, SlipEdit edit) {
        edit(spot, project -> project.with(edit.of(slip(slip))));
    }

    private void edit(String spot, ProjectEdit edit) {
        try {
            history.change(edit.of(history.now()), spot);
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what the window writes is JSON", e);
        } catch (Gone meanwhile) {
            return; // clicked before the window could show that it is not there any more
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

    /** What was done to it last, or is being done. */
    public History.Step step() {
        return history.step();
    }

    @Override
    public void settle() {
        history.settle();
    }

    /**
     * Saves the project into its file.
     *
     * @return what is to be told
     */
    public List<Remark> save() {
        return settled(saved.save(history.now()));
    }

    /** Saves the project as another file, and goes on with that one. */
    public List<Remark> saveAs(Path other) {
        return settled(saved.saveAs(other, history.now()));
    }

    private List<Remark> settled(List<Remark> told) {
        if (!unsaved()) {
            history.settle();
        }
        return told;
    }

    /** Whether it has no file yet. */
    public boolean isUntitled() {
        return saved.isUntitled();
    }

    /** The file it is saved into; where it has none yet, the one that suggests itself. */
    public Path path() {
        return saved.path();
    }

    /** Works out what there is, and shows it: first without ranges, then whole. */
    public void workOut() {
        working.start(history.now(), wording());
    }

    /** Leaves out what ranges make of answers, where only the piece is looked at and should follow at once. */
    public void leaveRangesOut() {
        working.leaveRangesOut();
    }

    /** Says that nobody looks at it any more: what is still being worked out for it is not shown. */
    public void leave() {
        working.leave();
    }

    /** Works everything out anew, as when bundles have come or gone. */
    public void workOutAnew() {
        working.forget();
        workOut();
    }

    @Override
    public Optional<String> typed(String slip, AnswerPath path) {
        return history.now().slip(slip).flatMap(from -> from.answer(path).map(from::textOf));
    }

    /** What is shown; empty before the first is. */
    public Optional<ProjectFace> face() {
        return working.face();
    }

    /** What was worked out last; empty before the first time. */
    public Optional<WorkedProject> worked() {
        return working.last();
    }
}
