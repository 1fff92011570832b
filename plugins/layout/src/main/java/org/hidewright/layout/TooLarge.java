package org.hidewright.layout;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;

/**
 * Finds the parts that are too large for every sheet, before anything is searched for. Only what is certain is said: at no angle that a
 * part may lie at is it at most as wide and as high as a sheet. One that is not said may still fit nowhere.
 */
final class TooLarge {
    /** Angles that are looked at lie so far apart at most. */
    private static final double STEP = Math.toRadians(0.25);

    private final Set<Sheet> sheets = new HashSet<>();

    TooLarge(List<CutSheet> sheets) {
        sheets.forEach(sheet -> this.sheets.add(sheet.exact()));
    }

    /** The names of those parts. */
    Set<String> of(List<CutPiece> pieces) {
        Set<String> known = new HashSet<>();
        Set<String> large = new LinkedHashSet<>();
        for (CutPiece piece : pieces) {
            if (known.add(piece.part().id())
                    && sheets.stream()
                            .noneMatch(sheet -> mayFit(
                                    piece.exact().outline(), piece.exact().turning(), sheet))) {
                large.add(piece.part().id());
            }
        }
        return large;
    }

    private static boolean mayFit(Outline part, Turning turning, Sheet sheet) {
        Extent room = Extent.of(sheet.outline(), 0);
        Extent straight = Extent.of(part, 0);
        // between two angles no side grows by more than the part is across, times half the angle between them
        double between = Math.hypot(straight.width(), straight.height()) * STEP / 2;
        return turning.spread(STEP).anyMatch(angle -> Extent.of(part, angle).isWithin(room, between));
    }

    /** How wide and high an outline is at an angle. */
    private record Extent(double width, double height) {
        static Extent of(Outline outline, double angle) {
            double cos = Turning.cos(angle);
            double sin = Turning.sin(angle);
            double left = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int corner = 0; corner < outline.corners(); corner++) {
                double x = cos * outline.x(corner) - sin * outline.y(corner);
                double y = sin * outline.x(corner) + cos * outline.y(corner);
                left = Math.min(left, x);
                right = Math.max(right, x);
                low = Math.min(low, y);
                high = Math.max(high, y);
            }
            return new Extent(right - left, high - low);
        }

        boolean isWithin(Extent room, double slack) {
            return width <= room.width + slack && height <= room.height + slack;
        }
    }
}
