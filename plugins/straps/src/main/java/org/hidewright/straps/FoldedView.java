package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stretch;

/** The folded strap from the side: leather cut through, its grain and flesh faces, hardware, the axes of fittings. */
record FoldedView(
        StrapLayout.Strap asked, List<ReadSection> sections, FoldedStrap strap, Skives skives, FeaturePlaces places) {
    private static final double LETTER_MM = 2.2;
    private static final double[] NAME_SHARES = {0.5, 0.3, 0.3, 0.2};
    private static final double AXIS_BEYOND_MM = 2.5;

    Drawing drawing() {
        Drawing.Builder drawing = Drawing.builder();
        new SideOfLeather(strap, skives).draw(drawing);
        sections.forEach(section -> hardware(drawing, section));
        places.pierced().forEach(place -> axis(drawing, place));
        places.rows().forEach(row -> stitches(drawing, row));
        names(drawing);
        return drawing.build();
    }

    private void hardware(Drawing.Builder drawing, ReadSection section) {
        section.fold().flatMap(ReadSection.Fold::bar).ifPresent(bar -> {
            PlacedPiece placed = strap.piece(section.id()).orElseThrow();
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
        Pose grain = place.piece().poseAt(place.alongMm());
        boolean line = place.feature() instanceof Feature.FoldLine;
        drawing.line(
                line ? Role.FOLD : Role.MARK,
                SideOfLeather.point(grain.towardsGrain(AXIS_BEYOND_MM)),
                SideOfLeather.point(grain.towardsGrain(-place.piece().thickness() - AXIS_BEYOND_MM)));
        if (!place.mate()) {
            boolean grainUp = Math.cos(grain.heading()) > 0;
            drawing.label(
                    place.feature().id(),
                    SideOfLeather.point(grain.towardsGrain(AXIS_BEYOND_MM)),
                    grainUp ? Anchor.BOTTOM : Anchor.TOP,
                    LETTER_MM);
        }
    }

    /** A short stroke through the leather where a row begins and ends. */
    private static void stitches(Drawing.Builder drawing, FeaturePlaces.Row row) {
        for (FeaturePlaces.Pierced end : List.of(row.start(), row.end())) {
            Pose grain = end.piece().poseAt(end.alongMm());
            drawing.line(
                    Role.STITCH,
                    SideOfLeather.point(grain),
                    SideOfLeather.point(grain.towardsGrain(-end.piece().thickness())));
        }
    }

    /** Names of straight sections, each at another share of its length so that those of layers stay apart. */
    private void names(Drawing.Builder drawing) {
        int straight = 0;
        for (PlacedPiece piece : strap.pieces()) {
            if (piece.straight()) {
                Pose at = piece.poseAt(piece.outsideLength() * NAME_SHARES[straight++ % NAME_SHARES.length]);
                drawing.label(
                        piece.id(),
                        SideOfLeather.point(at.towardsGrain(-piece.thickness() / 2)),
                        Anchor.CENTRE,
                        LETTER_MM);
            }
        }
    }
}
