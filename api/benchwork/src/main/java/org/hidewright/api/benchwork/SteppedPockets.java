package org.hidewright.api.benchwork;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Seam;

/**
 * Pockets for cards in steps, sewn on a panel. The one in front is whole; those behind it hang from tabs and are narrower below
 * them, and each is sewn down along a bottom of its own, a step above the next: so neither sides nor bottoms pile up.
 */
public final class SteppedPockets {
    /** From a row to the edge it runs along: common practice. */
    public static final double MARGIN_MM = 3.5;

    /** How much narrower than the seams a pocket is below its tabs, on either side. */
    private static final double CLEAR_MM = 1.5;

    private final double width;
    private final double depth;
    private final double bottom;
    private final double step;
    private final int count;

    /**
     * The size of a stack of pockets.
     *
     * @param count at least 1
     * @param cardWidth across the mouth
     * @param cardHeight the way it goes in
     * @param cards thickness of the cards in one pocket
     * @param step how much of each card shows above the pocket in front of it: less than half of the card
     * @param ease beside the cards
     * @throws IllegalArgumentException if there is no pocket, or more than half of a card shows
     */
    public SteppedPockets(int count, double cardWidth, double cardHeight, double cards, double step, double ease) {
        if (count < 1 || 2 * step > cardHeight) {
            throw new IllegalArgumentException(count + " pockets with a step of " + step);
        }
        this.count = count;
        this.step = step;
        this.width = Allowances.flatPanels(cardWidth, cards, ease) + 2 * MARGIN_MM;
        this.bottom = MARGIN_MM + cards / 2;
        this.depth = cardHeight - step;
    }

    /** Of each pocket, and of the stack. */
    public double width() {
        return width;
    }

    /** From the lower edge of the pocket in front to the top of the last card. */
    public double height() {
        return bottom + depth + count * step;
    }

    /** The least step in which a tab has two stitches on either side. */
    public static double leastStep(double pitch) {
        return 2 * Pocket.MOUTH_MM + pitch;
    }

    /**
     * Draws the pockets and sews them on.
     *
     * @param id begins the ids of all of them
     * @param name begins their names
     * @param at lower left corner of the pocket in front, on the panel
     * @return the pieces, the one at the back first, and their seams
     */
    public Fastened on(Piece panel, String id, String name, Point at, double leather, double pitch) throws NoRoom {
        List<Piece> pieces = new ArrayList<>();
        List<Seam> seams = new ArrayList<>();
        for (int nth = 1; nth < count; nth++) {
            Piece pocket = Piece.of(id + "-" + nth, name + " " + nth + " from the back", tabbed(), leather)
                    .backbone(0);
            double foot = at.y() + bottom + (count - nth) * step;
            Motion laid = Motion.shift(at.x(), foot - MARGIN_MM);
            double top = depth + MARGIN_MM;
            seams.add(sewn(
                    panel,
                    pocket,
                    "left",
                    Lines.straight(MARGIN_MM, top - Pocket.MOUTH_MM, MARGIN_MM, top - step + Pocket.MOUTH_MM),
                    laid,
                    pitch));
            seams.add(sewn(
                    panel,
                    pocket,
                    "right",
                    Lines.straight(
                            width - MARGIN_MM, top - Pocket.MOUTH_MM, width - MARGIN_MM, top - step + Pocket.MOUTH_MM),
                    laid,
                    pitch));
            double side = MARGIN_MM + CLEAR_MM + 3;
            seams.add(sewn(
                    panel, pocket, "bottom", Lines.straight(side, MARGIN_MM, width - side, MARGIN_MM), laid, pitch));
            pieces.add(pocket);
        }
        double height = bottom + depth;
        Piece front = Piece.of(id + "-front", name + " in front", Panels.upright(width, height, 0), leather)
                .backbone(0);
        Curve round = front.inside(Pocket.MOUTH_MM, Panels.seam(width, height, 0) - Pocket.MOUTH_MM, MARGIN_MM);
        seams.add(sewn(panel, front, "rim", round, Motion.shift(at.x(), at.y()), pitch));
        pieces.add(front);
        return Fastened.of(seams, pieces);
    }

    private static Seam sewn(Piece panel, Piece pocket, String row, Curve line, Motion laid, double pitch)
            throws NoRoom {
        StitchRow over = pocket.stitches(row, line, pitch);
        StitchRow under = panel.stitchedThrough(pocket.id() + "-" + row, over, laid);
        return Seam.of(pocket.id() + "-" + row, List.<OnPart>of(over.on(), under.on()));
    }

    /** A tab as wide as the stack and one step high, the pocket below it narrower than the seams. */
    private Curve tabbed() {
        double top = depth + MARGIN_MM;
        double in = MARGIN_MM + CLEAR_MM;
        return Outlines.polygon(
                Point.of(0, top),
                Point.of(0, top - step),
                Point.of(in, top - step),
                Point.of(in, 0),
                Point.of(width - in, 0),
                Point.of(width - in, top - step),
                Point.of(width, top - step),
                Point.of(width, top));
    }
}
