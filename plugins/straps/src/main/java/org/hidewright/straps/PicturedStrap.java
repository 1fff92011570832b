package org.hidewright.straps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.straps.FoldBreaks.Slab;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Skives;

/** A folded strap as its picture shows it: long dull stretches of straight leather left out, the rest moved together. */
final class PicturedStrap {
    private static final double GAP_MM = 6;
    private static final double SHORT_ENOUGH_MM = 150;

    /** An end where the strap is broken off, on its grain face, and how thick it is there. */
    record Broken(Pose grain, double thicknessMm) {}

    private record Shown(double fromMm, double toMm, PlacedPiece piece) {
        double lengthMm() {
            return toMm - fromMm;
        }
    }

    private final List<FoldedStrap> parts = new ArrayList<>();
    private final List<Broken> broken = new ArrayList<>();
    private final Map<String, List<Shown>> shown = new HashMap<>();

    PicturedStrap(FoldedStrap strap, List<ReadSection> sections, Skives skives, List<FeaturePlaces.Pierced> axes) {
        List<FoldBreaks> directions =
                List.of(new FoldBreaks(0, SHORT_ENOUGH_MM), new FoldBreaks(Math.PI / 2, SHORT_ENOUGH_MM));
        Map<FoldBreaks, List<Slab>> slabs = new HashMap<>();
        for (FoldBreaks direction : directions) {
            keepWhatHappens(direction, strap, sections, skives, axes);
            slabs.put(direction, direction.slabs());
        }
        Pose start = Pose.START;
        List<Piece> part = new ArrayList<>();
        List<Slab> spans = new ArrayList<>();
        for (PlacedPiece piece : strap.pieces()) {
            double from = 0;
            for (FoldBreaks direction : directions) {
                for (Slab cut : direction.cuts(piece, slabs.get(direction))) {
                    part.add(run(piece, cut.from() - from));
                    spans.add(new Slab(from, cut.from()));
                    start = close(start, part, spans).ahead(GAP_MM);
                    broken.add(new Broken(start, piece.thickness()));
                    from = cut.to();
                }
            }
            part.add(from > 0 ? run(piece, piece.outsideLength() - from) : piece.piece());
            spans.add(new Slab(from, piece.outsideLength()));
        }
        close(start, part, spans);
        broken.remove(broken.size() - 1); // the end of the strap itself
    }

    private static Piece run(PlacedPiece piece, double length) {
        return new Piece.Run(piece.id(), length, piece.thickness());
    }

    /** Lays a part, and notes where it ends. */
    private Pose close(Pose start, List<Piece> part, List<Slab> spans) {
        FoldedStrap laid = new FoldedStrap(part, start);
        parts.add(laid);
        for (int i = 0; i < part.size(); i++) {
            PlacedPiece piece = laid.pieces().get(i);
            Slab span = spans.get(i);
            shown.computeIfAbsent(piece.id(), id -> new ArrayList<>()).add(new Shown(span.from(), span.to(), piece));
        }
        PlacedPiece last = laid.pieces().get(part.size() - 1);
        part.clear();
        spans.clear();
        broken.add(new Broken(last.end(), last.thicknessAtEnd()));
        return last.end();
    }

    private static void keepWhatHappens(
            FoldBreaks direction,
            FoldedStrap strap,
            List<ReadSection> sections,
            Skives skives,
            List<FeaturePlaces.Pierced> axes) {
        for (ReadSection section : sections) {
            double hardware = section.fold()
                    .flatMap(ReadSection.Fold::bar)
                    .map(bar -> Math.max(bar.thicknessMm(), bar.widthMm()))
                    .orElse(0.0);
            direction.keep(strap.piece(section.id()).orElseThrow(), hardware);
        }
        for (FeaturePlaces.Pierced axis : axes) {
            double at = direction.at(axis.piece().poseAt(axis.alongMm()));
            direction.keep(at, at);
        }
        for (Skives.Zone zone : skives.zones()) {
            direction.keep(direction.at(pose(strap, zone.rampStart())), direction.at(pose(strap, zone.fullStart())));
            direction.keep(direction.at(pose(strap, zone.fullEnd())), direction.at(pose(strap, zone.rampEnd())));
        }
    }

    /** The pose of a flat place, near enough in a bend. */
    private static Pose pose(FoldedStrap strap, double flat) {
        for (PlacedPiece piece : strap.pieces()) {
            if (flat <= piece.flatEnd()) {
                double share = piece.flatLength() > 0 ? (flat - piece.flatStart()) / piece.flatLength() : 0;
                return piece.poseAt(Math.max(0, share) * piece.outsideLength());
            }
        }
        return strap.pieces().get(strap.pieces().size() - 1).end();
    }

    /** The parts it is broken into, in order; one where it is whole. */
    List<FoldedStrap> parts() {
        return List.copyOf(parts);
    }

    /** Where it is broken off. */
    List<Broken> broken() {
        return List.copyOf(broken);
    }

    /** A bend, which is never broken. */
    PlacedPiece bend(String id) {
        return shown.get(id).get(0).piece();
    }

    /** Places of a section that are in the picture: shares of each part shown, of the longest part first. */
    List<Double> places(PlacedPiece piece, double... shares) {
        List<Shown> longestFirst = new ArrayList<>(shown.get(piece.id()));
        longestFirst.sort(Comparator.comparingDouble(Shown::lengthMm).reversed());
        List<Double> places = new ArrayList<>();
        for (double share : shares) {
            longestFirst.forEach(part -> places.add(part.fromMm() + share * part.lengthMm()));
        }
        return places;
    }

    /** Where a place is pictured; the nearest pictured place for one that is left out. */
    Pose pose(PlacedPiece piece, double alongMm) {
        List<Shown> all = shown.get(piece.id());
        Shown in = all.get(0);
        for (Shown part : all) {
            if (alongMm >= part.fromMm() - 1e-9) {
                in = part;
            }
        }
        return in.piece().poseAt(Math.min(alongMm, in.toMm()) - in.fromMm());
    }
}
