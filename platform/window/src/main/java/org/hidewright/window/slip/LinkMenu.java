package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.project.Link;
import org.hidewright.core.work.SuitableRows.Fit;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Submenus;
import org.hidewright.window.model.LinkChoices;
import org.hidewright.window.model.QuestionFace;
import org.hidewright.window.model.QuestionFace.Origin;
import org.hidewright.window.model.SlipFace;

/**
 * Links of a question: by its menu, which a key opens too, or by dropping an answer on it. The menu lists what fits when it is
 * opened: answers of other slips, and rows of the workshop.
 */
final class LinkMenu {
    private static final char KEY = 'l';
    /** So many answers of one slip still stand in the menu itself. */
    private static final int FEW = 6;

    private final Desk desk;
    private final String slip;
    private final Control control;
    private final Menu menu;
    private final Submenus submenus;
    private QuestionFace face;

    LinkMenu(Desk desk, String slip, Control control, QuestionFace face) {
        this.desk = desk;
        this.slip = slip;
        this.control = control;
        this.face = face;
        menu = new Menu(control);
        menu.addListener(SWT.Show, event -> fill());
        control.setMenu(menu);
        submenus = Submenus.of(control);
        control.addListener(SWT.Dispose, event -> submenus.clear(menu));
        control.addListener(SWT.KeyDown, event -> {
            if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == KEY) {
                event.doit = false;
                fill();
                menu.setVisible(true);
            }
        });
        DropTarget target = new DropTarget(control, DND.DROP_LINK | DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {TextTransfer.getInstance()});
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = fits() ? DND.DROP_LINK : DND.DROP_NONE;
            }

            @Override
            public void dragOperationChanged(DropTargetEvent event) {
                dragEnter(event);
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (fits()) {
                    link(DraggedAnswer.on(control.getDisplay()).orElseThrow());
                }
            }
        });
        control.setData("drop", target);
    }

    void show(QuestionFace other) {
        face = other;
    }

    private boolean fits() {
        return DraggedAnswer.on(control.getDisplay())
                .filter(desk.project().choices().links(slip, face)::contains)
                .isPresent();
    }

    private void link(Link to) {
        desk.project().link(slip, face.path(), to);
    }

    /** What can be done with the question now. */
    private void fill() {
        submenus.clear(menu);
        Map<String, List<Link>> bySlip = new LinkedHashMap<>();
        LinkChoices choices = desk.project().choices();
        choices.links(slip, face)
                .forEach(link -> bySlip.computeIfAbsent(link.slip(), any -> new ArrayList<>())
                        .add(link));
        if (face.origin() == Origin.LINKED || face.origin() == Origin.TYPED || face.origin() == Origin.WORKSHOP) {
            MenuItem clear = item(menu, SWT.PUSH, desk.texts().text("question.clear"), "clear");
            clear.addListener(SWT.Selection, event -> desk.project().clear(slip, face.path()));
        }
        List<Fit> rows = choices.rows(face);
        offer(rows, "row", desk.texts().text("question.take-row"), face.path());
        List<Fit> whole = choices.wholeRows(slip, face);
        face.path()
                .group()
                .ifPresent(group -> offer(whole, "whole-row", desk.texts().text("question.take-whole-row"), group));
        if (bySlip.isEmpty() && rows.isEmpty()) {
            MenuItem none = item(menu, SWT.PUSH, desk.texts().text("question.no-link.help"), "none");
            none.setEnabled(false);
        }
        bySlip.forEach((from, links) -> {
            Menu in = links.size() <= FEW && bySlip.size() == 1 ? menu : submenu(from);
            links.forEach(link -> {
                MenuItem item = item(in, SWT.PUSH, choices.told(link), link.toString());
                item.addListener(SWT.Selection, event -> link(link));
            });
            Mnemonics.give(in);
        });
        Mnemonics.give(menu);
    }

    /** Rows of the workshop that can be taken at a place. */
    private void offer(List<Fit> rows, String id, String title, AnswerPath at) {
        if (rows.isEmpty()) {
            return;
        }
        Menu in = submenus.under(item(menu, SWT.CASCADE, title, id + "s"));
        rows.forEach(row -> item(
                        in,
                        SWT.PUSH,
                        row.name() + " · " + row.text(),
                        id + "." + row.link().row())
                .addListener(SWT.Selection, event -> desk.round().take(slip, at, row.link())));
        Mnemonics.give(in);
    }

    private Menu submenu(String from) {
        String title = desk.project()
                .face()
                .flatMap(shown -> shown.slip(from))
                .map(SlipFace::title)
                .orElse(from);
        return submenus.under(item(menu, SWT.CASCADE, desk.texts().text("question.link-from", title), "from." + from));
    }

    private static MenuItem item(Menu in, int style, String text, String id) {
        MenuItem item = new MenuItem(in, style);
        item.setText(text.replace("&", "&&"));
        item.setData("id", id);
        return item;
    }
}
