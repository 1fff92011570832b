package org.hidewright.window.piece;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;

/** Kinds of line that can be shown or left out, by what they mean at the bench. */
public enum LineKind {
    CUTS,
    STITCHES,
    FOLDS,
    MARKS,
    DIRECTION,
    MEASURES,
    NAMES,
    OTHER;

    /** What a shape is. */
    public static LineKind of(Shape shape) {
        if (shape instanceof DimensionLine) {
            return MEASURES;
        }
        if (shape instanceof Label) {
            return NAMES;
        }
        return of(shape.role());
    }

    private static LineKind of(Role role) {
        return switch (role) {
            case CUT, FINISHED_EDGE, INNER_CUT -> CUTS;
            case STITCH, STITCH_HOLE -> STITCHES;
            case FOLD -> FOLDS;
            case MARK -> MARKS;
            case DIRECTION -> DIRECTION;
            default -> OTHER;
        };
    }

    /** A drawing without some kinds; empty where nothing is left of it. */
    public static Optional<Drawing> without(Drawing drawing, Set<LineKind> left) {
        List<Shape> shapes = drawing.shapes().stream()
                .filter(shape -> !left.contains(of(shape)))
                .toList();
        return shapes.isEmpty() ? Optional.empty() : Optional.of(Drawing.of(shapes));
    }
}
