package org.hidewright.window.slip;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.look.FoldWords;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.model.QuestionFace;

/**
 * Of a slip on which something is searched for: begins the search, says how far it is, ends it; and what was found, to be changed by
 * hand, behind words that open it.
 */
final class SearchPane extends Composite {
    private static final List<Integer> SECONDS = List.of(15, 60, 300, 1800);
    private static final int USUAL = 1;
    private static final int MINUTE = 60;
    /** How often it is said how far a search is. */
    private static final int LOOK_MS = 500;

    private final Desk desk;
    private final String slip;
    private final Runnable taller;
    private final Link deed;
    private final Combo time;
    private final Label told;
    private final Link byHand;
    private final QuestionList found;
    private List<QuestionFace> questions = List.of();
    private boolean open;

    /** @param taller called when something in it takes another height */
    SearchPane(Composite parent, Desk desk, String slip, Runnable taller) {
        super(parent, SWT.NONE);
        this.desk = desk;
        this.slip = slip;
        this.taller = taller;
        Palette palette = desk.inks().palette();
        desk.inks().dress(this, palette.ink(), palette.paper());
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        deed = desk.inks().words(this, "", this::turn);
        deed.setData("id", slip + "/search");
        time = new Combo(this, SWT.READ_ONLY);
        time.setData("id", slip + "/search-time");
        SECONDS.forEach(seconds -> time.add(words(seconds)));
        time.select(USUAL);
        time.setToolTipText(desk.texts().text("slip.search-time"));
        Spoken.name(time, () -> desk.texts().text("slip.search-time"));
        told = across(desk.inks().dress(new Label(this, SWT.WRAP), palette.quiet(), palette.paper()));
        told.setData("id", slip + "/search-told");
        byHand = across(desk.inks().words(this, "", this::turnByHand));
        byHand.setData("id", slip + "/by-hand");
        found = new QuestionList(this, desk.editing(), slip, taller);
        across(found.control());
        Runnable look = this::look;
        desk.searches().watch(look);
        addListener(SWT.Dispose, event -> desk.searches().unwatch(look));
        place(told, false);
        place(byHand, false);
        place(found.control(), false);
    }

    private static <C extends Control> C across(C control) {
        control.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        return control;
    }

    private String words(int seconds) {
        return seconds < MINUTE
                ? desk.texts().text("slip.search-seconds", seconds)
                : desk.texts().many("slip.search-minutes", seconds / MINUTE);
    }

    private boolean runsHere() {
        return desk.searches().on().equals(Optional.of(slip));
    }

    private void turn() {
        if (runsHere()) {
            desk.searches().stop();
        } else {
            Duration whole = Duration.ofSeconds(SECONDS.get(time.getSelectionIndex()));
            desk.searches().begin(slip, whole);
        }
    }

    /** Says how far it is, as long as it runs. */
    private void look() {
        if (isDisposed()) {
            return;
        }
        if (showSearch()) {
            taller.run();
        }
        if (runsHere()) {
            getDisplay().timerExec(LOOK_MS, this::look);
        }
    }

    /**
     * Shows how the search stands and what is found; whether that takes another height than before.
     *
     * @param shown the questions that are searched for
     */
    boolean show(List<QuestionFace> shown) {
        questions = shown;
        return showSearch() | showFound();
    }

    /** Forgets what fields show, as after something was taken back. */
    void restore() {
        found.restore();
        showSearch();
    }

    private boolean showSearch() {
        boolean runs = runsHere();
        Inks.say(deed, desk.texts().text(runs ? "slip.search-stop" : "slip.search"));
        enable(deed, runs || desk.searches().canBegin(slip));
        enable(time, !runs);
        String text = runs
                ? desk.texts()
                        .text(
                                "slip.search-runs.help",
                                Math.round(100 * desk.searches().share()))
                : desk.searches().failed(slip).map(desk.texts()::told).orElse("");
        boolean other = told.getText().isEmpty() != text.isEmpty();
        if (!told.getText().equals(text)) {
            told.setText(text);
            place(told, !text.isEmpty());
        }
        return other;
    }

    private static void enable(Control control, boolean so) {
        if (control.getEnabled() != so) {
            control.setEnabled(so);
        }
    }

    private boolean showFound() {
        boolean any = questions.stream().anyMatch(question -> !question.rows().isEmpty());
        open |= questions.stream().anyMatch(QuestionFace::isWrong); // which has to be seen
        boolean other = found.show(open && any ? questions : List.of());
        if (any) {
            FoldWords.say(
                    byHand,
                    desk.texts().text("slip.by-hand"),
                    open,
                    desk.texts().text(open ? "fold.open" : "fold.shut"));
        }
        other |= byHand.getVisible() != any;
        place(byHand, any);
        place(found.control(), open && any);
        return other;
    }

    private void turnByHand() {
        open = !open;
        showFound();
        taller.run();
    }

    /** Brings a question to the keyboard, or the search where nothing is found yet; whether it is one of those searched for. */
    boolean focus(String question) {
        boolean here = questions.stream()
                .anyMatch(face -> question.startsWith(face.path().toString()));
        if (!here || questions.stream().allMatch(face -> face.rows().isEmpty())) {
            return here && deed.setFocus();
        }
        if (!open) {
            turnByHand();
        }
        return found.focus(question);
    }

    private static void place(Control control, boolean there) {
        ((GridData) control.getLayoutData()).exclude = !there;
        control.setVisible(there);
    }
}
