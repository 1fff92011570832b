package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.look.Inks;

/**
 * What is told below a field. Nothing jumps while somebody types: below what is typed into there is room for a line whether one
 * is told or not, and what takes more lies over what is below until the field is left or the typing rests.
 */
final class ToldLine {
    private static final double SMALL = 0.85;
    /** So long after a letter what lies over the next field gets room of its own. */
    private static final int RESTS_MS = 1500;

    private final Inks inks;
    private final Control field;
    private final Runnable changed;
    private final Label line;
    private final GridData place = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
    /** What has no room in its place while it is typed; null while all has. */
    private Label over;

    /** @param changed called when it takes another height after the field was left */
    ToldLine(Composite parent, Inks inks, Control field, Runnable changed) {
        this.inks = inks;
        this.field = field;
        this.changed = changed;
        line = label(parent);
        line.setLayoutData(place);
        field.setData("whole", line);
        field.addListener(SWT.FocusOut, event -> field.getDisplay().asyncExec(this::left));
    }

    private Label label(Composite parent) {
        Label label = inks.dress(
                new Label(parent, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        label.setFont(inks.font(SMALL, false));
        return label;
    }

    /** Where it begins, and how wide it is without more room. */
    void place(int indent, int width) {
        place.horizontalIndent = indent;
        place.widthHint = width;
    }

    Label control() {
        return line;
    }

    String text() {
        return line.getText();
    }

    void show(String text, int colour) {
        if (!line.getText().equals(text)) {
            line.setText(text);
        }
        if (!line.getForeground().equals(inks.color(colour))) { // colouring is what costs most
            line.setForeground(inks.color(colour));
        }
        boolean gone = text.isEmpty() && !isTyped() && (place.exclude || !field.isFocusControl());
        if (place.exclude != gone) {
            place.exclude = gone;
            line.setVisible(!gone);
        }
        boolean kept = isTyped() && field.isFocusControl() && line.getSize().y > 0;
        place.heightHint = kept ? line.getSize().y : SWT.DEFAULT;
        lay(kept && wanted() > place.heightHint);
    }

    private boolean isTyped() {
        return field instanceof Text;
    }

    private void lay(boolean over) {
        if (this.over != null) {
            this.over.dispose();
            this.over = null;
        }
        if (over) {
            this.over = label(line.getParent());
            this.over.setText(line.getText());
            this.over.setForeground(line.getForeground());
            GridData free = new GridData();
            free.exclude = true;
            this.over.setLayoutData(free);
            Rectangle at = line.getBounds();
            this.over.setBounds(at.x, at.y, at.width, wanted());
            this.over.moveAbove(null);
            Label shown = this.over;
            field.getDisplay().timerExec(RESTS_MS, () -> {
                if (this.over == shown && !shown.isDisposed()) {
                    room();
                }
            });
        }
    }

    private void left() {
        if (!field.isDisposed() && !field.isFocusControl()) {
            room();
        }
    }

    /** Gives it the room it wants. */
    private void room() {
        int before = height();
        lay(false);
        place.heightHint = SWT.DEFAULT;
        if (height() != before) {
            changed.run();
        }
    }

    /** How high all of it is. */
    private int wanted() {
        return line.computeSize(Math.max(1, line.getSize().x), SWT.DEFAULT).y;
    }

    /** What it takes where it stands; nothing where there is none. */
    int height() {
        return place.exclude ? 0 : place.heightHint == SWT.DEFAULT ? wanted() : place.heightHint;
    }

    void dispose() {
        lay(false);
        line.dispose();
    }
}
