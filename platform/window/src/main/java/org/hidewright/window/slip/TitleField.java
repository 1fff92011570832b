package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.hidewright.window.look.Spoken;

/** A field over a slip for its title; what is typed shows on the slip at once. */
final class TitleField {
    private static final int WIDTH = 240;

    private final Control beside;
    private final Desk desk;
    private final String slip;

    TitleField(Control beside, Desk desk, String slip) {
        this.beside = beside;
        this.desk = desk;
        this.slip = slip;
    }

    void open() {
        Shell field = new Shell(beside.getShell(), SWT.TOOL | SWT.ON_TOP);
        field.setLayout(new FillLayout());
        Text text = new Text(field, SWT.SINGLE | SWT.BORDER);
        text.setData("id", slip + "/title-field");
        Spoken.name(text, () -> desk.texts().text("slip.title"));
        Spoken.tell(text);
        text.setText(
                desk.project().project().slip(slip).flatMap(one -> one.title()).orElse(""));
        text.selectAll();
        text.addListener(SWT.Modify, event -> desk.project().titleSlip(slip, text.getText()));
        text.addListener(SWT.DefaultSelection, event -> field.close());
        text.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.ESC) {
                field.close();
            }
        });
        field.addListener(SWT.Deactivate, event -> field.close());
        field.addListener(SWT.Dispose, event -> desk.project().settle());
        Point at = beside.toDisplay(-WIDTH, 0);
        int height = text.computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
        field.setBounds(at.x, at.y, WIDTH, height);
        field.open();
    }
}
