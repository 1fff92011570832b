package org.hidewright.parts;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;

/** One part, but for what is on it. */
public record DrawnPart(
        @RowId String id,

        @Asked(example = "Front") Optional<String> name,

        @Asked(example = "{\"rectangle\":{\"width\":\"180 mm\",\"height\":\"120 mm\"}}")
        Shape shape,

        @Asked(example = "shoulder") Optional<String> leather,

        @Asked(unit = "mm", min = "0.2 mm", max = "20 mm", usual = "0.6-6 mm", example = "1.8 mm")
        Optional<Length> thickness,

        @Asked(min = "0", max = "1000", usual = "0-20", preset = "1")
        int count,

        @Asked(min = "0", max = "1000", usual = "0-20", preset = "0")
        int turnedOver,

        @Asked(unit = "mm", min = "0 mm", max = "20 mm", usual = "0-3 mm", preset = "0 mm")
        Length leftStanding,

        @Asked(unit = "mm", min = "0 mm", max = "3 mm", usual = "0-0.5 mm", preset = "0 mm")
        Length sanded,

        @Asked(preset = "grain") Shows shows,

        @Asked(unit = "°", min = "-360 °", max = "360 °", example = "90 °")
        Optional<Angle> backbone) {}
