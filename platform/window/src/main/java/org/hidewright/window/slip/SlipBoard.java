package org.hidewright.window.slip;

import java.util.ArrayList;
import java.util.HashMap;
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
    /** As they were measured for the width of a column; measuring is what takes time. */
    private final Map<SlipCard, Integer> heights = new HashMap<>();

    private int measuredFor;

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
        boolean moved = false;
        List<String> ids = face.slips().stream().map(SlipFace::id).toList();
        if (!ids.equals(new ArrayList<>(cards.keySet()))) {
            cards.values().forEach(SlipCard::dispose);
            cards.clear();
            heights.clear();
        }
        for (SlipFace slip : face.slips()) {
            SlipCard card = cards.get(slip.id());
            if (card == null) {
                cards.put(slip.id(), new SlipCard(board, inks, project, slip));
                moved = true;
            } else if (card.show(slip)) {
                heights.remove(card);
                moved = true;
            }
        }
        if (moved) {
            arrange();
        }
    }

    private void arrange() {
        int across = getClientArea().width;
        int count = Columns.count(across, LEAST_WIDTH, GAP);
        int width = Columns.width(across, count, GAP);
        if (width != measuredFor) {
            heights.clear();
            measuredFor = width;
        }
        List<SlipCard> all = cards();
        List<SlipCard> changed =
                all.stream().filter(card -> !heights.containsKey(card)).toList();
        changed.forEach(card -> heights.put(card, card.computeSize(width, SWT.DEFAULT, true).y));
        List<Columns.Spot> spots = Columns.spots(all.stream().map(heights::get).toList(), count, width, GAP);
        int bottom = 0;
        for (int i = 0; i < all.size(); i++) {
            int height = heights.get(all.get(i));
            all.get(i).setBounds(spots.get(i).x(), spots.get(i).y(), width, height);
            bottom = Math.max(bottom, spots.get(i).y() + height);
        }
        changed.forEach(card -> card.layout(false, true));
        setMinSize(across, bottom + GAP);
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
