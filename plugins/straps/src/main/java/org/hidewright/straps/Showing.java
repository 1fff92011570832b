package org.hidewright.straps;

import java.util.List;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Stack;

/** Which faces of a section can be seen on the folded strap. */
enum Showing {
    GRAIN,
    FLESH,
    BOTH,
    NEITHER;

    /** Less than this much of a face is no more than an edge. */
    private static final double SEEN_MM = 1;

    boolean flesh() {
        return this == FLESH || this == BOTH;
    }

    /** A straight section shows what nothing lies on; a bend shows its outside unless another bend goes round it. */
    static Showing of(ReadSection section, List<ReadSection> all, FoldedStrap strap, Stack stack) {
        if (section.fold().isPresent()) {
            boolean covered = all.stream().anyMatch(other -> goesRound(other, section.id()));
            Face outside = section.fold().get().outside();
            return covered ? NEITHER : outside == Face.GRAIN ? GRAIN : FLESH;
        }
        PlacedPiece piece = strap.piece(section.id()).orElseThrow();
        double seen = Math.min(SEEN_MM, piece.outsideLength() / 2);
        boolean grain = stack.openMm(piece, Face.GRAIN) >= seen;
        boolean flesh = stack.openMm(piece, Face.FLESH) >= seen;
        return grain ? (flesh ? BOTH : GRAIN) : flesh ? FLESH : NEITHER;
    }

    private static boolean goesRound(ReadSection section, String id) {
        return section.asked() instanceof Section.Bend bend
                && bend.core() instanceof Core.AroundBend around
                && around.bend().equals(id);
    }
}
