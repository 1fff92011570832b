package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hidewright.api.drawing.Point;
import org.junit.jupiter.api.Test;

/**
 * Lines beside seeded outlines, against distances to a dense row of places on the outline: every place of a result is as far
 * away as asked, and every place that is as far away and not nearer to something else is on a result. The row is 0.04 mm
 * apart, so a distance of 1 mm is told to 0.0002 mm.
 */
class BesideSeededOutlinesTest {
    private static final double WITHIN_MM = 0.005;
    private static final double STEP_MM = 0.04;

    @Test
    void everyPlaceIsAsFarAwayAsAskedAndNoneIsMissing() {
        int count = Seeds.count(300, 10_000);
        List<String> wrong = new ArrayList<>();
        int rings = 0;
        for (long seed = 0; seed < count && wrong.size() < 20; seed++) {
            Curve outline = SeededOutlines.outline(seed);
            Random random = new Random(~seed);
            double distance = (random.nextBoolean() ? 1 : -1) * (1 + 11 * random.nextDouble() * random.nextDouble());
            Corner corner = random.nextBoolean() ? Corner.ROUND : Corner.POINTED;
            try {
                List<Curve> beside = Parallel.of(outline, distance, corner);
                rings += beside.size();
                check("seed " + seed + ", " + distance + " mm, " + corner, outline, distance, corner, beside, wrong);
            } catch (RuntimeException e) {
                wrong.add("seed " + seed + ", " + distance + " mm: " + e);
            }
        }
        assertEquals(List.of(), wrong);
        assertEquals(true, rings > count / 2, "only " + rings + " rings");
    }

    private static void check(
            String what, Curve outline, double distance, Corner corner, List<Curve> beside, List<String> wrong) {
        double[][] row = row(outline);
        double asked = Math.abs(distance);
        for (Curve curve : beside) {
            for (double along = 0; along < curve.length(); along += 0.3) {
                Point place = curve.at(along).point();
                double off = least(row, place) - asked;
                if (off < -WITHIN_MM || off > WITHIN_MM && corner == Corner.ROUND) {
                    wrong.add(what + ": " + place + " is off by " + off);
                    return;
                }
            }
        }
        for (int i = 0; i < row.length; i += 5) {
            Point place = Point.of(row[i][0] - distance * row[i][3], row[i][1] + distance * row[i][2]);
            if (least(row, place) > asked - 1e-3 && outline.distanceTo(place) >= asked - 1e-9) {
                double missing = beside.stream()
                        .mapToDouble(curve -> curve.distanceTo(place))
                        .min()
                        .orElse(Double.POSITIVE_INFINITY);
                boolean underAPoint =
                        corner == Corner.POINTED && !beside.isEmpty() && Sides.isLeftOf(beside, place) == distance < 0;
                if (missing > WITHIN_MM && !underAPoint) {
                    wrong.add(what + ": nothing at " + place + ", the nearest is " + missing + " away");
                    return;
                }
            }
        }
    }

    /** Places on the outline and the direction there: x, y, cos, sin. */
    private static double[][] row(Curve outline) {
        List<double[]> row = new ArrayList<>();
        for (int segment = 0; segment < outline.segments().size(); segment++) {
            double from = outline.startOf(segment);
            double length = outline.startOf(segment + 1) - from;
            int count = (int) Math.ceil(length / STEP_MM);
            for (int i = 0; i < count; i++) {
                Spot spot = outline.at(from + length * i / count);
                row.add(new double[] {
                    spot.point().x(), spot.point().y(), Math.cos(spot.direction()), Math.sin(spot.direction())
                });
            }
        }
        return row.toArray(double[][]::new);
    }

    private static double least(double[][] row, Point place) {
        double least = Double.POSITIVE_INFINITY;
        for (double[] at : row) {
            double dx = at[0] - place.x();
            double dy = at[1] - place.y();
            least = Math.min(least, dx * dx + dy * dy);
        }
        return Math.sqrt(least);
    }
}
