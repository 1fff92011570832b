package org.hidewright.straps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Pose;

/** Finds the places of holes, slots, lines and stitch rows on the flat strap, layer by layer. */
final class FeaturePlaces {
    static final NoticeKind OUTSIDE_SECTION = NoticeKind.stop("feature-outside-section");
    static final NoticeKind NOT_CROSSED = NoticeKind.stop("feature-not-crossed");
    static final NoticeKind NOT_STRAIGHT = NoticeKind.stop("feature-not-straight");
    static final NoticeKind DUPLICATE_FEATURE = NoticeKind.stop("feature-duplicate-id");
    static final NoticeKind ROW_BACKWARDS = NoticeKind.stop("stitch-row-without-length");
    static final List<NoticeKind> KINDS =
            List.of(OUTSIDE_SECTION, NOT_CROSSED, NOT_STRAIGHT, DUPLICATE_FEATURE, ROW_BACKWARDS);

    private final FoldedStrap strap;
    private final List<Notice> stops = new ArrayList<>();
    private final List<Pierced> pierced = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /**
     * One layer a feature goes through.
     *
     * @param alongMm from the start of the section on its outside face
     * @param layer counted from 1, from the grain side of the section the feature was placed on
     */
    record Pierced(Feature feature, PlacedPiece piece, double alongMm, int layer) {
        double flatMm() {
            return piece.flatAt(alongMm);
        }

        boolean mate() {
            return !piece.id().equals(feature.section());
        }

        String rowId() {
            return mate() ? feature.id() + "-on-" + piece.id() : feature.id();
        }
    }

    /** A stitch row on one layer, its ends in the order of the flat strap. */
    record Row(Feature.StitchRow row, Pierced start, Pierced end) {
        double fromMm() {
            return Math.min(start.flatMm(), end.flatMm());
        }

        double toMm() {
            return Math.max(start.flatMm(), end.flatMm());
        }
    }

    FeaturePlaces(FoldedStrap strap, List<Feature> features) {
        this.strap = strap;
        List<String> ids = new ArrayList<>();
        for (Feature feature : features) {
            if (ids.contains(feature.id())) {
                stops.add(DUPLICATE_FEATURE.at(place(feature), feature.id()));
            }
            ids.add(feature.id());
            List<Pierced> layers = layers(feature, feature.section(), feature.from(), feature.distance());
            if (feature instanceof Feature.StitchRow row) {
                row(row, layers);
            } else {
                pierced.addAll(layers);
            }
        }
    }

    List<Notice> stops() {
        return stops;
    }

    /** Every layer that holes, slots and lines go through, in the order asked. */
    List<Pierced> pierced() {
        return pierced;
    }

    List<Row> rows() {
        return rows;
    }

    static String place(Feature feature) {
        return "features[" + feature.id() + "]";
    }

    private void row(Feature.StitchRow row, List<Pierced> starts) {
        List<Pierced> ends = layers(row, row.toSection(), row.toFrom(), row.toDistance());
        if (starts.isEmpty() || ends.size() != starts.size()) {
            return;
        }
        for (int i = 0; i < starts.size(); i++) {
            Row placed = new Row(row, starts.get(i), ends.get(i));
            if (placed.toMm() - placed.fromMm() < 1e-6) {
                stops.add(ROW_BACKWARDS.at(place(row), row.id()));
            }
            rows.add(placed);
        }
    }

    private List<Pierced> layers(Feature feature, String section, From from, Length distance) {
        Optional<PlacedPiece> found = strap.piece(section);
        if (found.isEmpty()) {
            stops.add(SectionReader.unknown(place(feature), section, ids()));
            return List.of();
        }
        PlacedPiece piece = found.get();
        double along = along(piece, from, distance.mm());
        if (!piece.holds(along)) {
            stops.add(OUTSIDE_SECTION.at(place(feature), feature.id(), section, Length.ofMm(piece.outsideLength())));
            return List.of();
        }
        Pose axis = piece.poseAt(along);
        List<Mate> mates = new ArrayList<>();
        mates.add(new Mate(piece, along, 0));
        for (String through : feature.alsoThrough().orElse(List.of())) {
            mate(feature, axis, through, section).ifPresent(mates::add);
        }
        return mates.stream()
                .map(mate -> new Pierced(feature, mate.piece, mate.alongMm, layer(mates, mate)))
                .toList();
    }

    private record Mate(PlacedPiece piece, double alongMm, double besideMm) {}

    private static int layer(List<Mate> mates, Mate mate) {
        List<Mate> fromGrain = new ArrayList<>(mates);
        fromGrain.sort(Comparator.comparingDouble(Mate::besideMm).reversed());
        return fromGrain.indexOf(mate) + 1;
    }

    private Optional<Mate> mate(Feature feature, Pose axis, String through, String section) {
        Optional<PlacedPiece> found = strap.piece(through);
        if (found.isEmpty()) {
            stops.add(SectionReader.unknown(place(feature), through, ids()));
            return Optional.empty();
        }
        if (!found.get().straight() || through.equals(section)) {
            stops.add(NOT_STRAIGHT.at(place(feature), feature.id(), through));
            return Optional.empty();
        }
        Optional<FoldedStrap.Crossing> crossing = FoldedStrap.crossing(axis, found.get());
        if (crossing.isEmpty()) {
            stops.add(NOT_CROSSED.at(place(feature), feature.id(), section, through));
        }
        return crossing.map(at -> new Mate(found.get(), at.alongMm(), at.besideMm()));
    }

    private static double along(PlacedPiece piece, From from, double distance) {
        if (from == From.START) {
            return distance;
        }
        return from == From.END
                ? piece.outsideLength() - distance
                : piece.piece().middleOutsideMm() + distance;
    }

    private List<String> ids() {
        return strap.pieces().stream().map(PlacedPiece::id).toList();
    }
}
