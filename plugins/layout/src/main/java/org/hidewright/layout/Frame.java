package org.hidewright.layout;

import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;

/** How a sheet as it is drawn is seen with its backbone from left to right: as it is, or a quarter turned, without rounding. */
enum Frame {
    AS_DRAWN,
    /** Clockwise, so that what runs up runs to the right. */
    QUARTER_TURNED;

    static Frame of(Backbone backbone) {
        return backbone == Backbone.UP_THE_SHEET ? QUARTER_TURNED : AS_DRAWN;
    }

    /** The place mirrored about the middle of a sheet along its backbone. */
    Point mirrored(Point place, Box sheet) {
        return this == AS_DRAWN
                ? Point.of(place.x(), sheet.minY() + sheet.maxY() - place.y())
                : Point.of(sheet.minX() + sheet.maxX() - place.x(), place.y());
    }

    Outline seen(Outline drawn) {
        if (this == AS_DRAWN) {
            return drawn;
        }
        double[] y = drawn.xs();
        for (int corner = 0; corner < y.length; corner++) {
            y[corner] = -y[corner];
        }
        return new Outline(drawn.ys(), y);
    }

    /** A piece that lies on the sheet as it is drawn. */
    Laid seen(Laid drawn) {
        return this == AS_DRAWN
                ? drawn
                : new Laid(drawn.piece(), drawn.sheet(), drawn.angle() - Math.PI / 2, drawn.dy(), -drawn.dx());
    }

    /** Where a piece lies on the sheet as it is drawn. */
    Laid drawn(Laid seen) {
        return this == AS_DRAWN
                ? seen
                : new Laid(seen.piece(), seen.sheet(), seen.angle() + Math.PI / 2, -seen.dy(), seen.dx());
    }
}
