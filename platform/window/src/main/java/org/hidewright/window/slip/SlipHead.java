package org.hidewright.window.slip;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.hidewright.core.work.WorkedSlip.State;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Palette;
import org.hidewright.window.look.Words;
import org.hidewright.window.model.AnswerFace;
import org.hidewright.window.model.SlipFace;

/** The head of a slip: how it stands as a sign, its title, what leads while it is folded, and its menu. */
final class SlipHead {
    private static final double LARGE = 1.1;
    private static final int LONGEST_LEAD = 14;
    /** What stands beside title and lead: the sign, the menu and what is between, in heights of a line of text. */
    private static final int AROUND_LEAD = 4;

    private final Inks inks;
    private final Composite head;
    private final Label sign;
    private final Label title;
    private final Label lead;
    /** The answer that leads, for a folded slip; empty for another. */
    private String leads = "";

    SlipHead(Composite parent, Desk desk, SlipFace face) {
        String id = face.id();
        inks = desk.inks();
        Palette palette = inks.palette();
        head = inks.dress(new Composite(parent, SWT.NONE), palette.ink(), palette.paper());
        head.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        head.setLayout(layout);
        sign = inks.dress(new Label(head, SWT.NONE), palette.ink(), palette.paper());
        title = inks.dress(new Label(head, SWT.WRAP), palette.ink(), palette.paper());
        title.setFont(inks.font(LARGE, true));
        title.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        ((GridData) title.getLayoutData()).widthHint = 100;
        title.setToolTipText(face.purpose());
        title.setData("equal", id + "/fold"); // what the keyboard has for it
        title.addListener(
                SWT.MouseUp, event -> desk.round().fold(id, !desk.round().isFolded(id)));
        lead = inks.dress(new Label(head, SWT.RIGHT), palette.ink(), palette.paper());
        lead.setFont(inks.font(LARGE, true));
        lead.setLayoutData(new GridData());
        new SlipMenu(head, desk, id);
        head.addListener(SWT.Resize, event -> lead());
    }

    Control control() {
        return head;
    }

    /** Shows how a slip stands; whether it has another title than before. */
    boolean show(SlipFace face, boolean folded) {
        if (!sign.getText().equals(sign(face))) {
            sign.setText(sign(face));
            sign.setToolTipText(face.stateText());
            boolean well = face.state() == State.WORKED && face.urgent() == 0;
            sign.setForeground(
                    inks.color(well ? inks.palette().accent() : inks.palette().warning()));
        }
        boolean renamed = !title.getText().equals(face.title());
        if (renamed) {
            title.setText(face.title());
            ((GridData) title.getLayoutData()).minimumWidth = Words.longest(title);
        }
        String leading = folded ? leading(face) : "";
        if (!leading.equals(leads)) {
            leads = leading;
            lead();
        }
        return renamed;
    }

    private static String leading(SlipFace face) {
        return face.answers().stream()
                .filter(AnswerFace::lead)
                .findFirst()
                .map(AnswerFace::inline)
                .filter(text -> text.length() <= LONGEST_LEAD) // or the title had no room
                .orElse("");
    }

    /** What leads stands beside the title where that leaves room for both. */
    private void lead() {
        String before = lead.getText();
        lead.setText(leads);
        int wide = lead.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        ((GridData) lead.getLayoutData()).widthHint = wide;
        int others = title.computeSize(Words.longest(title), SWT.DEFAULT).x + AROUND_LEAD * inks.em();
        if (head.getSize().x > 0 && wide + others > head.getSize().x) {
            lead.setText("");
            ((GridData) lead.getLayoutData()).widthHint = 0;
        }
        if (!lead.getText().equals(before)) {
            head.layout();
        }
    }

    /** Told apart by shape as well as by colour. */
    private static String sign(SlipFace face) {
        return switch (face.state()) {
            case WORKED -> face.urgent() == 0 ? "●" : "◆";
            case REFUSED -> "▲";
            case WAITING -> "◔";
            case DORMANT -> "◌";
            case BROKEN -> "✕";
        };
    }
}
