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
final class FlatView {
    private static final double LETTER_MM = 2.2;
    private static final double FIRST_OFFSET_MM = 5;
    private static final double OFFSET_STEP_MM = 5;
    private static final double ACROSS_OFFSET_MM = 5;
    private static final double GAP_MM = 8;
    private static final double SHORT_ENOUGH_MM = 240;

    private final StrapLayout.Strap asked;
    private final FoldedStrap strap;
    private final Skives skives;
    private final FeaturePlaces places;
    private final List<FoldBreaks.Slab> leftOut;

    FlatView(StrapLayout.Strap asked, FoldedStrap strap, Skives skives, FeaturePlaces places) {
        this.asked = asked;
        this.strap = strap;
        this.skives = skives;
        this.places = places;
        this.leftOut = leftOut();
    }

    /** Long stretches in which nothing happens. */
    private List<FoldBreaks.Slab> leftOut() {
        FoldBreaks breaks = new FoldBreaks(0, SHORT_ENOUGH_MM);
        breaks.keep(0, 0);
        breaks.keep(strap.flatLength(), strap.flatLength());
        strap.pieces().stream()
                .filter(piece -> !piece.straight())
                .forEach(bend -> breaks.keep(bend.flatStart(), bend.flatEnd()));
        skives.zones().forEach(zone -> breaks.keep(zone.rampStart(), zone.fullStart()));
        skives.zones().forEach(zone -> breaks.keep(zone.fullEnd(), zone.rampEnd()));
        places.pierced().forEach(place -> breaks.keep(place.flatMm() - reach(place), place.flatMm() + reach(place)));
        places.rows().forEach(row -> {
            breaks.keep(row.fromMm(), row.fromMm());
            breaks.keep(row.toMm(), row.toMm());
        });
        return breaks.slabs();
    }

    private static double reach(FeaturePlaces.Pierced place) {
        return place.feature() instanceof Feature.Slot slot ? slot.slotLength().mm() / 2 : 0;
    }

    /** Where a place is drawn; one that is left out at the break. */
    private double x(double place) {
        double x = place;
        for (FoldBreaks.Slab slab : leftOut) {
            if (place >= slab.to()) {
                x -= slab.to() - slab.from() - GAP_MM;
            } else if (place > slab.from()) {
                x -= place - slab.from();
            }
        }
        return x;
    }

    private Point at(double place, double y) {
        return Point.of(x(place), y);
    }

    /** The parts that are drawn, each from one break to the next. */
    private List<FoldBreaks.Slab> parts() {
        List<FoldBreaks.Slab> parts = new ArrayList<>();
        double from = 0;
        for (FoldBreaks.Slab slab : leftOut) {
            parts.add(new FoldBreaks.Slab(from, slab.from()));
            from = slab.to();
        }
        parts.add(new FoldBreaks.Slab(from, strap.flatLength()));
        return parts;
    }

    private void outline(Drawing.Builder drawing, double length, double width) {
        if (leftOut.isEmpty()) {
            drawing.rectangle(Role.CUT, Point.of(0, 0), length, width);
            return;
        }
        List<FoldBreaks.Slab> parts = parts();
        for (FoldBreaks.Slab part : parts) {
            boolean first = part == parts.get(0);
            boolean last = part == parts.get(parts.size() - 1);
            Path.Builder edge = Path.from(at(first ? part.to() : part.from(), 0));
            if (first || last) {
                double end = first ? 0 : length;
                double back = first ? part.to() : part.from();
                drawing.add(edge.lineTo(at(end, 0))
                        .lineTo(at(end, width))
                        .lineTo(at(back, width))
                        .open(Role.CUT));
            } else {
                drawing.line(Role.CUT, at(part.from(), 0), at(part.to(), 0));
                drawing.line(Role.CUT, at(part.from(), width), at(part.to(), width));
            }
        }
        for (FoldBreaks.Slab slab : leftOut) {
            for (double end : new double[] {slab.from(), slab.to()}) {
                Path.Builder wave = Path.from(at(end, 0));
                LongStrap.wave(wave, at(end, width));
                drawing.add(wave.open(Role.NOTE));
            }
        }
    }

