package org.hidewright.straps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Skives;

/** The flat strap, grain up, its start to the left: edges, folds, skives, holes, slots, stitch rows. */
record FlatView(StrapLayout.Strap asked, FoldedStrap strap, Skives skives, FeaturePlaces places) {
    private static final double LETTER_MM = 2.2;
    private static final double FIRST_OFFSET_MM = 5;
    private static final double OFFSET_STEP_MM = 5;
    private static final double ACROSS_OFFSET_MM = 5;

    Drawing drawing() {
        double length = strap.flatLength();
        double width = asked.width().mm();
        Drawing.Builder drawing = Drawing.builder().rectangle(Role.CUT, Point.of(0, 0), length, width);
        skives.zones().forEach(zone -> skive(drawing, zone, width));
        for (PlacedPiece piece : strap.pieces()) {
            if (!piece.straight()) {
                across(drawing, Role.FOLD, piece.flatStart());
                across(drawing, Role.FOLD, piece.flatEnd());
            }
            drawing.label(
                    piece.id(), Point.of((piece.flatStart() + piece.flatEnd()) / 2, width), Anchor.BOTTOM, LETTER_MM);
        }
        places.rows().forEach(row -> stitches(drawing, row, width));
        places.pierced().forEach(place -> feature(drawing, place, width));
        dimensions(drawing, length);
        acrossDimensions(drawing, length, width);
        return drawing.build();
    }

    private void across(Drawing.Builder drawing, Role role, double at) {
        drawing.line(role, Point.of(at, 0), Point.of(at, asked.width().mm()));
    }

    /** Full depth as a crossed field, its ramps as lines that run out to it. */
    private static void skive(Drawing.Builder drawing, Skives.Zone zone, double width) {
        double inset = width * 0.06;
        drawing.add(Path.from(Point.of(zone.rampStart(), width / 2))
                .lineTo(zone.fullStart(), width - inset)
                .lineTo(zone.fullEnd(), width - inset)
                .lineTo(zone.rampEnd(), width / 2)
                .lineTo(zone.fullEnd(), inset)
                .lineTo(zone.fullStart(), inset)
                .closed(Role.NOTE));
    }

    private static void stitches(Drawing.Builder drawing, FeaturePlaces.Row row, double width) {
        double margin = row.row().margin().mm();
        for (double y : new double[] {margin, width - margin}) {
            drawing.line(Role.STITCH, Point.of(row.fromMm(), y), Point.of(row.toMm(), y));
        }
    }

    private void feature(Drawing.Builder drawing, FeaturePlaces.Pierced place, double width) {
        Point centre = Point.of(place.flatMm(), width / 2);
        if (place.feature() instanceof Feature.Hole hole) {
            drawing.hole(centre, hole.diameter().mm());
        } else if (place.feature() instanceof Feature.Slot slot) {
            drawing.add(
                    slotOutline(centre, slot.slotLength().mm(), slot.slotWidth().mm()));
        } else {
            across(drawing, place.feature() instanceof Feature.FoldLine ? Role.FOLD : Role.MARK, place.flatMm());
        }
    }

    /** A slot with round ends, lengthwise; as wide as long it is a hole. */
    static Path slotOutline(Point centre, double lengthMm, double widthMm) {
        double radius = Math.min(lengthMm, widthMm) / 2;
        double straight = Math.max(0, lengthMm - 2 * radius);
        Point right = centre.plus(straight / 2, 0);
        Point left = centre.plus(-straight / 2, 0);
        Path.Builder outline = Path.from(left.plus(0, -radius));
        if (straight > 0) {
            outline.lineTo(right.plus(0, -radius));
        }
        outline.arcAround(right, Math.PI);
        if (straight > 0) {
            outline.lineTo(left.plus(0, radius));
        }
        return outline.arcAround(left, Math.PI).closed(Role.INNER_CUT);
    }

    /** From the start to each place, nearest first and each a line further out; the whole length outermost. */
    private void dimensions(Drawing.Builder drawing, double length) {
        List<Double> all = new ArrayList<>(
                places.pierced().stream().map(FeaturePlaces.Pierced::flatMm).toList());
        all.sort(Comparator.naturalOrder());
        double offset = -FIRST_OFFSET_MM;
        for (double place : all) {
            if (place > 0.05 && place < length - 0.05) {
                drawing.dimension(Point.of(0, 0), Point.of(place, 0), offset, Length.ofMm(place), LETTER_MM);
                offset -= OFFSET_STEP_MM;
            }
        }
        drawing.dimension(Point.of(0, 0), Point.of(length, 0), offset, toCut(length), LETTER_MM);
    }

    /** Its width at the far end, and at the near one how far from the edge its holes and slots have their middle. */
    private void acrossDimensions(Drawing.Builder drawing, double length, double width) {
        drawing.dimension(Point.of(length, 0), Point.of(length, width), -ACROSS_OFFSET_MM, asked.width(), LETTER_MM);
        boolean pierced = places.pierced().stream()
                .map(FeaturePlaces.Pierced::feature)
                .anyMatch(feature -> feature instanceof Feature.Hole || feature instanceof Feature.Slot);
        if (pierced) {
            Length toEdge = asked.width().times(0.5);
            drawing.line(Role.NOTE, Point.of(0, width / 2), Point.of(length, width / 2));
            drawing.dimension(Point.of(0, 0), Point.of(0, width / 2), ACROSS_OFFSET_MM, toEdge, LETTER_MM);
        }
    }

    /** The whole length as the table has it: up to the next tenth, so that both say the same. */
    static Length toCut(double mm) {
        return Length.ofMm(Math.ceil(mm * 10 - 1e-6) / 10);
    }
}
