package org.hidewright.window.slip;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.api.declaration.Kind;
import org.hidewright.window.look.Hint;
import org.hidewright.window.look.Palette;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Words;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Origin;

/** One question: its label, its editor, and below it how it was understood, where it is linked to, or what is wrong with it. */
final class QuestionRow {
    private static final int STEP_IN = 12;
    /** In heights of a line of text. */
    private static final int EDITOR_WIDTH = 7;

    private final String slip;
    private final Editing editing;
    private final Label label;
    private final Control editor;
    private final QuestionWords words;
    private final ToldLine under;
    private final LinkMenu links;
    private final RowsEditor rows;
    private final Runnable changed;
    private QuestionFace face;
    private boolean showing;
    /** Whether what stands in the field was typed there, and what the project has had since. */
    private boolean own;

    private Optional<String> filed = Optional.empty();
    /** Null while nobody asks for it. */
    private QuestionHelp help;

    /** @param changed called when something in it takes another height */
    QuestionRow(Composite parent, Editing editing, String slip, QuestionFace face, Runnable changed) {
        this.slip = slip;
        this.editing = editing;
        this.face = face;
        this.changed = changed;
        Palette palette = editing.inks().palette();
        label = editing.inks().dress(new Label(parent, SWT.WRAP), palette.quiet(), palette.paper());
        GridData left = new GridData(SWT.FILL, SWT.CENTER, true, false);
        left.horizontalIndent = STEP_IN * face.depth();
        left.widthHint = EDITOR_WIDTH * editing.inks().em();
        label.setLayoutData(left);
        editor = editor(parent);
        GridData right = new GridData(SWT.FILL, SWT.CENTER, true, false);
        right.widthHint = EDITOR_WIDTH * editing.inks().em();
        editor.setLayoutData(right);
        if (editor instanceof Combo combo) {
            wide(combo, left, right, changed);
        } else if (face.question().kind() == Kind.LIST) {
            left.horizontalSpan = 2;
            right.horizontalSpan = 2;
        }
        words = new QuestionWords(editing, editor);
        under = new ToldLine(parent, editing.inks(), editor, changed);
        under.place(STEP_IN * face.depth(), 2 * EDITOR_WIDTH * editing.inks().em());
        Spoken.labelled(editor, label);
        Spoken.about(editor, () -> (words.help(face, true) + "\n" + under.text()).strip());
        under.control().setData("id", slip + "/" + face.path() + "/told");
        editor.setData("id", slip + "/" + face.path());
        links = face.question().kind() == Kind.ROWS || face.question().kind() == Kind.GROUP
                ? null
                : editing.links()
                        .map(desk -> new LinkMenu(desk, slip, editor, face))
                        .orElse(null);
        rows = face.question().kind() == Kind.ROWS && !isRowHead(face)
                ? new RowsEditor(parent, editing, slip, face, changed)
                : null;
        editor.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.F1) { // the toolkit’s own event for help is another key here
                turnHelp();
            }
        });
        if (!(editor instanceof Label)) {
            label.setCursor(label.getDisplay().getSystemCursor(SWT.CURSOR_HELP));
            label.addListener(SWT.MouseUp, event -> turnHelp());
            label.setData("equal", editor); // a key does the same there
        }
        if (editor instanceof Text) {
            for (int seen : new int[] {SWT.FocusIn, SWT.FocusOut, SWT.Modify}) {
                editor.addListener(seen, event -> editor.getDisplay().asyncExec(this::tellUsual));
            }
        }
        apply();
    }

    /** The toolkit takes the hint away from the field that is being typed into, where it is needed most: there it stands below. */
    private void tellUsual() {
        if (!editor.isDisposed() && !under.text().equals(words.told(face))) {
            tellUnder();
        }
    }

    /** Long choices have a line to themselves; where even that is too narrow, the chosen one stands below in words. */
    private void wide(Combo combo, GridData label, GridData box, Runnable changed) {
        if (combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > box.widthHint) {
            label.horizontalSpan = 2;
            box.horizontalSpan = 2;
        }
        combo.addListener(
                SWT.Resize,
                event -> combo.getDisplay().asyncExec(() -> {
                    if (!combo.isDisposed() && !under.text().equals(words.told(face))) {
                        apply();
                        changed.run();
                    }
                }));
    }

    /** Shows what it means right below it, or takes that away. */
    private void turnHelp() {
        if (help == null) {
            help = new QuestionHelp(editor.getParent(), editing, slip, face, words.help(face, false));
            help.control().moveBelow(under.control());
        } else {
            help.control().dispose();
            help = null;
        }
        changed.run();
    }

    /** The line above a row that is one of several kinds. */
    private static boolean isRowHead(QuestionFace face) {
        return face.question().kind() == Kind.ROWS && !face.choices().isEmpty();
    }

    /** Questions of the same path and kind can show each other’s answers. */
    boolean canShow(QuestionFace other) {
        return other.path().equals(face.path())
                && other.question().kind() == face.question().kind()
                && other.choices().equals(face.choices());
    }

    /** Shows how the question stands; whether it takes another height than before. */
    boolean show(QuestionFace other) {
        if (other.equals(face)) {
            restore();
            return false;
        }
        int before = under.height();
        face = other;
        apply();
        boolean taller = under.height() != before;
        if (links != null) {
            links.show(face);
        }
        return rows != null && rows.show(face) || taller;
    }

    /** Puts it right after another control. */
    Control after(Control before) {
        Control last = before;
        for (Control control : List.of(label, editor, under.control())) {
            last = moved(control, last);
        }
        if (help != null) {
            last = moved(help.control(), last);
        }
        return rows == null ? last : moved(rows.control(), last);
    }

    private static Control moved(Control control, Control before) {
        if (before == null) {
            control.moveAbove(null);
        } else {
            control.moveBelow(before);
        }
        return control;
    }

    private Control editor(Composite parent) {
        Palette palette = editing.inks().palette();
        if (!face.choices().isEmpty()) {
            Combo combo = new Combo(parent, SWT.READ_ONLY);
            face.choices().forEach(choice -> combo.add(choice.label()));
            combo.addListener(SWT.Selection, event -> chosen(combo.getSelectionIndex()));
            return combo;
        }
        if (face.holdsOthers() || face.question().kind() == Kind.ITEM) {
            return editing.inks().dress(new Label(parent, SWT.RIGHT), palette.ink(), palette.paper());
        }
        Text text = editing.inks().dress(new Text(parent, SWT.SINGLE | SWT.BORDER), palette.ink(), palette.paper());
        text.addListener(SWT.Modify, event -> {
            if (!showing) {
                editing.answers().type(slip, face.path(), text.getText());
                own = true;
                filed = editing.answers().typed(slip, face.path());
            }
        });
        Hint.on(text, editing.inks());
        text.addListener(SWT.FocusIn, event -> text.selectAll()); // what is typed takes its place
        text.addListener(SWT.FocusOut, event -> editing.answers().settle());
        text.addListener(SWT.KeyDown, event -> overLink(text, event));
        return text;
    }

    /** A key that erases takes a link away; what is typed takes its whole place, rather than mixing with what it gives. */
    private void overLink(Text text, Event event) {
        if (!face.isTaken() || isBeingTyped()) { // a link that the first letter took away may be shown for a while
            return;
        }
        boolean command = (event.stateMask & (SWT.MOD1 | SWT.ALT)) != 0;
        if (event.keyCode == SWT.DEL || event.keyCode == SWT.BS) {
            event.doit = false;
            editing.answers().clear(slip, face.path());
        } else if (!command && event.character >= ' ' || (event.stateMask & SWT.MOD1) != 0 && event.keyCode == 'v') {
            text.selectAll();
        }
    }

    private void chosen(int index) {
        String key = face.choices().get(index).key();
        if (face.question().variants().isEmpty()) {
            editing.answers().type(slip, face.path(), key);
        } else {
            editing.answers().choose(slip, face.path(), key);
        }
        editing.answers().settle();
    }

    private void apply() {
        showing = true;
        if (!label.getText().equals(face.label())) {
            label.setText(face.label());
            ((GridData) label.getLayoutData()).minimumWidth = Words.longest(label);
        }
        String tip = words.help(face, true);
        if (!tip.equals(editor.getToolTipText())) {
            label.setToolTipText(tip);
            editor.setToolTipText(tip);
        }
        if (editor instanceof Combo combo) {
            choose(combo);
        } else if (editor instanceof Text text) {
            type(text);
        } else if (editor instanceof Label held) {
            held.setText(face.question().kind() == Kind.GROUP ? "" : face.text());
            alone(held.getText().isEmpty());
        }
        tellUnder();
        Spoken.tell(editor);
        showing = false;
    }

    private void tellUnder() {
        Palette palette = editing.inks().palette();
        int colour = !face.wrong().isEmpty()
                ? palette.warning()
                : face.origin() == Origin.LINKED ? palette.accent() : palette.quiet();
        under.show(words.told(face), colour);
    }

    /** A label with nothing beside it has the whole line. */
    private void alone(boolean so) {
        ((GridData) label.getLayoutData()).horizontalSpan = so ? 2 : 1;
        ((GridData) editor.getLayoutData()).exclude = so;
        editor.setVisible(!so);
    }

    /** Colouring is what costs most of all that is done to a control. */
    private void colour(Control control, int rgb) {
        if (!control.getForeground().equals(editing.inks().color(rgb))) {
            control.setForeground(editing.inks().color(rgb));
        }
    }

    private void choose(Combo combo) {
        List<String> labels =
                face.choices().stream().map(QuestionFace.Choice::label).toList();
        List<String> keys =
                face.choices().stream().map(QuestionFace.Choice::key).toList();
        int index = labels.indexOf(face.text());
        index = index >= 0 ? index : keys.indexOf(face.text());
        index = index >= 0 ? index : labels.indexOf(face.understood());
        if (combo.getSelectionIndex() != index) {
            if (index < 0) {
                combo.deselectAll();
            } else {
                combo.select(index);
            }
        }
    }

    private void type(Text text) {
        String usual = face.origin() == Origin.PRESET
                ? face.text()
                : face.origin() == Origin.OPEN && face.text().isEmpty() ? face.limits() : "";
        Hint.say(text, editing.inks(), usual);
        colour(
                text,
                face.isTaken()
                        ? editing.inks().palette().accent()
                        : editing.inks().palette().ink());
        write(text);
    }

    /** Where a field no longer says what the project has, as when something was taken back, it is written anew. */
    void restore() {
        if (editor instanceof Text text) {
            showing = true;
            write(text);
            showing = false;
        }
        if (rows != null) {
            rows.restore();
        }
    }

    private void write(Text text) {
        boolean left = face.origin() == Origin.PRESET || face.origin() == Origin.OPEN;
        boolean asTyped =
                face.origin() == Origin.WORKSHOP && face.understood().isEmpty(); // it reads as it stands there
        String shown = face.isTaken() && !asTyped
                ? face.understood()
                : left ? "" : face.text(); // a link that gives nothing stands below
        // while it is being typed into, what is typed counts, also where what is shown has not caught up
        if (!text.getText().equals(shown) && !(text.isFocusControl() && isBeingTyped())) {
            text.setText(shown);
            own = false;
        }
    }

    /** Whether what stands in the project came from the letters in this field. */
    private boolean isBeingTyped() {
        return own && filed.equals(editing.answers().typed(slip, face.path()));
    }

    /** Brings its editor to the keyboard; of a table that is its rows. */
    boolean focus() {
        return rows == null
                ? editor.setFocus() || editor instanceof Label
                : rows.control().setFocus();
    }

    void dispose() {
        label.dispose();
        editor.dispose();
        under.dispose();
        if (help != null) {
            help.control().dispose();
        }
        if (rows != null) {
            rows.control().dispose();
        }
    }
}
