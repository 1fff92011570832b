package org.hidewright.layout;

import java.util.Arrays;
import org.hidewright.layout.task.Inner;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Zone;

/**
 * Pieces, leather and places in the steps in which places are written down, in place of millimetres: what is decimal, as 107.95 mm, is a
 * whole number of them, and whole numbers add up without rounding. So two halves of a panel lie on it edge to edge, and are seen to do so.
 */
final class Steps {
    /** Steps of a millimetre. */
    static final double IN_A_MM = 1e4;

    /** What is nearer to a whole step than so, in steps, came off it by rounding. */
    private static final double ROUNDING = 1e-3;

    private Steps() {}

    private static double of(double mm) {
        double steps = mm * IN_A_MM;
        double whole = Math.rint(steps);
        return Math.abs(steps - whole) < ROUNDING ? whole : steps;
    }

    private static Outline of(Outline outline) {
        return new Outline(
                Arrays.stream(outline.xs()).map(Steps::of).toArray(),
                Arrays.stream(outline.ys()).map(Steps::of).toArray());
    }

    static Piece of(Piece piece) {
        return new Piece(
                piece.name(),
                of(piece.outline()),
                piece.turning(),
                piece.avoids(),
                piece.inner().stream()
                        .map(inner -> new Inner(of(inner.outline()), inner.avoids()))
                        .toList());
    }

    static Sheet of(Sheet sheet) {
        return new Sheet(
                sheet.name(),
                of(sheet.outline()),
                sheet.holes().stream().map(Steps::of).toList(),
                sheet.zones().stream()
                        .map(zone -> new Zone(of(zone.outline()), zone.kind()))
                        .toList(),
                sheet.cost());
    }

    static Laid of(Laid laid) {
        return new Laid(laid.piece(), laid.sheet(), laid.angle(), of(laid.dx()), of(laid.dy()));
    }

    /** A place in steps as one in millimetres. */
    static Laid inMm(Laid laid) {
        return new Laid(laid.piece(), laid.sheet(), laid.angle(), laid.dx() / IN_A_MM, laid.dy() / IN_A_MM);
    }
}
