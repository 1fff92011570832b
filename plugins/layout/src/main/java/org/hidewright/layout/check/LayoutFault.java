package org.hidewright.layout.check;

/**
 * Why a layout will not do.
 *
 * @param kind what is wrong
 * @param piece the piece it is wrong with, from 0
 * @param with the other piece, or the number of the hole or zone, from 0; -1 where there is none
 */
public record LayoutFault(Kind kind, int piece, int with) {
    /** What can be wrong with a layout. */
    public enum Kind {
        /** Two pieces share leather, or come nearer than the gap. */
        OVERLAP,
        /** A piece leaves its sheet. */
        OFF_THE_SHEET,
        /** A piece lies over a hole. */
        OVER_A_HOLE,
        /** A piece lies on leather that is not good enough for it. */
        ON_POOR_LEATHER,
        /** A piece lies at an angle it may not lie at. */
        TURNED_WRONG,
        /** A piece is laid twice, or there is no such piece or sheet. */
        NO_SUCH_PLACE
    }
}
