package org.hidewright.window.begin;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.hidewright.core.begin.Beginning;
import org.hidewright.core.begin.Step;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.Slip;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.StockLink;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SavedProject;
import org.hidewright.window.model.Searches;
import org.hidewright.window.model.WorkPlace;
import org.hidewright.window.piece.PieceView;
import org.hidewright.window.slip.Desk;
import org.hidewright.window.words.WindowTexts;

/**
 * Begins a project in steps: on the left what a step asks, with an answer in every place already; on the right the piece as it
 * is now. All of it can be done from the keyboard.
 */
public final class BeginPage extends Composite {
    private final Inks inks;
    private final WindowTexts texts;
    private final Wording wording;
    private final Ways ways;
    private final Beginning beginning;
    private final OpenProject project;
    private final Desk desk;

    private final Link units;
    private final StepLine line;
    private final StepBoard board;
    private final PieceView piece;
    private final Label told;
    private final Button back;
    private final Button next;
    private List<Step> steps = List.of();
    /** What the steps were made for: the slips that there were. */
    private String madeFor = "";

    private int at;
    /** Whether the last step is done and only waits to be worked out. */
    private boolean finishing;

    /**
     * A page that begins with the first template there is.
     *
     * @param beginning with at least one template
     * @param seen the units to begin in
     */
    public BeginPage(
            Composite parent,
            Inks inks,
            WindowTexts texts,
            WorkPlace place,
            Beginning beginning,
            UnitSystem seen,
            Ways ways) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.texts = texts;
        this.wording = new Wording(texts.language(), UnitSystem.METRIC);
        this.ways = ways;
        this.beginning = beginning;
        Project begun =
                beginning.begun(PiecePane.sorted(beginning.templates(), wording).get(0), seen);
        project = new OpenProject(
                SavedProject.untitled(Path.of("begun.json"), ""),
                begun,
                wording,
                place::bench,
                place.work(),
                does -> place.window().execute(() -> {
                    if (!isDisposed()) {
                        does.run();
                    }
                }),
                this::show);
        project.leaveRangesOut();
        Searches none = new Searches(project, place.work(), place.window(), System::nanoTime, 1);
        desk = new Desk(inks, texts, project, none, new NoRound(this::take));
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(2, true);
        layout.marginWidth = 36;
        layout.marginHeight = 20;
        layout.horizontalSpacing = 28;
        layout.verticalSpacing = 12;
        setLayout(layout);
        Label head = label(this, inks.palette().ink());
        head.setFont(inks.font(1.6, true));
        head.setText(texts.text("begin.head"));
        line = new StepLine(this, inks, texts, this::goTo);
        ((GridData) line.getLayoutData()).horizontalSpan = 2;
        units = inks.words(this, "", ways.switchUnits());
        units.setData("id", "begin.units");
        units.setToolTipText(texts.text("project.units.help"));
        units.setLayoutData(new GridData(SWT.RIGHT, SWT.CENTER, true, false));
        units.moveBelow(head);
        sayUnits();
        board = new StepBoard(this, inks);
        piece = new PieceView(this, inks);
        piece.setData("id", "begin.drawing");
        piece.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        told = label(this, inks.palette().warning());
        told.setData("id", "begin.told");
        ((GridData) told.getLayoutData()).horizontalSpan = 2;
        Composite buttons = buttons();
        Button leave = button(buttons, "leave", ways.leaves());
        ((GridData) leave.getLayoutData()).grabExcessHorizontalSpace = true;
        ((GridData) leave.getLayoutData()).horizontalAlignment = SWT.LEFT;
        back = button(buttons, "back", () -> goTo(at - 1));
        next = button(buttons, "next", this::next);
        setTabList(new Control[] {board, buttons, line, units});
        getShell().setDefaultButton(next);
        addListener(SWT.Traverse, this::entered);
        addListener(SWT.Dispose, this::left);
        make();
        project.workOut();
    }

    /**
     * Where the steps lead to.
     *
     * @param done is given the project when the last step is done
     * @param leaves goes back to where it was asked for
     * @param switchUnits from millimetres to inches and back
     */
    public record Ways(Consumer<Project> done, Runnable leaves, Runnable switchUnits) {}

    private void take(String slip, AnswerPath path, StockLink row) {
        project.become(beginning.taking(project.project(), slip, path, row));
    }

    /** Shows what is begun in other units. */
    public void showIn(UnitSystem to) {
        project.settle();
        project.become(beginning.shown(project.project(), to));
        sayUnits();
        layout();
    }

    private void sayUnits() {
        boolean inches = Beginning.units(project.project()) == UnitSystem.INCH;
        Inks.say(units, texts.text(inches ? "project.to-mm" : "project.to-inches"));
    }

    /** Whether anything was answered already. */
    public boolean isAnswered() {
        return project.canUndo();
    }

    /** The project as far as it is begun. */
    public Project begun() {
        return project.project();
    }

    /** How projects are begun with what is there, in the maker’s language. */
    public static Beginning beginning(WorkPlace place, WindowTexts texts) {
        return new Beginning(place.catalogue(), place::stock, new Wording(texts.language(), UnitSystem.METRIC));
    }

    /** Enter leads on from wherever something is answered; on a button or on words it does what they say. */
    private void entered(Event event) {
        Control focus = getDisplay().getFocusControl();
        boolean does = focus instanceof Link || focus instanceof Button button && (button.getStyle() & SWT.PUSH) != 0;
        if (event.detail == SWT.TRAVERSE_RETURN && !does) {
            event.doit = false;
            next();
        }
    }

    private void left(Event event) {
        project.leave();
        Shell shell = getShell();
        if (!shell.isDisposed() && event.widget == this) {
            shell.setDefaultButton(null);
        }
    }

    private Label label(Composite parent, int ink) {
        Label label =
                inks.dress(new Label(parent, SWT.WRAP), ink, inks.palette().paper());
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = 300;
        label.setLayoutData(data);
        return label;
    }

    private Composite buttons() {
        Composite buttons = inks.dress(
                new Composite(this, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        buttons.setLayout(layout);
        buttons.setLayoutData(new GridData(SWT.FILL, SWT.BOTTOM, true, false, 2, 1));
        return buttons;
    }

    private Button button(Composite parent, String key, Runnable does) {
        Button button = new Button(parent, SWT.PUSH);
        button.setData("id", "begin." + key);
        button.setLayoutData(new GridData(SWT.RIGHT, SWT.CENTER, false, false));
        say(button, key);
        button.addListener(SWT.Selection, event -> does.run());
        return button;
    }

    /** A letter of it, with Alt, presses it. */
    private void say(Button button, String key) {
        button.setText(Mnemonics.beside(getShell().getMenuBar(), texts.text("begin." + key)));
    }

    private void next() {
        if (at + 1 < steps.size()) {
            goTo(at + 1);
        } else {
            finish();
        }
    }

    /** Once all is worked out, or at the second word where that takes too long. */
    private void finish() {
        if (finishing || project.workedNow().isPresent()) {
            ways.done().accept(beginning.keeping(project.project()));
        }
        finishing = true;
    }

    private void goTo(int step) {
        finishing = false;
        project.settle();
        at = Math.max(0, Math.min(steps.size() - 1, step));
        make();
    }

    /** Makes the step that is gone to, and goes to what it asks first. */
    private void make() {
        Project now = project.project();
        madeFor = slips(now);
        steps = beginning.steps(now);
        at = Math.min(at, steps.size() - 1);
        Step step = steps.get(at);
        line.show(steps, at);
        board.show(
                StepLine.name(texts, step),
                texts.text("begin.step-" + step.kind().name().toLowerCase(Locale.ROOT) + ".help"),
                holder -> panes(holder, step));
        project.face().ifPresent(board::show);
        back.setEnabled(at > 0);
        say(back, "back"); // its letter is underlined only where it is said of a button that can be pressed
        say(next, at + 1 < steps.size() ? "next" : "done");
        back.getParent().layout();
        board.toFirst();
    }

    private List<StepPane> panes(Composite holder, Step step) {
        switch (step.kind()) {
            case PIECE -> {
                return List.of(new PiecePane(
                        holder,
                        inks,
                        StepLine.name(texts, step),
                        wording,
                        beginning.templates(),
                        beginning.template(project.project()).orElseThrow(),
                        template -> project.become(beginning.begun(template, Beginning.units(project.project())))));
            }
            case FOLLOWS -> {
                StepPane follows = new FollowsPane(
                        holder,
                        inks,
                        wording,
                        beginning.followers(project.project()),
                        (calculator, in) -> project.become(beginning.following(project.project(), calculator, in)));
                return List.of(follows, new AskedPane(holder, desk, beginning, step, board::refit));
            }
            default -> {
                if (step.kind() == Step.Kind.SIZE) {
                    beginning
                            .giver(project.project())
                            .ifPresent(giver -> new GivenChoice(
                                    holder,
                                    inks,
                                    texts,
                                    wording,
                                    giver,
                                    beginning.isGiven(project.project()),
                                    byName -> project.become(beginning.given(project.project(), byName))));
                }
                return List.of(new AskedPane(holder, desk, beginning, step, board::refit));
            }
        }
    }

    private static String slips(Project project) {
        return String.join(" ", project.slips().stream().map(Slip::id).toList());
    }

    private void show(ProjectFace face) {
        if (!slips(project.project()).equals(madeFor)) {
            boolean piecesStep = steps.get(at).kind() == Step.Kind.PIECE;
            if (piecesStep) {
                madeFor = slips(project.project());
                steps = beginning.steps(
                        project.project()); // the list of pieces stays, with what is being looked for in it
                line.show(steps, at);
            } else {
                make();
            }
        }
        Project now = project.project();
        Optional<Project> whole = project.workedNow().map(worked -> beginning.byTheirLeathers(now, worked));
        if (whole.filter(other -> !other.text().equals(now.text())).isPresent()) {
            project.amend(whole.get());
        } else if (finishing && whole.isPresent()) {
            finish();
            return;
        }
        board.show(face);
        piece.show(
                face.piece(),
                face.unmade()
                        .map(slip -> texts.text("drawing.unmade.help", slip.title()))
                        .orElse(""));
        String text = Telling.of(face);
        if (!told.getText().equals(text)) {
            told.setText(text);
            layout();
        }
    }
}
