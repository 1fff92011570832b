package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Box;

/** Looks for a square place on a sheet where nothing is drawn. */
final class FreePlace {
    private static final double STEP = 4;
    private static final double MARGIN = 1.5;

    private final Box sheet;
    private final double side;
    private final List<double[]> taken = new ArrayList<>();

    FreePlace(Box sheet, double sideMm) {
        this.sheet = sheet;
        this.side = sideMm;
    }

    /** Says that something is drawn at a place; places outside the sheet do not count. */
    void taken(double x, double y) {
        if (x >= sheet.minX() && x <= sheet.maxX() && y >= sheet.minY() && y <= sheet.maxY()) {
            taken.add(new double[] {x, y});
        }
    }

    /** The upper left corner of a free square, the lowest on the sheet and of those the rightmost. */
    Optional<double[]> place() {
        for (double y = sheet.maxY() - side; y >= sheet.minY(); y -= STEP) {
            for (double x = sheet.maxX() - side; x >= sheet.minX(); x -= STEP) {
                if (isFree(x, y)) {
                    return Optional.of(new double[] {x, y});
                }
            }
        }
        return Optional.empty();
    }

    private boolean isFree(double x, double y) {
        return taken.stream()
                .noneMatch(ink -> ink[0] > x - MARGIN
                        && ink[0] < x + side + MARGIN
                        && ink[1] > y - MARGIN
                        && ink[1] < y + side + MARGIN);
    }
}
