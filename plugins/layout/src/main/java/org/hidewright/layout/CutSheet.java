package org.hidewright.layout;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Region;
import org.hidewright.api.measure.Money;
import org.hidewright.layout.engine.InOnePiece;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Sheet;

/**
 * One panel or hide to cut from. The search and the check see it with its backbone from left to right.
 *
 * @param id its name on the layout
 * @param kind the row it is of
 * @param outline as it is drawn
 * @param flaws what is drawn on it
 * @param frame how the search and the check see it
 * @param exact for the check
 * @param shrunk with half the gap and a little more off its edges, for the search; its cost is that of the leather
 * @param tight with just half the gap off its edges, for pieces that are laid edge to edge
 * @param price of one; empty where none is given
 */
record CutSheet(
        String id,
        String kind,
        Curve outline,
        List<DrawnFlaw> flaws,
        Frame frame,
        Sheet exact,
        Sheet shrunk,
        Sheet tight,
        Optional<Money> price) {
    /** Square millimetres left in one piece beside outlines that lie on it, as the search and the check see them. */
    double inOnePiece(List<Outline> laid) {
        Sheet whole = new Sheet(id, frame.seen(Flattened.of(outline)), exact.holes(), List.of(), 0);
        return InOnePiece.area(whole, laid);
    }

    /** Square millimetres of leather, with its rim and what is poor of it; a hole is none. */
    double area() {
        return Region.of(outline).area()
                - exact.holes().stream().mapToDouble(Outline::area).sum();
    }
}
