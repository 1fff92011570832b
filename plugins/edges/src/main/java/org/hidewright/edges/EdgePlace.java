package org.hidewright.edges;

/** Where an edge lies in the piece, and with it when it can be finished. */
public enum EdgePlace {
    /** Nothing reaches into a pocket once it is sewn down. */
    POCKET_MOUTH(EdgeGroup.BEFORE_GLUE_UP),
    SLOT(EdgeGroup.BEFORE_GLUE_UP),
    KEEPER(EdgeGroup.BEFORE_GLUE_UP),
    STRAP(EdgeGroup.BEFORE_GLUE_UP),
    /** Covered or fenced in by what is sewn on next. */
    SOON_OUT_OF_REACH(EdgeGroup.BEFORE_GLUE_UP),
    /** One layer that stays in reach: done with the sewn edges, when nobody handles the piece any more. */
    IN_REACH(EdgeGroup.FLUSH_AFTER_STITCHING),
    /** Layers that end together and are sanded to one edge. */
    SEWN_TOGETHER(EdgeGroup.FLUSH_AFTER_STITCHING),
    /** Under another part for good. */
    UNDER(EdgeGroup.BURIED);

    private final EdgeGroup group;

    EdgePlace(EdgeGroup group) {
        this.group = group;
    }

    EdgeGroup group() {
        return group;
    }

    /** Whether something is glued or sewn beside it, so that wax must stay off the margin. */
    boolean besideGlue() {
        return this != SLOT && this != IN_REACH;
    }
}
