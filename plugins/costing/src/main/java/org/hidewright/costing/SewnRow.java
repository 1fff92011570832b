package org.hidewright.costing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;

/**
 * A row of stitches of an item: a seam, or a line that no seam has.
 *
 * @param id of the seam, or {@code part.line}
 * @param length millimetres
 * @param stack millimetres of leather it goes through; empty where a part does not say how thick it is
 * @param spaced whether its holes are there; else stitches are counted by the usual pitch
 * @param times how often it is sewn: as often as the part is made of which there are fewest
 */
record SewnRow(String id, double length, int stitches, OptionalDouble stack, boolean spaced, int times) {
    /** Millimetres from hole to hole where nothing is said (common practice). */
    private static final double USUAL_PITCH = 4;

    static List<SewnRow> of(Item item) {
        List<SewnRow> rows = new ArrayList<>();
        Set<OnPart> inSeams = new HashSet<>();
        for (Seam seam : item.seams()) {
            inSeams.addAll(seam.lines());
            rows.add(of(item, seam));
        }
        for (Part part : item.parts()) {
            for (StitchLine line : part.stitchLines()) {
                OnPart on = new OnPart(part.id(), line.id());
                if (!inSeams.contains(on)) {
                    rows.add(of(item, on.toString(), List.of(on)));
                }
            }
        }
        return rows;
    }

    static SewnRow of(Item item, Seam seam) {
        return of(item, seam.id(), seam.lines());
    }

    private static SewnRow of(Item item, String id, List<OnPart> lines) {
        StitchLine seen = item.stitchLine(lines.get(0)).orElseThrow();
        double length = Curve.of(seen.line()).length();
        int holes = seen.holes().size();
        boolean spaced = holes > 1;
        int stitches = seen.line().isClosed() ? holes : holes - 1;
        return new SewnRow(
                id,
                length,
                spaced ? stitches : (int) Math.max(1, Math.round(length / USUAL_PITCH)),
                stack(item, lines),
                spaced,
                parts(item, lines).mapToInt(Part::pieces).min().orElse(1));
    }

    private static Stream<Part> parts(Item item, List<OnPart> lines) {
        return lines.stream().map(on -> item.part(on.part()).orElseThrow());
    }

    private static OptionalDouble stack(Item item, List<OnPart> lines) {
        return parts(item, lines).allMatch(part -> part.thickness().isPresent())
                ? OptionalDouble.of(parts(item, lines)
                        .mapToDouble(part -> part.thickness().getAsDouble())
                        .sum())
                : OptionalDouble.empty();
    }

    /** Stitches in one item. */
    int sewn() {
        return stitches * times;
    }

    double pitch() {
        return length / stitches;
    }
}