    /** A line along the strap, left out where the strap is. */
    private void alongStrap(Drawing.Builder drawing, Role role, double from, double to, double y) {
        for (FoldBreaks.Slab part : parts()) {
            double start = Math.max(from, part.from());
            double end = Math.min(to, part.to());
            if (end > start) {
                drawing.line(role, at(start, y), at(end, y));
            }
        }
    }

    /** The middle of what is drawn of a section, in its longest part. */
    private double middleShown(PlacedPiece piece) {
        double middle = (piece.flatStart() + piece.flatEnd()) / 2;
        double longest = 0;
        for (FoldBreaks.Slab part : parts()) {
            double start = Math.max(piece.flatStart(), part.from());
            double end = Math.min(piece.flatEnd(), part.to());
            if (end - start > longest + 1e-9) {
                longest = end - start;
                middle = (start + end) / 2;
            }
        }
        return middle;
    }

    Drawing drawing() {
        double length = strap.flatLength();
        double width = asked.width().mm();
        Drawing.Builder drawing = Drawing.builder();
        outline(drawing, length, width);
        skives.zones().forEach(zone -> skive(drawing, zone, width));
        for (PlacedPiece piece : strap.pieces()) {
            if (!piece.straight()) {
                across(drawing, Role.FOLD, piece.flatStart());
                across(drawing, Role.FOLD, piece.flatEnd());
            }
            drawing.label(piece.id(), at(middleShown(piece), width), Anchor.BOTTOM, LETTER_MM);
        }
        places.rows().forEach(row -> stitches(drawing, row, width));
        places.pierced().forEach(place -> feature(drawing, place, width));
        dimensions(drawing, length);
        acrossDimensions(drawing, length, width);
        return drawing.build();
    }

    private void across(Drawing.Builder drawing, Role role, double at) {
        drawing.line(role, at(at, 0), at(at, asked.width().mm()));
    }

    /** Full depth as a field, its ramps as lines that run out to it. */
    private void skive(Drawing.Builder drawing, Skives.Zone zone, double width) {
        double inset = width * 0.06;
        drawing.line(Role.NOTE, at(zone.fullStart(), inset), at(zone.fullStart(), width - inset));
        drawing.line(Role.NOTE, at(zone.fullEnd(), inset), at(zone.fullEnd(), width - inset));
        alongStrap(drawing, Role.NOTE, zone.fullStart(), zone.fullEnd(), inset);
        alongStrap(drawing, Role.NOTE, zone.fullStart(), zone.fullEnd(), width - inset);
        for (double y : new double[] {inset, width - inset}) {
            drawing.line(Role.NOTE, at(zone.rampStart(), width / 2), at(zone.fullStart(), y));
            drawing.line(Role.NOTE, at(zone.rampEnd(), width / 2), at(zone.fullEnd(), y));
        }
    }

    private void stitches(Drawing.Builder drawing, FeaturePlaces.Row row, double width) {
        double margin = row.row().margin().mm();
        for (double y : new double[] {margin, width - margin}) {
            alongStrap(drawing, Role.STITCH, row.fromMm(), row.toMm(), y);
        }
    }

    private void feature(Drawing.Builder drawing, FeaturePlaces.Pierced place, double width) {
        Point centre = at(place.flatMm(), width / 2);
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
                drawing.dimension(Point.of(0, 0), at(place, 0), offset, Length.ofMm(place), LETTER_MM);
                offset -= OFFSET_STEP_MM;
            }
        }
        drawing.dimension(Point.of(0, 0), at(length, 0), offset, Length.ofMm(length), LETTER_MM);
    }

    /** Its width at the far end, and at the near one how far from the edge its holes and slots have their middle. */
    private void acrossDimensions(Drawing.Builder drawing, double length, double width) {
        drawing.dimension(at(length, 0), at(length, width), -ACROSS_OFFSET_MM, asked.width(), LETTER_MM);
        boolean pierced = places.pierced().stream()
                .map(FeaturePlaces.Pierced::feature)
                .anyMatch(feature -> feature instanceof Feature.Hole || feature instanceof Feature.Slot);
        if (pierced) {
            Length toEdge = asked.width().times(0.5);
            alongStrap(drawing, Role.NOTE, 0, length, width / 2);
            drawing.dimension(Point.of(0, 0), Point.of(0, width / 2), ACROSS_OFFSET_MM, toEdge, LETTER_MM);
        }
    }
}
