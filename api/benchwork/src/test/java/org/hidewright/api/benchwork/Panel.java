package org.hidewright.api.benchwork;

import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.StitchLine;

/** A panel that tests work on, and what is on it. */
final class Panel {
    private Panel() {}

    static Piece panel(double width, double height, double radius) throws NoRoom {
        return Piece.of("panel", "Panel", Outlines.roundedRectangle(Point.of(0, 0), width, height, radius), 2);
    }

    static StitchLine line(Piece piece, String id) {
        return piece.part().stitchLines().stream()
                .filter(line -> line.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
