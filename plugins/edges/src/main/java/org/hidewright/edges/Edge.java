package org.hidewright.edges;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;

/** One edge of a piece, or several that are alike. */
public record Edge(
        @RowId String id,

        @Asked(unit = "mm", min = "1 mm", max = "100 m", usual = "5 mm-3 m", example = "420 mm")
        Length length,

        @Asked(unit = "mm", min = "0.2 mm", max = "60 mm", usual = "0.8-12 mm", example = "3.6 mm")
        Length thickness,

        @Asked(min = "1", max = "1000", usual = "1-20", preset = "1")
        int count,

        @Asked(example = "sewn-together") EdgePlace lies,

        @Asked(preset = "{\"burnished\":{}}") EdgeFinish finish,

        @Asked(preset = "knife") CutBy cutBy,

        @Asked(preset = "yes") boolean beveled) {

    /** A turned edge is turned before anything covers it, wherever it lies. */
    EdgeGroup group() {
        return isTurned() && lies.group() != EdgeGroup.BURIED ? EdgeGroup.BEFORE_GLUE_UP : lies.group();
    }

    Stage stage() {
        return group() == EdgeGroup.BEFORE_GLUE_UP ? Stage.BEFORE_GLUE_UP : Stage.AFTER_STITCHING;
    }

    boolean isBuried() {
        return group() == EdgeGroup.BURIED;
    }

    boolean isTurned() {
        return finish instanceof EdgeFinish.Turned;
    }

    /** All of them, end to end. */
    Length together() {
        return length.times(count);
    }

    /** The narrow face that is dyed or painted, of all of them. */
    Area face() {
        return Area.ofMm2(together().mm() * thickness.mm());
    }

    /** The first grade it is sanded with: layers that do not quite meet take a coarser one; common practice. */
    Grit coarsest() {
        return lies == EdgePlace.SEWN_TOGETHER ? Grit.p(180) : Grit.p(240);
    }
}
