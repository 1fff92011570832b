package org.hidewright.straps;

import org.hidewright.api.calculator.Asked;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;

/** What a strip is wrapped round, and how. */
sealed interface WrapShape {
    /** A closed ring round a bar or a cylinder, its ends butted or lapped. */
    record Ring(
            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "20 mm")
            Length diameter,

            @Asked(unit = "mm", min = "0 mm", max = "100 mm", preset = "0 mm")
            Length easeAround,

            @Asked(unit = "mm", min = "0 mm", max = "1 m", preset = "0 mm")
            Length lap)
            implements WrapShape {}

    /** Half way round a bar, with legs of one length together. */
    record HalfWrap(
            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "6 mm")
            Length diameter,

            @Asked(unit = "mm", min = "0 mm", max = "10 m", preset = "0 mm")
            Length returnLeg)
            implements WrapShape {}

    /** Round a buckle bar until both legs meet: from contact line to contact line. */
    record Teardrop(
            @Asked(unit = "mm", min = "0.1 mm", max = "1 m", example = "6 mm")
            Length diameter,

            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "12 mm")
            Length contact)
            implements WrapShape {}

    /** Round a block with rounded corners. */
    record RoundedRectangle(
            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "38 x 8 mm")
            Size block,

            @Asked(unit = "mm", min = "0 mm", max = "5 m", example = "1 mm")
            Length cornerRadius,

            @Asked(unit = "mm", min = "0 mm", max = "1 m", preset = "0 mm")
            Length lap)
            implements WrapShape {}

    /** Round two posts without crossing. */
    record TwoPostsOpen(
            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "10 mm")
            Length firstDiameter,

            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "5 mm")
            Length secondDiameter,

            @Asked(unit = "mm", min = "0.1 mm", max = "100 m", example = "20 mm")
            Length centres)
            implements WrapShape {}

    /** Round two posts, crossed between them like an eight. */
    record TwoPostsCrossed(
            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "10 mm")
            Length firstDiameter,

            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "5 mm")
            Length secondDiameter,

            @Asked(unit = "mm", min = "0.1 mm", max = "100 m", example = "20 mm")
            Length centres)
            implements WrapShape {}

    /** A roll of whole or part turns round a core. */
    record Roll(
            @Asked(unit = "mm", min = "0.1 mm", max = "10 m", example = "10 mm")
            Length coreDiameter,

            @Asked(min = "0.05", max = "1000", example = "4")
            double turns,

            @Asked(preset = "layers") RollRule rule)
            implements WrapShape {}

    /** A cover round a piping cord, with a seam allowance on both sides. */
    record Piping(
            @Asked(unit = "mm", min = "0.1 mm", max = "100 mm", example = "5 mm")
            Length cordDiameter,

            @Asked(unit = "mm", min = "0 mm", max = "100 mm", example = "8 mm")
            Length seamAllowance)
            implements WrapShape {}

    /** A gusset along the sides and bottom of a panel, its bottom corners rounded. */
    record UGusset(
            @Asked(unit = "mm", min = "1 mm", max = "10 m", example = "200 x 150 mm")
            Size panel,

            @Asked(unit = "mm", min = "0 mm", max = "5 m", example = "30 mm")
            Length cornerRadius)
            implements WrapShape {}

    /** Two layers folded together: what the outer one needs more. */
    record TwoLayers(
            @Asked(unit = "mm", min = "0.1 mm", max = "50 mm", example = "1.5 mm")
            Length innerThickness,

            @Asked(unit = "deg", min = "1 deg", max = "360 deg", example = "180 deg")
            Angle turn,

            @Asked(unit = "mm", min = "0 mm", max = "50 mm", preset = "0 mm")
            Length gap)
            implements WrapShape {}
}
