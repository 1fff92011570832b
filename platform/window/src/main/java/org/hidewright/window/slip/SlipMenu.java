package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.window.model.SlipFace;

/** What can be done with a whole slip. */
final class SlipMenu {
    private final Desk desk;
    private final String slip;
    private final Link opens;
    private final Menu menu;

    SlipMenu(Composite parent, Desk desk, String slip) {
        this.desk = desk;
        this.slip = slip;
        opens = desk.inks().words(parent, "⋯", () -> {});
        opens.setData("id", slip + "/menu");
        opens.setToolTipText(desk.texts().text("slip.menu.help"));
        menu = new Menu(opens);
        opens.setMenu(menu);
        opens.addListener(SWT.Selection, event -> menu.setVisible(true));
        item("fold", () -> desk.round().fold(slip, !desk.round().isFolded(slip)));
        item("draw", () -> desk.round().draw(slip));
        item("what-if", () -> desk.round().tryOut(slip));
        item("compare", () -> desk.round().compare(slip));
        item("copy", this::copy);
        item("up", () -> desk.project().moveSlip(slip, -1));
        item("down", () -> desk.project().moveSlip(slip, 1));
        item("title", this::title);
        item("remove", () -> desk.project().removeSlip(slip));
    }

    private void item(String key, Runnable does) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(desk.texts().text("slip." + key));
        item.setData("id", slip + "/" + key);
        item.addListener(SWT.Selection, event -> does.run());
    }

    private void copy() {
        String title = desk.project()
                .face()
                .flatMap(face -> face.slip(slip))
                .map(SlipFace::title)
                .orElse(slip);
        desk.project().copySlip(slip, desk.texts().text("slip.copy-of", title));
    }

    private void title() {
        new TitleField(opens, desk, slip).open();
    }
}
