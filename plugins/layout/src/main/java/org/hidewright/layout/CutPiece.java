package org.hidewright.layout;

import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.Part;
import org.hidewright.layout.task.Piece;

/**
 * One piece of leather to be cut.
 *
 * @param id its name on the layout
 * @param part the part it becomes
 * @param toMiddle from the drawing of the part to where its middle is the origin, turned over where the piece is
 * @param outline as it is cut, about its middle
 * @param exact the same for the check
 * @param grown with half the gap round it and a little more, for the search
 * @param tight with just half the gap round it, at quarter turns where it may lie so, to be laid edge to edge
 */
record CutPiece(String id, Part part, Motion toMiddle, Curve outline, Piece exact, Piece grown, Piece tight) {
    /** Square millimetres. */
    double area() {
        return Math.abs(outline.area());
    }
}
