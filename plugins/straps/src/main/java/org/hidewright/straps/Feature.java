package org.hidewright.straps;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Length;

/** Something at a place of the folded strap. */
sealed interface Feature {
    String id();

    String section();

    From from();

    Length distance();

    /** Sections the same fitting or stitch goes through as well. */
    Optional<List<String>> alsoThrough();

    /** A round hole for a fitting. */
    record Hole(
            @RowId String id,

            @Asked(unit = "mm", min = "0.3 mm", max = "100 mm", usual = "1-12 mm", example = "4 mm")
            Length diameter,

            @Asked(example = "leg") String section,
            @Asked(preset = "start") From from,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "15 mm")
            Length distance,

            @Asked(example = "tip") Optional<List<String>> alsoThrough)
            implements Feature {}

    /** A slot along the strap, as for the prong of a buckle. */
    record Slot(
            @RowId String id,

            @Asked(unit = "mm", min = "1 mm", max = "200 mm", usual = "10-40 mm", example = "25 mm")
            Length slotLength,

            @Asked(unit = "mm", min = "0.5 mm", max = "50 mm", usual = "3-8 mm", example = "5 mm")
            Length slotWidth,

            @Asked(example = "buckle") String section,
            @Asked(preset = "middle") From from,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", preset = "0 mm")
            Length distance,

            @Asked(example = "tip") Optional<List<String>> alsoThrough)
            implements Feature {}

    /** A row of stitches along the strap, from one place to another. */
    record StitchRow(
            @RowId String id,
            @Asked(example = "leg") String section,
            @Asked(preset = "start") From from,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "5 mm")
            Length distance,

            @Asked(example = "leg") String toSection,
            @Asked(preset = "end") From toFrom,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "5 mm")
            Length toDistance,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "2.5-6 mm", preset = "3 mm")
            Length margin,

            @Asked(example = "tip") Optional<List<String>> alsoThrough)
            implements Feature {}

    /** A line across to fold or crease along. */
    record FoldLine(
            @RowId String id,
            @Asked(example = "leg") String section,
            @Asked(preset = "start") From from,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "15 mm")
            Length distance,

            @Asked(example = "tip") Optional<List<String>> alsoThrough)
            implements Feature {}

    /** A mark across: a place to glue to, a centre. */
    record Mark(
            @RowId String id,
            @Asked(example = "leg") String section,
            @Asked(preset = "start") From from,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "15 mm")
            Length distance,

            @Asked(example = "tip") Optional<List<String>> alsoThrough)
            implements Feature {}
}
