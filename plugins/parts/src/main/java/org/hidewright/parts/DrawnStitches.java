package org.hidewright.parts;

import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.measure.Length;

/** A line of stitches on a part. */
public record DrawnStitches(
        @RowId String id,
        @Asked(preset = "{\"all-round\":{}}") Along along,

        @Asked(unit = "mm", min = "1 mm", max = "30 mm", usual = "2-8 mm", preset = "4 mm")
        Length pitch,

        @Asked(preset = "mark") AtCorners corners,
        @Asked(example = "front.rim") Optional<String> like) {}
