package org.hidewright.stitching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Spacing;
import org.hidewright.api.geometry.Spot;
import org.hidewright.api.measure.Length;

/**
 * The holes of a line, in order.
 *
 * @param line what they are on
 * @param along their places, millimetres from its start
 */
record Marks(Curve line, List<Double> along) {
    /** Of the dot that stands for a hole. */
    private static final double DOT_MM = 0.6;

    static Marks of(Spacing spacing) {
        return new Marks(
                spacing.line(), spacing.marks().stream().map(Spot::along).toList());
    }

    /** Those a line of an item has, or as they come out even at a pitch. */
    static Marks of(SewnLine sewn, String place, double pitchMm, AtCorners corners) throws Refusal {
        Curve line = sewn.curve(place);
        Optional<List<Point>> holes = sewn.holes(place);
        if (holes.isPresent()) {
            return new Marks(
                    line,
                    holes.get().stream().map(hole -> line.nearest(hole).along()).toList());
        }
        return of(Spacing.of(line, pitchMm, corners));
    }

    int count() {
        return along.size();
    }

    /** Gaps between holes that follow each other along the line; of a closed one the last leads back to the first. */
    List<Double> gaps() {
        List<Double> gaps = new ArrayList<>();
        for (int i = 1; i < count(); i++) {
            gaps.add(along.get(i) - along.get(i - 1));
        }
        if (line.isClosed() && count() > 1) {
            gaps.add(along.get(0) + line.length() - along.get(count() - 1));
        }
        return gaps;
    }

    double smallestGap() {
        return gaps().stream().mapToDouble(gap -> gap).min().orElse(line.length());
    }

    double largestGap() {
        return gaps().stream().mapToDouble(gap -> gap).max().orElse(line.length());
    }

    Point point(int mark) {
        return line.at(along.get(mark)).point();
    }

    List<Length> lengths() {
        return along.stream().map(Length::ofMm).toList();
    }

    /** The line with its holes, as large as it is. */
    Drawing.Builder drawn() {
        Drawing.Builder drawing = Drawing.builder();
        drawing.add(line.path(Role.STITCH));
        for (int i = 0; i < count(); i++) {
            drawing.add(Circle.of(Role.STITCH_HOLE, point(i), DOT_MM));
        }
        return drawing;
    }
}
