package org.hidewright.edges;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/** A tool for edges that is there; the workshop’s table of edge tools can be taken for them, bevelers are picked from it. */
public record EdgeTool(
        @RowId String id,

        @Asked(preset = "beveler") EdgeTool.Kind kind,

        @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", usual = "0.5-3 mm", example = "1 mm")
        Optional<Length> width) {
    /** What it does to an edge. */
    public enum Kind {
        BEVELER,
        CREASER,
        GROOVER,
        SLICKER,
        SKIVER
    }

    boolean isBeveler() {
        return kind == Kind.BEVELER && width.isPresent();
    }
}
