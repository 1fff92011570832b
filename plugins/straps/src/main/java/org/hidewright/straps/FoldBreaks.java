package org.hidewright.straps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hidewright.straps.geometry.Piece;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.Pose;

/**
 * Where the picture of a folded strap is broken off: slabs square to one direction in which nothing happens, every layer
 * running straight through. Left out of all layers alike, they leave each fold as it is.
 */
final class FoldBreaks {
    private static final double AROUND_MM = 14;
    private static final double WORTH_LEAVING_OUT_MM = 30;
    private static final double PARALLEL = 1e-6;
    private static final int SAMPLES = 16;

    /** A stretch along the direction. */
    record Slab(double from, double to) {}

    private final double heading;
    private final double shortEnoughMm;
    private final List<Slab> busy = new ArrayList<>();

    /**
     * Looks along a direction.
     *
     * @param heading 0 for breaks along the paper, a right angle for breaks up it
     * @param shortEnoughMm a picture no longer than this is left whole
     */
    FoldBreaks(double heading, double shortEnoughMm) {
        this.heading = heading;
        this.shortEnoughMm = shortEnoughMm;
    }

    /** Whether a section runs in this direction, either way. */
    boolean runsAlong(PlacedPiece piece) {
        return piece.straight() && Math.abs(Math.sin(piece.start().heading() - heading)) < PARALLEL;
    }

    double at(Pose pose) {
        return pose.x() * Math.cos(heading) + pose.y() * Math.sin(heading);
    }

    /** Keeps a section in the picture: the ends of one that runs along, all of any other. */
    void keep(PlacedPiece piece, double hardwareMm) {
        if (runsAlong(piece)) {
            keep(at(piece.start()), at(piece.start()));
            keep(at(piece.end()), at(piece.end()));
            return;
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double depth = piece.thickness() + hardwareMm;
        for (int i = 0; i <= SAMPLES; i++) {
            Pose grain = piece.poseAt(piece.outsideLength() * i / SAMPLES);
            for (double beside : new double[] {depth, -depth}) {
                low = Math.min(low, at(grain.towardsGrain(beside)));
                high = Math.max(high, at(grain.towardsGrain(beside)));
            }
        }
        keep(low, high);
    }

    /** Keeps what lies between two places, and a little around it. */
    void keep(double one, double other) {
        busy.add(new Slab(Math.min(one, other) - AROUND_MM, Math.max(one, other) + AROUND_MM));
    }

    /** What may be left out, in order. */
    List<Slab> slabs() {
        busy.sort(Comparator.comparingDouble(Slab::from));
        List<Slab> slabs = new ArrayList<>();
        double reached = busy.get(0).to();
        double first = busy.get(0).from();
        for (Slab next : busy) {
            if (next.from() - reached > WORTH_LEAVING_OUT_MM) {
                slabs.add(new Slab(reached, next.from()));
            }
            reached = Math.max(reached, next.to());
        }
        return reached - first > shortEnoughMm + 2 * AROUND_MM ? slabs : List.of();
    }

    /** The slabs as lengths along a straight section from its start; none where it does not run this way. */
    List<Slab> cuts(PlacedPiece piece, List<Slab> slabs) {
        List<Slab> cuts = new ArrayList<>();
        if (!runsAlong(piece) || !(piece.piece() instanceof Piece.Run)) {
            return cuts;
        }
        double start = at(piece.start());
        double end = at(piece.end());
        for (Slab slab : slabs) {
            if (slab.from() > Math.min(start, end) && slab.to() < Math.max(start, end)) {
                double one = Math.abs(slab.from() - start);
                double other = Math.abs(slab.to() - start);
                cuts.add(new Slab(Math.min(one, other), Math.max(one, other)));
            }
        }
        cuts.sort(Comparator.comparingDouble(Slab::from));
        return cuts;
    }
}
