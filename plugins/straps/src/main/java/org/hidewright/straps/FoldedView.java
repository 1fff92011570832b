package org.hidewright.straps;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stretch;

/** The folded strap from the side: leather cut through, its grain and flesh faces, hardware, the axes of fittings. */
final class FoldedView {
    private static final String GRAIN_FACE = "grain-face";
    private static final String FLESH_FACE = "flesh-face";
    static final List<String> PHRASES = List.of(GRAIN_FACE, FLESH_FACE);

    private static final double LETTER_MM = 2.2;
    private static final double AXIS_BEYOND_MM = 2.5;
    private static final double BREAK_BEYOND_MM = 1.5;
    private static final double LEGEND_BELOW_MM = 6;
    private static final double LEGEND_LINE_MM = 10;
    private static final double LEGEND_STEP_MM = 30;

    private final StrapLayout.Strap asked;
    private final List<ReadSection> sections;
    private final FoldedStrap strap;
    private final FeaturePlaces places;
    private final PicturedStrap pictured;
    private final FoldedNames names;

    FoldedView(
            StrapLayout.Strap asked,
            List<ReadSection> sections,
            FoldedStrap strap,
            Skives skives,
            FeaturePlaces places) {
        this.asked = asked;
        this.sections = sections;
        this.strap = strap;
        this.places = places;
        List<FeaturePlaces.Pierced> axes = new ArrayList<>(places.pierced());
        places.rows().forEach(row -> axes.addAll(List.of(row.start(), row.end())));
        this.pictured = new PicturedStrap(strap, sections, skives, axes);
        this.names = new FoldedNames(strap, asked.glueGap().mm(), pictured);
    }

    Drawing drawing() {
        Drawing.Builder drawing = Drawing.builder();
        Map<String, Double> ramps = new HashMap<>();
        sections.forEach(section -> ramps.put(section.id(), section.rampMm()));
        for (FoldedStrap part : pictured.parts()) {
            Skives thinned = new Skives(part, asked.thickness().mm(), piece -> ramps.get(piece.id()));
            new SideOfLeather(part, thinned).draw(drawing);
        }
        pictured.broken().forEach(end -> breakOff(drawing, end));
        sections.forEach(section -> hardware(drawing, section));
        places.pierced().forEach(place -> axis(drawing, place));
        places.rows().forEach(row -> stitches(drawing, row));
        strap.pieces().stream().filter(PlacedPiece::straight).forEach(piece -> names.section(drawing, piece));
        return withLegend(drawing.build());
    }

    /** The wavy line along which the strap is broken off. */
    private static void breakOff(Drawing.Builder drawing, PicturedStrap.Broken end) {
        Path.Builder wave = Path.from(SideOfLeather.point(end.grain().towardsGrain(BREAK_BEYOND_MM)));
        LongStrap.wave(wave, SideOfLeather.point(end.grain().towardsGrain(-end.thicknessMm() - BREAK_BEYOND_MM)));
        drawing.add(wave.open(Role.NOTE));
    }

    /** Below the strap, what the two kinds of line along the leather stand for. */
    private static Drawing withLegend(Drawing picture) {
        double left = picture.bounds().minX();
        double y = picture.bounds().minY() - LEGEND_BELOW_MM;
        Drawing.Builder drawing = Drawing.builder().all(picture);
        Role[] faces = {Role.GRAIN, Role.FLESH};
        for (int i = 0; i < faces.length; i++) {
            double x = left + i * LEGEND_STEP_MM;
            drawing.line(faces[i], Point.of(x, y), Point.of(x + LEGEND_LINE_MM, y));
            drawing.label(Phrase.of(PHRASES.get(i)), Point.of(x + LEGEND_LINE_MM + 1.5, y), Anchor.LEFT, LETTER_MM);
        }
        return drawing.build();
    }

    private void hardware(Drawing.Builder drawing, ReadSection section) {
        section.fold().flatMap(ReadSection.Fold::bar).ifPresent(bar -> {
            PlacedPiece placed = pictured.bend(section.id());
            if (placed.piece() instanceof Piece.TurnBack turnBack) {
                drawing.add(Circle.of(
                        Role.HARDWARE, SideOfLeather.point(turnBack.centre(placed.start())), bar.thicknessMm()));
                return;
            }
            PlacedStretch first = placed.stretches().get(0);
            Stretch.Arc arc = (Stretch.Arc) first.stretch();
            Pose centre = arc.centre(first.start());
            if (bar.isRound()) {
                drawing.add(Circle.of(Role.HARDWARE, SideOfLeather.point(centre), bar.thicknessMm()));
            } else {
                drawing.add(flatBar(centre, arc.sense(), bar));
            }
        });
    }

    /** The section of a flat bar whose first corner has its centre here, the strap running past it. */
    private static Path flatBar(Pose corner, int sense, ReadSection.Bar bar) {
        double r = bar.cornerRadiusMm();
        Path.Builder outline = Path.from(SideOfLeather.point(corner.towardsGrain(-sense * r)));
        Pose centre = corner;
        for (int side = 0; side < 4; side++) {
            double length = (side % 2 == 0 ? bar.thicknessMm() : bar.widthMm()) - 2 * r;
            if (r > 1e-6) {
                outline.arcAround(SideOfLeather.point(centre), sense * Math.PI / 2);
            }
            centre = centre.turned(sense * Math.PI / 2).ahead(length);
            if (length > 1e-6) {
                outline.lineTo(SideOfLeather.point(centre.towardsGrain(-sense * r)));
            }
        }
        return outline.closed(Role.HARDWARE);
    }

    private void axis(Drawing.Builder drawing, FeaturePlaces.Pierced place) {
        Pose grain = pictured.pose(place.piece(), place.alongMm());
        boolean line = place.feature() instanceof Feature.FoldLine;
        drawing.line(
                line ? Role.FOLD : Role.MARK,
                SideOfLeather.point(grain.towardsGrain(AXIS_BEYOND_MM)),
                SideOfLeather.point(grain.towardsGrain(-place.piece().thickness() - AXIS_BEYOND_MM)));
        names.keepClear(grain);
        names.keepClear(grain.towardsGrain(-place.piece().thickness()));
        if (!place.mate()) {
            names.feature(drawing, place, AXIS_BEYOND_MM);
        }
    }

    /** A short stroke through the leather where a row begins and ends. */
    private void stitches(Drawing.Builder drawing, FeaturePlaces.Row row) {
        for (FeaturePlaces.Pierced end : List.of(row.start(), row.end())) {
            Pose grain = pictured.pose(end.piece(), end.alongMm());
            drawing.line(
                    Role.STITCH,
                    SideOfLeather.point(grain),
                    SideOfLeather.point(grain.towardsGrain(-end.piece().thickness())));
        }
    }
}
