package org.hidewright.parts;

import java.util.Optional;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;

/** A part of bench work that is put on parts that are drawn, or beside them. */
public sealed interface Addition {
    /** Its id: of the part that is added, or of what is put on. */
    String id();

    /** A stud, snap or magnet through two parts. */
    record Closed(
            @RowId String id,
            @Asked(example = "back") String top,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "50 mm")
            Length topX,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "150 mm")
            Length topY,

            @Asked(unit = "°", min = "-360 °", max = "360 °", preset = "90 °")
            Angle towardsEnd,

            @Asked(example = "front") String under,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "50 mm")
            Length underX,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "60 mm")
            Length underY,

            @Asked(example = "{\"snap\":{}}") Closing by)
            implements Addition {}

    /** A buckle on a tab sewn to one part, and holes for its prong in another. */
    record Buckled(
            @RowId String id,
            @Asked(example = "back") String top,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "50 mm")
            Length topX,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "150 mm")
            Length topY,

            @Asked(unit = "°", min = "-360 °", max = "360 °", preset = "90 °")
            Angle towardsEnd,

            @Asked(unit = "mm", min = "1 mm", max = "12 mm", usual = "2.5-5 mm", preset = "3.5 mm")
            Length hole,

            @Asked(min = "1", max = "15", usual = "1-7", preset = "3")
            int holes,

            @Asked(unit = "mm", min = "3 mm", max = "60 mm", usual = "10-25 mm", preset = "15 mm")
            Length spacing,

            @Asked(example = "front") String under,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "50 mm")
            Length underX,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "60 mm")
            Length underY,

            @Asked(unit = "°", min = "-360 °", max = "360 °", preset = "-90 °")
            Angle towards,

            @Asked(unit = "mm", min = "8 mm", max = "150 mm", usual = "12-40 mm", preset = "20 mm")
            Length inside,

            @Asked(unit = "mm", min = "0.8 mm", max = "12 mm", usual = "2-5 mm", preset = "3 mm")
            Length bar,

            @Asked(unit = "mm", min = "3 mm", max = "80 mm", usual = "12-30 mm", preset = "18 mm")
            Length slot,

            @Asked(unit = "mm", min = "1.5 mm", max = "15 mm", usual = "3-6 mm", preset = "5 mm")
            Length prong,

            @Asked(unit = "mm", min = "6 mm", max = "200 mm", usual = "20-40 mm", preset = "30 mm")
            Length leg,

            @Asked(unit = "mm", min = "0.5 mm", max = "6 mm", usual = "1.2-3 mm", preset = "2 mm")
            Length thickness,

            @Asked(unit = "mm", min = "1 mm", max = "30 mm", usual = "2-8 mm", preset = "4 mm")
            Length pitch)
            implements Addition {}

    /** A strip along a stretch of a part’s outline, as a part of its own. */
    record Welted(
            @RowId String id,
            @Asked(example = "front") String of,

            @Asked(unit = "mm", min = "0 mm", max = "50 m", preset = "0 mm")
            Length from,

            @Asked(unit = "mm", min = "0 mm", max = "50 m", example = "180 mm")
            Length to,

            @Asked(unit = "mm", min = "2 mm", max = "60 mm", usual = "6-12 mm", preset = "8 mm")
            Length width,

            @Asked(unit = "mm", min = "0.2 mm", max = "20 mm", usual = "0.6-6 mm", preset = "3 mm")
            Length thickness,

            @Asked(min = "1", max = "20", usual = "1-3", preset = "1")
            int layers)
            implements Addition {}

    /** A strip folded round an edge, as a part of its own. */
    record Bound(
            @RowId String id,

            @Asked(unit = "mm", min = "10 mm", max = "50 m", example = "260 mm")
            Length edge,

            @Asked(unit = "mm", min = "0 mm", max = "200 mm", usual = "0-20 mm", preset = "0 mm")
            Length lap,

            @Asked(unit = "mm", min = "2 mm", max = "40 mm", usual = "5-10 mm", preset = "7 mm")
            Length cover,

            @Asked(unit = "mm", min = "0.2 mm", max = "60 mm", usual = "1.5-8 mm", preset = "4 mm")
            Length stack,

            @Asked(unit = "mm", min = "0.2 mm", max = "5 mm", usual = "0.6-1.2 mm", preset = "0.8 mm")
            Length thickness,

            @Asked(unit = "mm", min = "1 mm", max = "30 mm", usual = "2-8 mm", preset = "4 mm")
            Length pitch)
            implements Addition {}

    /** A window for a zip, with its stitches. */
    record Zipped(
            @RowId String id,
            @Asked(example = "front") String on,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "50 mm")
            Length x,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "60 mm")
            Length y,

            @Asked(unit = "°", min = "-360 °", max = "360 °", preset = "0 °")
            Angle turned,

            @Asked(unit = "mm", min = "20 mm", max = "2 m", usual = "60-400 mm", example = "80 mm")
            Length betweenStops,

            @Asked(unit = "mm", min = "2 mm", max = "20 mm", usual = "4-8 mm", preset = "5 mm")
            Length teeth,

            @Asked(unit = "mm", min = "5 mm", max = "100 mm", usual = "24-35 mm", preset = "30 mm")
            Length tape,

            @Asked(unit = "mm", min = "1 mm", max = "30 mm", usual = "2-8 mm", preset = "3.5 mm")
            Length pitch)
            implements Addition {}

    /** A tab for a ring, as a part of its own, sewn to a part. */
    record Tabbed(
            @RowId String id,
            @Asked(example = "back") String on,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "50 mm")
            Length x,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "70 mm")
            Length y,

            @Asked(unit = "°", min = "-360 °", max = "360 °", preset = "-90 °")
            Angle towards,

            @Asked(unit = "mm", min = "8 mm", max = "150 mm", usual = "12-40 mm", preset = "20 mm")
            Length inside,

            @Asked(unit = "mm", min = "0.8 mm", max = "12 mm", usual = "2-5 mm", preset = "3 mm")
            Length wire,

            @Asked(unit = "mm", min = "6 mm", max = "200 mm", usual = "20-40 mm", preset = "25 mm")
            Length leg,

            @Asked(unit = "mm", min = "0.5 mm", max = "6 mm", usual = "1.2-3 mm", preset = "2 mm")
            Length thickness,

            @Asked(unit = "mm", min = "1 mm", max = "30 mm", usual = "2-8 mm", preset = "4 mm")
            Length pitch)
            implements Addition {}

    /** Pockets in steps, as parts of their own, sewn to a part. */
    record Stepped(
            @RowId String id,
            @Asked(example = "back") String on,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "2 mm")
            Length x,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "2 mm")
            Length y,

            @Asked(min = "1", max = "12", usual = "1-4", preset = "2")
            int pockets,

            @Asked(unit = "mm", min = "15 mm", max = "400 mm", usual = "50-130 mm", example = "85.72 mm")
            Length cardWidth,

            @Asked(unit = "mm", min = "15 mm", max = "400 mm", usual = "45-100 mm", example = "54.03 mm")
            Length cardHeight,

            @Asked(unit = "mm", min = "0.1 mm", max = "12 mm", usual = "0.3-3 mm", preset = "0.84 mm")
            Length cards,

            @Asked(unit = "mm", min = "4 mm", max = "100 mm", usual = "10-15 mm", preset = "12 mm")
            Length step,

            @Asked(unit = "mm", min = "0 mm", max = "20 mm", usual = "2-6 mm", preset = "4 mm")
            Length ease,

            @Asked(unit = "mm", min = "0.2 mm", max = "4 mm", usual = "0.6-1.2 mm", preset = "0.9 mm")
            Length thickness,

            @Asked(unit = "mm", min = "1 mm", max = "30 mm", usual = "2-8 mm", preset = "3 mm")
            Length pitch)
            implements Addition {}

    /** A lining of a part, as a part of its own. */
    record Lined(
            @RowId String id,
            @Asked(example = "front") String of,

            @Asked(unit = "mm", min = "0 mm", max = "60 mm", usual = "0-5 mm", preset = "0 mm")
            Length inside,

            @Asked(unit = "mm", min = "0.1 mm", max = "6 mm", usual = "0.4-1.2 mm", preset = "0.8 mm")
            Length thickness,

            @Asked(unit = "mm", min = "0 mm", max = "20 mm", usual = "0-3 mm", preset = "1.5 mm")
            Length leftStanding,

            @Asked(example = "lid") Optional<String> shorterAt)
            implements Addition {}

    /** A round patch behind a hole, as a part of its own. */
    record Patched(
            @RowId String id,
            @Asked(example = "front.stud") String behind,

            @Asked(unit = "mm", min = "1 mm", max = "60 mm", usual = "6-16 mm", preset = "10 mm")
            Length flange,

            @Asked(unit = "mm", min = "0.2 mm", max = "6 mm", usual = "0.6-2 mm", preset = "1 mm")
            Length thickness)
            implements Addition {}
}
