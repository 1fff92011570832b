package org.hidewright.window.slip;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Steady;
import org.hidewright.window.look.WheelMoves;
import org.hidewright.window.model.SlipFace;

/** All slips of a project, side by side. */
public final class SlipBoard extends ScrolledComposite {
    /** In heights of a line of text. */
    private static final int LEAST_WIDTH = 16;

    private static final int GAP = 10;

    private final Desk desk;
    private final Composite board;
    private final Map<String, SlipCard> cards = new LinkedHashMap<>();
    /** As they were measured for the width of a column; measuring is what takes time. */
    private final Map<SlipCard, Integer> heights = new HashMap<>();

    private int measuredFor;

    public SlipBoard(Composite parent, Desk desk) {
        super(parent, SWT.V_SCROLL);
        this.desk = desk;
        Inks inks = desk.inks();
        inks.dress(this, inks.palette().ink(), inks.palette().board());
        board = inks.dress(
                new Composite(this, SWT.NONE),
                inks.palette().ink(),
                inks.palette().board());
        setContent(board);
        setShowFocusedControl(true);
        setExpandHorizontal(true);
        setExpandVertical(true);
        addListener(SWT.Resize, event -> arrange());
        WheelMoves.on(this, inks);
    }

    /** Shows slips as they are now. */
    public void show(List<SlipFace> faces) {
        boolean moved = false;
        List<String> ids = faces.stream().map(SlipFace::id).toList();
        moved |= cards.keySet().removeIf(id -> !ids.contains(id) && gone(cards.get(id)));
        moved |= !ids.equals(List.copyOf(cards.keySet()));
        for (SlipFace slip : faces) {
            SlipCard card = cards.remove(slip.id());
            if (card == null) {
                card = new SlipCard(board, desk, slip, () -> measureAgain(slip.id()));
            } else if (card.show(slip)) {
                heights.remove(card);
                moved = true;
            }
            cards.put(slip.id(), card); // in the order of the project
        }
        if (moved) {
            arrange();
        }
    }

    private boolean gone(SlipCard card) {
        heights.remove(card);
        card.dispose();
        return true;
    }

    private void measureAgain(String slip) {
        SlipCard card = cards.get(slip);
        if (card != null) {
            heights.remove(card);
            arrange();
        }
    }

    /** Brings a slip into view. */
    public void reveal(String slip) {
        SlipCard card = cards.get(slip);
        if (card != null) {
            setOrigin(0, Math.max(0, card.getLocation().y - GAP));
            card.setFocus();
        }
    }

    private void arrange() {
        Steady.keep(this, this::lay);
    }

    private void lay(int free, int least) {
        int across = getClientArea().width;
        int count = Columns.count(across, LEAST_WIDTH * desk.inks().em(), GAP);
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
            place(
                    all.get(i),
                    new Rectangle(spots.get(i).x(), free + spots.get(i).y(), width, height));
            bottom = Math.max(bottom, free + spots.get(i).y() + height);
        }
        changed.forEach(card -> card.layout(false, true));
        int high = Math.max(bottom + GAP, least);
        if (getMinHeight() != high || getMinWidth() != across) {
            setMinSize(across, high);
        }
    }

    /** Only what moves is moved: the toolkit lays out anew whatever it is told of. */
    private static void place(SlipCard card, Rectangle place) {
        if (!card.getBounds().equals(place)) {
            card.setBounds(place);
        }
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
