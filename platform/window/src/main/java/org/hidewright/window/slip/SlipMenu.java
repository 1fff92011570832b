package org.hidewright.window.slip;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Submenus;
import org.hidewright.window.model.SlipFace;
import org.hidewright.window.workshop.Recordable;

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
        Spoken.name(opens, () -> desk.texts().text("slip.menu.help"));
        menu = new Menu(opens);
        opens.setMenu(menu);
        opens.addListener(SWT.Selection, event -> menu.setVisible(true));
        item("fold", () -> desk.round().fold(slip, !desk.round().isFolded(slip)));
        item("draw", () -> desk.round().draw(slip));
        item("what-if", () -> desk.round().tryOut(slip));
        item("compare", () -> desk.round().compare(slip));
        item("copy", this::copy);
        record();
        item("up", () -> desk.project().moveSlip(slip, -1));
        item("down", () -> desk.project().moveSlip(slip, 1));
        item("title", this::title);
        item("remove", () -> desk.project().removeSlip(slip));
        Mnemonics.give(menu);
    }

    private void item(String key, Runnable does) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(desk.texts().text("slip." + key));
        item.setData("id", slip + "/" + key);
        item.addListener(SWT.Selection, event -> does.run());
    }

    /** What was measured is filled in when the menu is opened, since answers come and go. */
    private void record() {
        MenuItem item = new MenuItem(menu, SWT.CASCADE);
        item.setText(desk.texts().text("slip.record"));
        Submenus submenus = Submenus.of(opens);
        Menu inside = submenus.under(item);
        menu.addListener(SWT.Show, event -> {
            submenus.clear(inside);
            List<Recordable> answers = desk.round().recordable(slip);
            answers.forEach(answer ->
                    recorded(inside, answer.label(), () -> desk.round().record(answer)));
            if (answers.isEmpty()) {
                recorded(inside, desk.texts().text("slip.record-none.help"), () -> {})
                        .setEnabled(false);
            }
            Mnemonics.give(inside);
        });
        opens.addListener(SWT.Dispose, event -> submenus.clear(menu));
    }

    private MenuItem recorded(Menu in, String text, Runnable does) {
        MenuItem item = new MenuItem(in, SWT.PUSH);
        item.setText(text.replace("&", "&&"));
        item.setData("id", slip + "/recorded");
        item.addListener(SWT.Selection, event -> does.run());
        return item;
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
