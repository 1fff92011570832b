package org.hidewright.straps;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.straps.geometry.Face;
import org.hidewright.straps.geometry.FoldedStrap;
import org.hidewright.straps.geometry.PlacedPiece;
import org.hidewright.straps.geometry.PlacedStretch;
import org.hidewright.straps.geometry.Pose;
import org.hidewright.straps.geometry.Stack;
import org.hidewright.straps.geometry.Stretch;

/** Names beside a folded strap, never on it: on the side of a layer that is free, or led out past what lies on it. */
final class FoldedNames {
    private static final double LETTER_MM = 2.2;
    private static final double CLEAR_MM = 1.5;
    private static final double LETTER_WIDTH_MM = 1.3;
    private static final int USUAL_LETTERS = 10;

    /** Where along each pictured part a name may stand, the best first. */
    private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};

    private final PicturedStrap pictured;
    private final Stack stack;
    private final List<Pose> taken = new ArrayList<>();

    FoldedNames(FoldedStrap strap, double glueMm, PicturedStrap pictured) {
        this.stack = new Stack(strap, glueMm);
        this.pictured = pictured;
    }

    /** Which way out of a layer, and how far the outermost face lies that way from the layer’s own grain. */
    private record WayOut(int side, double grainToFaceMm, boolean free) {}

    private WayOut out(PlacedPiece piece, double along) {
        if (!piece.straight()) {
            return outside(piece) == Face.GRAIN ? new WayOut(1, 0, true) : new WayOut(-1, -piece.thickness(), true);
        }
        List<Stack.Layer> layers = stack.through(piece, along);
        int own = 0;
        while (layers.get(own).piece() != piece) {
            own++;
        }
        double top = layers.get(layers.size() - 1).highMm();
        double bottom = layers.get(0).lowMm();
        if (own > 0 || layers.size() == 1) {
            return new WayOut(1, top, own == layers.size() - 1);
        }
        return new WayOut(-1, bottom, true);
    }

    private static Face outside(PlacedPiece bend) {
        return bend.stretches().stream()
                .map(PlacedStretch::stretch)
                .filter(Stretch.Arc.class::isInstance)
                .map(stretch -> ((Stretch.Arc) stretch).outside())
                .findFirst()
                .orElseThrow();
    }

    /** Nothing else is to be written near a place. */
    void keepClear(Pose place) {
        taken.add(place);
    }

    /** The name of a straight section, where it stands freest. */
    void section(Drawing.Builder drawing, PlacedPiece piece) {
        double enough = LETTER_WIDTH_MM * (piece.id().length() + USUAL_LETTERS) / 2;
        double best = -1;
        double at = 0;
        for (double along : pictured.places(piece, SHARES)) {
            Pose end = end(pictured.pose(piece, along), out(piece, along), CLEAR_MM);
            double room =
                    taken.stream().mapToDouble(other -> other.distanceTo(end)).reduce(enough, Math::min);
            if (room > best + 1e-9) {
                best = room;
                at = along;
            }
        }
        WayOut out = out(piece, at);
        name(drawing, piece.id(), pictured.pose(piece, at), out, piece.thickness(), CLEAR_MM);
    }

    /** The name of a fitting or a line, at the end of its axis. */
    void feature(Drawing.Builder drawing, FeaturePlaces.Pierced place, double beyondMm) {
        Pose grain = pictured.pose(place.piece(), place.alongMm());
        WayOut out = out(place.piece(), place.alongMm());
        name(drawing, place.feature().id(), grain, out, place.piece().thickness(), beyondMm);
    }

    private static Pose end(Pose grain, WayOut out, double beyondMm) {
        return grain.towardsGrain(out.grainToFaceMm() + out.side() * beyondMm);
    }

    private void name(
            Drawing.Builder drawing, String name, Pose grain, WayOut out, double thicknessMm, double beyondMm) {
        Pose end = end(grain, out, beyondMm);
        if (!out.free()) {
            drawing.line(
                    Role.NOTE, SideOfLeather.point(grain.towardsGrain(-thicknessMm / 2)), SideOfLeather.point(end));
        }
        keepClear(end);
        drawing.label(name, SideOfLeather.point(end), anchor(grain, out.side()), LETTER_MM);
    }

    /** The text stands off the leather on the side it is named on. */
    private static Anchor anchor(Pose grain, int side) {
        Pose one = grain.towardsGrain(side);
        Point way = Point.of(one.x() - grain.x(), one.y() - grain.y());
        if (Math.abs(way.y()) >= Math.abs(way.x())) {
            return way.y() > 0 ? Anchor.BOTTOM : Anchor.TOP;
        }
        return way.x() > 0 ? Anchor.LEFT : Anchor.RIGHT;
    }
}
