package org.hidewright.core.item;

import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Motion;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.StitchLine;

/** A part laid somewhere else with all that is on it, but for its edges, which are counted along the outline. */
final class TurnedOver {
    private TurnedOver() {}

    static Part of(Part part, Motion motion) {
        Part.Builder moved = Part.of(part.id(), part.name(), moved(part.outline(), motion))
                .leather(part.leather())
                .oversize(part.oversize())
                .sanded(part.sanded())
                .pieces(part.count(), part.mirrored());
        part.thickness().ifPresent(moved::thickness);
        part.shows().forEach(moved::shows);
        part.cutOuts().forEach(cutOut -> moved.cutOut(moved(cutOut, motion)));
        part.holes().forEach(hole -> moved.hole(Hole.of(hole.id(), motion.apply(hole.centre()), hole.diameter())));
        part.stitchLines()
                .forEach(line -> moved.stitchLine(StitchLine.of(
                        line.id(),
                        moved(line.line(), motion),
                        line.holes().stream().map(motion::apply).toList())));
        part.folds()
                .forEach(fold -> moved.fold(
                        Fold.of(fold.id(), moved(fold.line(), motion), fold.insideRadius(), fold.outside())));
        part.marks().forEach(mark -> moved.mark(moved(mark, motion)));
        part.direction().ifPresent(direction -> moved.direction(direction(direction, motion)));
        return moved.build();
    }

    private static Path moved(Path path, Motion motion) {
        return Curve.of(path).moved(motion).path(path.role());
    }

    private static double direction(double direction, Motion motion) {
        Point origin = Point.of(0, 0);
        return motion.apply(origin).directionTo(motion.apply(origin.towards(direction, 1)));
    }
}
