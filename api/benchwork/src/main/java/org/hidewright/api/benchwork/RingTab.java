package org.hidewright.api.benchwork;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Seam;

/** A short strip folded round the straight side of a ring, or the bar of a buckle, and sewn to a panel with both legs, in a box of stitches. */
public final class RingTab {
    /** Room between the ring and the first stitch, along the leg: common practice. */
    public static final double NECK_MM = 5;

    /** Leather beside the slot of a prong: from memory. */
    private static final double BESIDE_SLOT_MM = 3;

    private final Piece strip;
    private final double leg;
    private final double turn;

    private RingTab(Piece strip, double leg, double turn) {
        this.strip = strip;
        this.leg = leg;
        this.turn = turn;
    }

    /**
     * A tab; its fold is half way along it, and it is drawn along the x axis.
     *
     * @param width of the strip: at most the inside of the ring less 0.5 mm
     * @param leg from the ring's wire to the end of the strip
     * @param wire thickness of the ring's wire
     * @throws IllegalArgumentException if the leg is shorter than the neck
     */
    public static RingTab of(String id, String name, double width, double leg, double wire, double leather)
            throws NoRoom {
        if (leg <= NECK_MM) {
            throw new IllegalArgumentException("a leg of " + leg + " ends before its stitches begin");
        }
        double turn = Allowances.bend(wire / 2, leather, Math.PI);
        Piece strip = Piece.of(id, name, Outlines.rectangle(Point.of(0, 0), 2 * leg + turn, width), leather);
        double middle = leg + turn / 2;
        strip.fold("turn", Point.of(middle, 0), Point.of(middle, width), wire / 2, Face.GRAIN);
        return new RingTab(strip, leg, turn);
    }

    /**
     * A tab that holds a buckle by its bar: with a slot in its fold for the prong to stand in.
     *
     * @param bar diameter of the buckle's bar
     * @param slot length of the slot, with its round ends: the base of the prong and twice the leather
     * @param prong width of the slot
     * @throws NoRoom if the slot leaves less than 3 mm of leather beside it
     */
    public static RingTab ofBuckle(
            String id, String name, double width, double leg, double bar, double leather, double slot, double prong)
            throws NoRoom {
        RingTab tab = of(id, name, width, leg, bar, leather);
        if (width < prong + 2 * BESIDE_SLOT_MM || slot <= prong) {
            throw new NoRoom(id, "prong");
        }
        Point corner = Point.of(leg + tab.turn / 2 - slot / 2, (width - prong) / 2);
        tab.strip.window("prong", Outlines.roundedRectangle(corner, slot, prong, prong / 2));
        return tab;
    }

    /** The strip that goes round the ring. */
    public Piece strip() {
        return strip;
    }

    /**
     * Sews both legs to a panel: the box is pierced through all three.
     *
     * @param onto where the ring's wire lies on the panel
     * @param direction from there to where the legs end
     */
    public Seam sewn(Piece panel, Point onto, double direction, double margin, double pitch) throws NoRoom {
        double width = strip.outline().bounds().height();
        double from = leg + turn + NECK_MM;
        double to = 2 * leg + turn - margin;
        if (to <= from || width <= 2 * margin) {
            throw new NoRoom(strip.id(), "box");
        }
        StitchRow top =
                strip.stitches("top", Outlines.rectangle(Point.of(from, margin), to - from, width - 2 * margin), pitch);
        double middle = leg + turn / 2;
        StitchRow under =
                strip.stitchedThrough("under", top, Motion.mirror(Point.of(middle, 0), Point.of(middle, width)));
        Motion laid = Motion.shift(onto.x() - leg - turn, onto.y() - width / 2).then(Motion.turn(onto, direction));
        StitchRow through = panel.stitchedThrough(strip.id() + "-box", top, laid);
        return Seam.of(strip.id() + "-box", List.of(top.on(), under.on(), through.on()));
    }
}
