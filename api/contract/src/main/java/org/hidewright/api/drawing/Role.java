package org.hidewright.api.drawing;

/** What a line means to the maker; who draws it decides how that looks. More may be added, so keep a default branch. */
public enum Role {
    /** Outer edge to cut. */
    CUT,
    /** Where the edge is once the part is trimmed; leather is left standing outside it now. */
    FINISHED_EDGE,
    /** Edge to cut inside a part: a slot, a window, a punched hole. */
    INNER_CUT,
    /** Scratched or pricked, not cut through: a place for another part, a centre, a notch to aim at. */
    MARK,
    /** Line of stitches. */
    STITCH,
    /** A hole for the thread on such a line: pricked, pierced or cut. */
    STITCH_HOLE,
    /** Line to fold along. */
    FOLD,
    /** Direction of least stretch, or the backbone. */
    DIRECTION,
    /** Explains; leaves no trace on the leather. */
    NOTE,
    /** Leather cut through, seen from the side: a closed path, filled lightly. */
    SECTION,
    /** The grain face of leather seen from the side. */
    GRAIN,
    /** The flesh face of leather seen from the side. */
    FLESH,
    /** A bar, ring, buckle or post. */
    HARDWARE,
    /** Edge of the leather that is cut from: it is there already. */
    SHEET
}
