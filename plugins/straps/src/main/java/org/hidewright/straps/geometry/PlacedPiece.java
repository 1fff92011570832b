package org.hidewright.straps.geometry;

import java.util.List;

/** A section in its place, on the flat strap and on the folded one. */
public final class PlacedPiece {
    private static final double ROUNDING_MM = 1e-9;

    private final Piece piece;
    private final Pose start;
    private final double flatStart;
    private final List<PlacedStretch> stretches;

    PlacedPiece(Piece piece, Pose start, double flatStart) {
        this.piece = piece;
        this.start = start;
        this.flatStart = flatStart;
        this.stretches = piece.placed(start);
    }

    public Piece piece() {
        return piece;
    }

    public String id() {
        return piece.id();
    }

    public Pose start() {
        return start;
    }

    public Pose end() {
        return piece.end(start);
    }

    public List<PlacedStretch> stretches() {
        return stretches;
    }

    public boolean straight() {
        return piece instanceof Piece.Run;
    }

    public double flatStart() {
        return flatStart;
    }

    public double flatLength() {
        return stretches.stream()
                .mapToDouble(placed -> placed.stretch().flatMm())
                .sum();
    }

    public double flatEnd() {
        return flatStart + flatLength();
    }

    /** Length on the outside face of the folded section. */
    public double outsideLength() {
        return stretches.stream()
                .mapToDouble(placed -> placed.stretch().outsideMm())
                .sum();
    }

    /** Thickness of the first stretch; only a turn-back can have another later. */
    public double thickness() {
        return stretches.get(0).stretch().thicknessMm();
    }

    /** Thickness of the last stretch. */
    public double thicknessAtEnd() {
        return stretches.get(stretches.size() - 1).stretch().thicknessMm();
    }

    /** Whether a distance along the outside face lies on this section. */
    public boolean holds(double outsideMm) {
        return outsideMm >= -ROUNDING_MM && outsideMm <= outsideLength() + ROUNDING_MM;
    }

    /**
     * The place on the flat strap of a place on the folded one.
     *
     * @param outsideMm distance from the start of the section along its outside face
     */
    public double flatAt(double outsideMm) {
        double left = outsideMm;
        double flat = flatStart;
        for (PlacedStretch placed : stretches) {
            Stretch stretch = placed.stretch();
            if (left <= stretch.outsideMm()) {
                return flat + stretch.flatMm() * share(left, stretch);
            }
            left -= stretch.outsideMm();
            flat += stretch.flatMm();
        }
        return flat;
    }

    /** The pose on the grain face of a place on the folded strap, its heading along the strap. */
    public Pose poseAt(double outsideMm) {
        double left = outsideMm;
        for (PlacedStretch placed : stretches) {
            if (left <= placed.stretch().outsideMm()) {
                return placed.at(share(left, placed.stretch()));
            }
            left -= placed.stretch().outsideMm();
        }
        return stretches.get(stretches.size() - 1).end();
    }

    private static double share(double outsideMm, Stretch stretch) {
        return stretch.outsideMm() > 0 ? outsideMm / stretch.outsideMm() : 0;
    }
}
