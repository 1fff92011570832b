package org.hidewright.straps.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A strap folded section by section, starting with its grain up, seen from the side along its grain face.
 *
 * <p>Which end is held while the rest is folded makes no difference: described from its other end it has the same
 * folds and, counted from that end, the same places.
 */
public final class FoldedStrap {
    private final List<PlacedPiece> pieces = new ArrayList<>();

    /** Lays the sections one after the other. */
    public FoldedStrap(List<? extends Piece> sections) {
        this(sections, Pose.START);
    }

    /** Lays the sections one after the other from a place of its own, to picture them another way round. */
    public FoldedStrap(List<? extends Piece> sections, Pose start) {
        Pose pose = start;
        double flat = 0;
        for (Piece section : sections) {
            PlacedPiece placed = new PlacedPiece(section, pose, flat);
            pieces.add(placed);
            pose = placed.end();
            flat = placed.flatEnd();
        }
    }

    public List<PlacedPiece> pieces() {
        return List.copyOf(pieces);
    }

    public Optional<PlacedPiece> piece(String id) {
        return pieces.stream().filter(piece -> piece.id().equals(id)).findFirst();
    }

    /** Length to cut. */
    public double flatLength() {
        return pieces.isEmpty() ? 0 : pieces.get(pieces.size() - 1).flatEnd();
    }

    /**
     * Where the axis of a fitting, square to the strap at a pose, meets a straight section: the distance from the start
     * of that section, read on its grain face. Empty if it misses the section or runs along it.
     */
    public static Optional<Crossing> crossing(Pose fitting, PlacedPiece straight) {
        Pose run = straight.start();
        double parallel = Math.cos(fitting.heading() - run.heading());
        if (Math.abs(parallel) < 1e-6) {
            return Optional.empty();
        }
        double distance = -fitting.along(run) / parallel;
        if (!straight.holds(distance)) {
            return Optional.empty();
        }
        return Optional.of(new Crossing(distance, fitting.beside(run.ahead(distance)), parallel > 0));
    }

    /**
     * A place where an axis meets a straight section.
     *
     * @param alongMm from the start of the section
     * @param besideMm distance along the axis from the fitting's own grain face, positive on its grain side
     * @param sameWay whether the section runs the same way there, so that its grain looks to the same side
     */
    public record Crossing(double alongMm, double besideMm, boolean sameWay) {}
}
