package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Seam;

/** A piece laid on another and sewn to it along a row: a pocket by its sides and bottom, a patch all round. */
public final class Pocket {
    /** From the mouth to the first hole: no nearer than to any edge (common practice). */
    public static final double MOUTH_MM = 2.5;

    private final Piece panel;
    private final Piece pocket;
    private final Motion laid;

    private Pocket(Piece panel, Piece pocket, Motion laid) {
        this.panel = panel;
        this.pocket = pocket;
        this.laid = laid;
    }

    /**
     * A pocket on a panel; where it lies is marked on the panel.
     *
     * @param laid how it is moved from where it is drawn to where it lies
     * @throws NoRoom if it does not lie wholly on the panel
     */
    public static Pocket on(Piece panel, Piece pocket, Motion laid) throws NoRoom {
        if (!pocket.outline().segments().stream()
                .map(segment -> laid.apply(segment.start()))
                .allMatch(place ->
                        panel.outline().surrounds(place) || panel.outline().distanceTo(place) < Flush.MM)) {
            throw new NoRoom(panel.id(), pocket.id());
        }
        return new Pocket(panel, pocket, laid);
    }

    /** Marks where its mouth comes, from one length along its outline to another, so that it is glued straight. */
    public Pocket marked(double from, double to) {
        panel.mark(pocket.outline().between(from, to).moved(laid));
        return this;
    }

    /**
     * Sewn along a stretch of its outline, from mouth to mouth, at a margin: the same holes go through both.
     *
     * @param seam id of the seam, and of the row on both pieces
     */
    public Seam sewn(String seam, double from, double to, double margin, double pitch) throws NoRoom {
        StitchRow row = pocket.stitches(seam, pocket.inside(from + MOUTH_MM, to - MOUTH_MM, margin), pitch);
        StitchRow under = panel.stitchedThrough(pocket.id() + "-" + seam, row, laid);
        return Seam.of(pocket.id() + "-" + seam, List.<OnPart>of(row.on(), under.on()));
    }
}
