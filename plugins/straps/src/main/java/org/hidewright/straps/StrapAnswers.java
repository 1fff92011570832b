package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.FeaturePlaces.Pierced;
import org.hidewright.straps.StrapLayout.FlatFeature;
import org.hidewright.straps.StrapLayout.FlatKind;
import org.hidewright.straps.StrapLayout.FlatSection;
import org.hidewright.straps.StrapLayout.FlatStitchRow;
import org.hidewright.straps.StrapLayout.FoldZone;
import org.hidewright.straps.StrapLayout.Layout;
import org.hidewright.straps.StrapLayout.SkiveZone;
import org.hidewright.straps.StrapLayout.Strap;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Skives;
import org.hidewright.straps.geometry.Stack;

/** Puts a folded strap into the rows of its answers. */
record StrapAnswers(
        Strap asked, List<ReadSection> sections, FoldedStrap strap, Skives skives, Stack stack, FeaturePlaces places) {
    Layout layout() {
        return new Layout(
                Length.ofMm(strap.flatLength()),
                Length.ofMm(new Fittings(stack, places).thickest().thicknessMm()),
                sections.stream().map(this::section).toList(),
                places.pierced().stream().map(this::feature).toList(),
                folds(),
                skiveZones(),
                places.rows().stream().map(this::stitchRow).toList(),
                new FlatView(asked, strap, skives, places).drawing(),
                new FoldedView(asked, sections, strap, skives, places).drawing());
    }

    private PlacedPiece placed(ReadSection section) {
        return strap.piece(section.id()).orElseThrow();
    }

    private Showing showing(String id) {
        return sections.stream()
                .filter(section -> section.id().equals(id))
                .map(section -> Showing.of(section, sections, strap, stack))
                .findFirst()
                .orElseThrow();
    }

    private FlatSection section(ReadSection section) {
        PlacedPiece piece = placed(section);
        Optional<ReadSection.Fold> fold = section.fold();
        return new FlatSection(
                section.id(),
                Length.ofMm(piece.flatStart()),
                Length.ofMm(piece.flatEnd()),
                Length.ofMm(piece.flatLength()),
                Length.ofMm(piece.thickness()),
                fold.map(f -> Angle.ofRadians(f.turnRad())),
                fold.map(f -> Length.ofMm(f.insideRadiusMm())),
                fold.map(f -> f.rule().k()),
                showing(section.id()));
    }

    private FlatFeature feature(Pierced place) {
        Feature feature = place.feature();
        FlatKind kind = FlatKind.MARK;
        Face face = Face.GRAIN;
        Optional<Length> across = Optional.empty();
        Optional<Length> lengthwise = Optional.empty();
        if (feature instanceof Feature.Hole hole) {
            kind = FlatKind.HOLE;
            across = Optional.of(hole.diameter());
        } else if (feature instanceof Feature.Slot slot) {
            kind = FlatKind.SLOT;
            across = Optional.of(slot.slotWidth());
            lengthwise = Optional.of(slot.slotLength());
        } else if (feature instanceof Feature.FoldLine) {
            kind = FlatKind.FOLD_LINE;
            face = Face.FLESH;
        }
        return new FlatFeature(
                place.rowId(),
                kind,
                place.piece().id(),
                place.layer(),
                Length.ofMm(place.flatMm()),
                Length.ofMm(strap.flatLength() - place.flatMm()),
                face,
                across,
                lengthwise);
    }

    /** A fold is marked on its inside face, where the mark does not show. */
    private List<FoldZone> folds() {
        List<FoldZone> folds = new ArrayList<>();
        for (ReadSection section : sections) {
            section.fold().ifPresent(fold -> {
                PlacedPiece piece = placed(section);
                folds.add(new FoldZone(
                        section.id(),
                        Length.ofMm(piece.flatStart()),
                        Length.ofMm(piece.flatAt(piece.piece().middleOutsideMm())),
                        Length.ofMm(piece.flatEnd()),
                        Prepared.by(fold.preparation()),
                        Length.ofMm(fold.rule().webMm() > 0 ? fold.rule().webMm() : fold.thicknessMm()),
                        fold.outside().other()));
            });
        }
        return folds;
    }

    private List<SkiveZone> skiveZones() {
        return skives.zones().stream()
                .map(zone -> new SkiveZone(
                        zone.sectionId(),
                        Length.ofMm(zone.rampStart()),
                        Length.ofMm(zone.fullStart()),
                        Length.ofMm(zone.fullEnd()),
                        Length.ofMm(zone.rampEnd()),
                        Length.ofMm(zone.thicknessMm()),
                        Face.FLESH))
                .toList();
    }

    /** Stitches are pricked on the face that shows. */
    private FlatStitchRow stitchRow(FeaturePlaces.Row row) {
        PlacedPiece piece = row.start().piece();
        return new FlatStitchRow(
                row.start().rowId(),
                piece.id(),
                row.start().layer(),
                Length.ofMm(row.fromMm()),
                Length.ofMm(row.toMm()),
                Length.ofMm(strap.flatLength() - row.toMm()),
                row.row().margin(),
                showing(piece.id()) == Showing.FLESH ? Face.FLESH : Face.GRAIN);
    }
}
