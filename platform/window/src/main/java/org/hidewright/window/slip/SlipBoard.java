package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SlipFace;

/** All slips of a project, side by side. */
public final class SlipBoard extends ScrolledComposite {
    private static final int LEAST_WIDTH = 290;
    private static final int GAP = 10;

    private final Inks inks;
    private final OpenProject project;
    private final Composite board;
    private final Map<String, SlipCard> cards = new LinkedHashMap<>();

    public SlipBoard(Composite parent, Inks inks, OpenProject project) {
        super(parent, SWT.V_SCROLL);
        this.inks = inks;
        this.project = project;
        inks.dress(this, inks.palette().ink(), inks.palette().board());
        board = inks.dress(
                new Composite(this, SWT.NONE),
                inks.palette().ink(),
                inks.palette().board());
        setContent(board);
        setExpandHorizontal(true);
        setExpandVertical(true);
        addListener(SWT.Resize, event -> arrange());
    }

    /** Shows the slips as they are now. */
    public void show(ProjectFace face) {
        boolean taller = false;
        List<String> ids = face.slips().stream().map(SlipFace::id).toList();
        if (!ids.equals(new ArrayList<>(cards.keySet()))) {
            cards.values().forEach(SlipCard::dispose);
            cards.clear();
            taller = true;
        }
        for (SlipFace slip : face.slips()) {
            SlipCard card = cards.get(slip.id());
            if (card == null) {
                cards.put(slip.id(), new SlipCard(board, inks, project, slip));
            } else {
                taller |= card.show(slip);
            }
        }
        if (taller) {
            arrange();
        }
    }

    private void arrange() {
        int across = getClientArea().width;
        int count = Columns.count(across, LEAST_WIDTH, GAP);
        int width = Columns.width(across, count, GAP);
        List<Integer> heights = new ArrayList<>();
        for (SlipCard card : cards.values()) {
            heights.add(card.computeSize(width, SWT.DEFAULT, true).y);
        }
        List<Columns.Spot> spots = Columns.spots(heights, count, width, GAP);
        int bottom = 0;
        int i = 0;
        for (SlipCard card : cards.values()) {
            card.setBounds(spots.get(i).x(), spots.get(i).y(), width, heights.get(i));
            card.layout(true, true);
            bottom = Math.max(bottom, spots.get(i).y() + heights.get(i));
            i++;
        }
        setMinSize(across, bottom + GAP);
        getVerticalBar().setIncrement(LEAST_WIDTH / 6);
    }

    /** The cards in the order of the project. */
    public List<SlipCard> cards() {
        return List.copyOf(cards.values());
    }

    /** Forgets what answers were before. */
    public void settle() {
        cards.values().forEach(SlipCard::settle);
    }
}
