package org.hidewright.window.piece;

import java.util.Optional;
import java.util.function.DoubleConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.measure.Typed;
import org.hidewright.api.measure.TypedText;
import org.hidewright.api.measure.Understood;
import org.hidewright.api.measure.Units;
import org.hidewright.window.look.Hint;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.words.WindowTexts;

/**
 * Measures the screen: a bar of known pixels is held to a ruler, and what the ruler says is typed. Systems seldom know how large
 * a screen really is.
 */
public final class ScreenPage extends Composite {
    private static final int BAR = 400;
    private static final int TICK = 14;
    /** In heights of a line of text. */
    private static final int LENGTH_WIDTH = 9;

    private static final double LEAST_MM = 20;
    private static final double MOST_MM = 1000;

    private final WindowTexts texts;
    private final Text typed;
    private final Label told;
    private final DoubleConsumer measured;

    /**
     * A page to measure at.
     *
     * @param leave called when the maker has seen enough
     * @param measured hears how many pixels a millimetre has
     */
    public ScreenPage(Composite parent, Inks inks, WindowTexts texts, Runnable leave, DoubleConsumer measured) {
        super(parent, SWT.NONE);
        this.texts = texts;
        this.measured = measured;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 12;
        layout.verticalSpacing = 12;
        setLayout(layout);
        inks.words(this, texts.text("page.back"), leave).setData("id", "screen.back");
        Label how = line(inks, texts.text("screen.how.help"));
        Canvas bar = inks.dress(
                new Canvas(this, SWT.NONE), inks.palette().ink(), inks.palette().paper());
        GridData room = new GridData(SWT.LEFT, SWT.TOP, false, false);
        room.widthHint = BAR + 2;
        room.heightHint = 2 * TICK;
        bar.setLayoutData(room);
        bar.setData("wordless", true);
        bar.addPaintListener(event -> paint(event.gc, inks));
        typed = new Text(this, SWT.SINGLE | SWT.BORDER);
        Hint.on(typed, inks);
        Hint.say(typed, inks, "100 mm");
        Spoken.labelled(typed, how);
        Spoken.tell(typed);
        typed.setData("id", "screen.length");
        typed.setLayoutData(new GridData(LENGTH_WIDTH * inks.em(), SWT.DEFAULT));
        typed.addListener(SWT.DefaultSelection, event -> keep());
        inks.words(this, texts.text("screen.keep"), this::keep).setData("id", "screen.keep");
        told = line(inks, "");
        told.setData("id", "screen.told");
    }

    private Label line(Inks inks, String text) {
        Label label = inks.dress(
                new Label(this, SWT.WRAP), inks.palette().ink(), inks.palette().paper());
        label.setText(text);
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = BAR;
        label.setLayoutData(data);
        return label;
    }

    private static void paint(GC gc, Inks inks) {
        gc.setForeground(inks.color(inks.palette().ink()));
        gc.drawLine(0, TICK, BAR, TICK);
        gc.drawLine(0, 0, 0, 2 * TICK);
        gc.drawLine(BAR, 0, BAR, 2 * TICK);
    }

    private void keep() {
        double mm = TypedText.quantity(typed.getText(), Dimension.LENGTH, Optional.of(Units.MM))
                        instanceof Understood<Typed> understood
                ? understood.value().range().nominal()
                : 0;
        if (mm >= LEAST_MM && mm <= MOST_MM) {
            measured.accept(BAR / mm);
            told.setText(texts.text("screen.kept.help"));
        } else {
            told.setText(texts.text("screen.no-length.help", typed.getText()));
        }
        layout();
    }
}
