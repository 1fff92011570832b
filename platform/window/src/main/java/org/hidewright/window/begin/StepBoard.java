package org.hidewright.window.begin;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Steady;
import org.hidewright.window.look.WheelMoves;
import org.hidewright.window.model.ProjectFace;

/** Where one step is asked: its name, what it is about, and its questions; what does not fit is rolled to. */
final class StepBoard extends ScrolledComposite {
    private static final double HEAD = 1.25;

    private final Inks inks;
    private Composite holder;
    private List<StepPane> panes = List.of();

    StepBoard(Composite parent, Inks inks) {
        super(parent, SWT.V_SCROLL);
        this.inks = inks;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        setExpandHorizontal(true);
        setExpandVertical(true);
        setShowFocusedControl(true);
        setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        addListener(SWT.Resize, this::resized);
        WheelMoves.on(this, inks);
    }

    private void resized(Event event) {
        if (event.widget == this) {
            refit();
        }
    }

    /** Shows another step. */
    void show(String name, String about, Function<Composite, List<StepPane>> fill) {
        if (holder != null) {
            holder.dispose();
        }
        holder = inks.dress(
                new Composite(this, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 2;
        layout.verticalSpacing = 8;
        holder.setLayout(layout);
        line(name, inks.palette().ink()).setFont(inks.font(HEAD, true));
        line(about, inks.palette().quiet());
        panes = fill.apply(holder);
        setContent(holder);
        refit();
    }

    private Label line(String text, int ink) {
        Label label =
                inks.dress(new Label(holder, SWT.WRAP), ink, inks.palette().paper());
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = 200;
        label.setLayoutData(data);
        label.setText(text);
        return label;
    }

    /** Shows how its questions stand. */
    void show(ProjectFace face) {
        boolean other = false;
        for (StepPane pane : panes) {
            other |= pane.show(face);
        }
        if (other) {
            refit();
        }
    }

    /** Takes up that something in it has become higher or lower. */
    void refit() {
        if (holder == null || holder.isDisposed()) {
            return;
        }
        Steady.keep(this, (free, least) -> {
            ((GridLayout) holder.getLayout()).marginTop = free;
            Rectangle area = getClientArea();
            Point size = holder.computeSize(Math.max(1, area.width), SWT.DEFAULT);
            setMinSize(size.x, Math.max(size.y, least));
            holder.layout(true, true);
        });
    }

    /** Goes to what is asked first. */
    void toFirst() {
        first(holder).ifPresent(Control::setFocus);
    }

    private static Optional<Control> first(Composite in) {
        for (Control child : in.getChildren()) {
            Optional<Control> found = isEditor(child)
                    ? Optional.of(child).filter(Control::getVisible)
                    : child instanceof Composite inside && child.getVisible() ? first(inside) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Of several that exclude each other, the one that is chosen. */
    private static boolean isEditor(Control control) {
        if (control instanceof Button button && (button.getStyle() & SWT.RADIO) != 0) {
            return button.getSelection();
        }
        return control instanceof Text
                || control instanceof Combo
                || control instanceof Button
                || control instanceof org.eclipse.swt.widgets.List;
    }
}
