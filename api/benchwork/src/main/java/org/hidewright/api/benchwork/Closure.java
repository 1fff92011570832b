package org.hidewright.api.benchwork;

import org.hidewright.api.drawing.Point;
import org.osgi.annotation.versioning.ProviderType;

/** What keeps a piece closed, as holes and slits in what lies on top and in what lies under it. */
@ProviderType
public interface Closure {
    /**
     * Cuts it.
     *
     * @param id of the fitting
     * @param name as it is to be read
     * @param top what lies on top, a flap or strap
     * @param onTop its middle there
     * @param towardsEdge direction on the top piece towards its end, which it is opened by
     * @param under what it closes on
     * @param onUnder where the same middle lies there when it is closed
     */
    Fastened fasten(String id, String name, Piece top, Point onTop, double towardsEdge, Piece under, Point onUnder)
            throws NoRoom;

    /** How far its middle must be from the end of the top piece. */
    double leastToEnd();

    /**
     * A stud on what lies under; the top has a hole for its neck and a slit towards the end, which its head passes.
     *
     * @param post hole for its screw or rivet
     * @param neck hole its neck sits in
     * @param slit length of the slit from the middle of the hole
     */
    static Closure stud(double post, double neck, double slit) {
        return new StudClosure(post, neck, slit);
    }

    /**
     * A snap: its cap and socket on top, its stud under.
     *
     * @param top hole for the post of the cap
     * @param under hole for the post of the stud
     * @param cap diameter of the cap
     */
    static Closure snap(double top, double under, double cap) {
        return new SnapClosure(top, under, cap);
    }

    /**
     * A magnet whose prongs go through two slits and are bent over a washer.
     *
     * @param apart middle to middle of its slits
     * @param slit length of one slit
     * @param body diameter of the magnet
     */
    static Closure magnet(double apart, double slit, double body) {
        return new MagnetClosure(apart, slit, body);
    }

    /**
     * A strap end that is tucked under a loop, a keeper, whose two ends are sewn down beside it.
     *
     * @param strap width of the strap end
     * @param stack thickness of what passes under the keeper
     * @param keeper width of the keeper
     * @param leather thickness of the keeper
     * @param pitch of the rows across its feet
     */
    static Closure strapAndKeeper(double strap, double stack, double keeper, double leather, double pitch) {
        return new KeeperClosure(strap, stack, keeper, leather, pitch);
    }

    /**
     * A buckle: the top is a strap end with holes for its prong, of which the middle one is reached when it is closed as
     * planned; the bar lies where the tab folds.
     *
     * @param tab what holds the buckle, {@linkplain RingTab#ofBuckle made for it}; its id and name are its own
     * @param towards direction on what lies under in which the strap end points when it is closed, and the legs of the tab lie
     * @param pitch of the box of stitches that holds the tab
     * @param holes how many, best an odd number
     * @param spacing from hole to hole, at least twice a hole
     * @param hole diameter
     * @throws IllegalArgumentException if there is no hole
     */
    static Closure buckle(RingTab tab, double towards, double pitch, int holes, double spacing, double hole) {
        return new BuckleClosure(tab, towards, pitch, holes, spacing, hole);
    }
}
