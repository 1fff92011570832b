package org.hidewright.parts;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Parallel;
import org.hidewright.api.measure.Length;

/** Where a line runs on a part. */
public sealed interface Along permits Along.AllRound, Along.Part, Along.Between {
    /** At a margin inside the whole outline. */
    record AllRound(
            @Asked(unit = "mm", min = "0.5 mm", max = "200 mm", usual = "2-10 mm", preset = "4 mm")
            Length margin) implements Along {
        @Override
        public List<Curve> lines(Curve outline) {
            return Parallel.of(outline, margin.mm(), Corner.ROUND);
        }
    }

    /** At a margin inside a stretch of the outline. */
    record Part(
            @Asked(unit = "mm", min = "0 mm", max = "50 m", example = "0 mm")
            Length from,

            @Asked(unit = "mm", min = "0 mm", max = "50 m", example = "420 mm")
            Length to,

            @Asked(unit = "mm", min = "0.5 mm", max = "200 mm", usual = "2-10 mm", preset = "4 mm")
            Length margin)
            implements Along {
        @Override
        public List<Curve> lines(Curve outline) {
            return Parallel.of(outline.between(from.mm(), to.mm()), margin.mm(), Corner.ROUND);
        }

        @Override
        public Optional<Double> end() {
            return Optional.of(Math.max(from.mm(), to.mm()));
        }
    }

    /** Straight between two places. */
    record Between(
            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "20 mm")
            Length fromX,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "10 mm")
            Length fromY,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "20 mm")
            Length toX,

            @Asked(unit = "mm", min = "-10 m", max = "10 m", example = "110 mm")
            Length toY)
            implements Along {
        @Override
        public List<Curve> lines(Curve outline) {
            Point from = Point.of(fromX.mm(), fromY.mm());
            Point to = Point.of(toX.mm(), toY.mm());
            return from.equals(to) ? List.of() : List.of(Curve.open(List.of(Segment.line(from, to))));
        }
    }

    /**
     * The line on a part; none where it has no room, several where a narrow place parts it.
     *
     * @param outline counter-clockwise, so that the leather is to its left
     */
    List<Curve> lines(Curve outline);

    /** How far along the outline it is counted, millimetres. */
    default Optional<Double> end() {
        return Optional.empty();
    }
}
