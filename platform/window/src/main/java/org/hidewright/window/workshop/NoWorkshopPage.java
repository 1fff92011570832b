package org.hidewright.window.workshop;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** What is shown of the workshop while there is none: how one is begun, or opened. */
public final class NoWorkshopPage extends Composite {
    private static final int MARGIN = 48;
    private static final int WIDTH = 400;

    private final Label told;

    /**
     * The page.
     *
     * @param leave goes back to what was there before
     * @param begin asks where a new one is to be, and begins it
     * @param open asks for one that is there
     */
    public NoWorkshopPage(
            Composite parent, Inks inks, WindowTexts texts, Runnable leave, Runnable begin, Runnable open) {
        super(parent, SWT.NONE);
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = MARGIN;
        layout.marginHeight = MARGIN;
        layout.verticalSpacing = 10;
        setLayout(layout);
        inks.words(this, texts.text("workshop.back"), leave).setData("id", "workshop.back");
        Label head = label(inks, inks.palette().ink());
        head.setFont(inks.font(1.8, true));
        head.setText(texts.text("workshop.none"));
        label(inks, inks.palette().ink()).setText(texts.text("workshop.none.help"));
        inks.words(this, texts.text("deed.workshop-new"), begin).setData("id", "workshop.new");
        inks.words(this, texts.text("deed.workshop-open"), open).setData("id", "workshop.open");
        told = label(inks, inks.palette().warning());
        told.setData("id", "workshop.told");
    }

    private Label label(Inks inks, int ink) {
        Label label = inks.dress(new Label(this, SWT.WRAP), ink, inks.palette().paper());
        GridData across = new GridData(SWT.FILL, SWT.TOP, true, false);
        across.widthHint = WIDTH;
        label.setLayoutData(across);
        return label;
    }

    /** Tells something on the page. */
    public void tell(String text) {
        told.setText(text);
        layout(true, true);
    }
}
