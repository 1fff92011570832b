package org.hidewright.window.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

/** Words that do something, in rows across what they belong to. */
public final class Tools extends Composite {
    /** Room to the edge of what they stand at the head of. */
    public static final int EDGE = 12;

    private static final int SPACING = 12;

    private final Inks inks;

    public Tools(Composite parent, Inks inks) {
        super(parent, SWT.NONE);
        this.inks = inks;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.center = true;
        row.spacing = SPACING;
        row.marginLeft = 0;
        row.marginTop = 0;
        row.marginBottom = 0;
        setLayout(row);
        setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    }

    /** With room round it, at the head of what reaches from edge to edge. */
    public Tools atEdge() {
        RowLayout row = (RowLayout) getLayout();
        row.marginLeft = EDGE;
        row.marginRight = EDGE;
        row.marginTop = EDGE / 2;
        row.marginBottom = EDGE / 2;
        return this;
    }

    /** Words that do something; found by an id. */
    public Link words(String text, String id, Runnable does) {
        Link link = inks.words(this, text, does);
        link.setData("id", id);
        return link;
    }
}
