package org.hidewright.straps;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;

/** One section of a strap, in the order in which they follow each other. */
sealed interface Section {
    String id();

    /** The thickness of this section where it is not that of the strap. */
    Optional<Length> thickness();

    /** A straight run. */
    record Straight(
            @RowId String id,

            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "120 mm")
            Length length,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.5 mm")
            Optional<Length> thickness,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "0-40 mm", preset = "0 mm")
            Length ramp)
            implements Section {}

    /** A straight run that lies on another section of the folded strap. */
    record Overlap(
            @RowId String id,
            @Asked(example = "leg") String on,

            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "40 mm")
            Length length,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.5 mm")
            Optional<Length> thickness,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "0-40 mm", preset = "0 mm")
            Length ramp)
            implements Section {}

    /** A bend round something. */
    record Bend(
            @RowId String id,

            @Asked(example = "{\"round-bar\":{\"diameter\":\"4 mm\"}}")
            Core core,

            @Asked(unit = "deg", min = "1 deg", max = "360 deg", example = "180 deg")
            Angle turn,

            @Asked(preset = "grain") Face outside,
            @Asked(preset = "{\"none\":{}}") Preparation preparation,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.5 mm")
            Optional<Length> thickness,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", example = "0.55")
            Optional<Double> measuredNeutralLine)
            implements Section {}

    /** A turn-back round a buckle bar, its legs meeting behind the bar. */
    record TurnBack(
            @RowId String id,

            @Asked(unit = "mm", min = "0.5 mm", max = "60 mm", usual = "2-8 mm", example = "4 mm")
            Length barDiameter,

            @Asked(unit = "mm", min = "0.5 mm", max = "300 mm", usual = "8-40 mm", example = "15 mm")
            Length contact,

            @Asked(preset = "grain") Face outside,
            @Asked(preset = "{\"none\":{}}") Preparation preparation,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.5 mm")
            Optional<Length> thickness,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.5 mm")
            Optional<Length> thicknessBefore,

            @Asked(unit = "mm", min = "0.1 mm", max = "20 mm", example = "1.5 mm")
            Optional<Length> thicknessAfter,

            @Asked(min = "0", max = "1", usual = "0.3-0.7", example = "0.55")
            Optional<Double> measuredNeutralLine)
            implements Section {}
}
