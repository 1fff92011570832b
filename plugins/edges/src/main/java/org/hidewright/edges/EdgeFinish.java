package org.hidewright.edges;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Length;

/** How an edge is meant to look. */
public sealed interface EdgeFinish
        permits EdgeFinish.Burnished, EdgeFinish.Painted, EdgeFinish.Turned, EdgeFinish.Plain {
    /** Dyed, rubbed to a shine and waxed. */
    record Burnished(
            @Asked(min = "0", max = "10", usual = "0-3", preset = "2")
            int dyeCoats,

            @Asked(min = "1", max = "10", usual = "1-3", preset = "2")
            int coats,

            @Asked(preset = "yes") boolean waxed)
            implements EdgeFinish {}

    /** Covered with edge paint, sanded between coats. */
    record Painted(
            @Asked(min = "1", max = "12", usual = "2-6", preset = "3")
            int coats) implements EdgeFinish {}

    /** Skived, folded over on to the flesh side and cemented. */
    record Turned(
            @Asked(unit = "mm", min = "3 mm", max = "60 mm", usual = "6-15 mm", preset = "8 mm")
            Length turnedBack) implements EdgeFinish {}

    /** Sanded, dyed where coats are typed, and left. */
    record Plain(
            @Asked(min = "0", max = "10", usual = "0-3", preset = "0")
            int dyeCoats) implements EdgeFinish {}

    /** Coats of dye it takes. */
    default int dyed() {
        if (this instanceof Burnished burnished) {
            return burnished.dyeCoats();
        }
        return this instanceof Plain plain ? plain.dyeCoats() : 0;
    }

    /** The last grade it is sanded with; common practice. */
    default Grit finest() {
        if (this instanceof Burnished) {
            return Grit.p(800);
        }
        return this instanceof Painted ? Grit.p(400) : Grit.p(320);
    }
}
