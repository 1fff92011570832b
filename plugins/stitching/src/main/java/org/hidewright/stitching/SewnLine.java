package org.hidewright.stitching;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Refusal;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Fault;
import org.hidewright.api.geometry.Faults;
import org.hidewright.api.geometry.PathData;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Length;

/** Where a line of stitches runs. */
public sealed interface SewnLine permits SewnLine.Straight, SewnLine.Drawn, SewnLine.OfItem {
    NoticeKind UNREADABLE = NoticeKind.stop("line-unreadable");
    NoticeKind FAULTY = NoticeKind.stop("line-faulty");
    NoticeKind NOT_ON_ITEM = NoticeKind.stop("line-not-on-item");
    List<NoticeKind> NOTICES = List.of(UNREADABLE, FAULTY, NOT_ON_ITEM);

    /** Straight, of which only the length counts. */
    record Straight(
            @Asked(unit = "mm", min = "1 mm", max = "20 m", usual = "20 mm-2 m", example = "180 mm")
            Length length) implements SewnLine {
        @Override
        public Curve curve(String place) {
            return Curve.open(List.of(Segment.line(Point.of(0, 0), Point.of(length.mm(), 0))));
        }
    }

    /** Written as path data of SVG, in millimetres, y up; closed where the stitches go all the way round. */
    record Drawn(
            @Asked(example = "M 0 40 V 15 A 15 15 0 0 1 30 15 V 40")
            String data) implements SewnLine {
        @Override
        public Curve curve(String place) throws Refusal {
            Curve curve;
            try {
                curve = PathData.read(data);
            } catch (PathData.Unreadable e) {
                String near = e.near().isEmpty() ? "…" : e.near();
                throw new Refusal(UNREADABLE.at(place, e.getMessage(), near));
            }
            List<Fault> faults = Faults.of(curve);
            if (!faults.isEmpty()) {
                Point fault = faults.get(0).place();
                throw new Refusal(FAULTY.at(place, Length.ofMm(fault.x()), Length.ofMm(fault.y())));
            }
            return curve;
        }
    }

    /**
     * A line of an item.
     *
     * @param line its part and its own name: {@code front.rim}
     */
    record OfItem(
            @Asked Item item, @Asked(example = "front.rim") String line) implements SewnLine {
        @Override
        public Curve curve(String place) throws Refusal {
            return Curve.of(stitches(place).line());
        }

        @Override
        public Optional<List<Point>> holes(String place) throws Refusal {
            List<Point> holes = stitches(place).holes();
            return holes.isEmpty() ? Optional.empty() : Optional.of(holes);
        }

        private StitchLine stitches(String place) throws Refusal {
            return item.parts().stream()
                    .flatMap(part -> part.stitchLines().stream()
                            .filter(stitches -> new OnPart(part.id(), stitches.id())
                                    .toString()
                                    .equals(line.strip())))
                    .findFirst()
                    .orElseThrow(() -> new Refusal(NOT_ON_ITEM.at(place, line, there())));
        }

        private String there() {
            return item.parts().stream()
                    .flatMap(part -> part.stitchLines().stream().map(stitches -> new OnPart(part.id(), stitches.id())))
                    .map(OnPart::toString)
                    .sorted()
                    .collect(Collectors.joining(", "));
        }
    }

    /**
     * The line.
     *
     * @param place the question it answers, for what is told of it
     */
    Curve curve(String place) throws Refusal;

    /** The holes it has already, in order; empty where they are still to be spaced. */
    default Optional<List<Point>> holes(String place) throws Refusal {
        return Optional.empty();
    }
}
