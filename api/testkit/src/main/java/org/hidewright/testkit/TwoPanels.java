package org.hidewright.testkit;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.AtCorners;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Spacing;
import org.hidewright.api.geometry.Spot;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;

/** A small thing to ask with: panels {@code front} and {@code back}, sewn along {@code rim} by the seam {@code side}. */
final class TwoPanels {
    private static final double WIDTH = 90;
    private static final double HEIGHT = 120;
    private static final double MARGIN = 4;
    private static final double PITCH = 3.85;

    private TwoPanels() {}

    static Item item() {
        return Item.builder()
                .part(panel("front", "Front"))
                .part(panel("back", "Back"))
                .seam(Seam.of("side", List.of(new OnPart("front", "rim"), new OnPart("back", "rim"))))
                .build();
    }

    private static Part panel(String id, String name) {
        double right = WIDTH - MARGIN;
        double top = HEIGHT - MARGIN;
        Curve rim = Curve.open(List.of(
                Segment.line(Point.of(MARGIN, top), Point.of(MARGIN, MARGIN)),
                Segment.line(Point.of(MARGIN, MARGIN), Point.of(right, MARGIN)),
                Segment.line(Point.of(right, MARGIN), Point.of(right, top))));
        List<Point> holes = Spacing.of(rim, PITCH, AtCorners.MARK).marks().stream()
                .map(Spot::point)
                .toList();
        return Part.of(
                        id,
                        name,
                        Outlines.rectangle(Point.of(0, 0), WIDTH, HEIGHT).path(Role.CUT))
                .thickness(2)
                .hole(Hole.of("stud", Point.of(WIDTH / 2, HEIGHT / 2), 3))
                .stitchLine(StitchLine.of("rim", rim.path(Role.STITCH), holes))
                .build();
    }
}
