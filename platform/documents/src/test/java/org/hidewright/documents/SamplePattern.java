package org.hidewright.documents;

import java.util.List;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.core.paper.DrawingWriter.Named;

/** A part with every kind of line and every kind of segment, 120 by 80 mm from the origin. */
public final class SamplePattern {
    public static final Point CONTROL_1 = Point.of(80, 95);
    public static final Point CONTROL_2 = Point.of(40, 65);

    private SamplePattern() {}

    /** A lower edge of lines, a corner rounded with 20 mm on the right, an upper edge of one cubic curve. */
    public static Path outline() {
        return Path.from(Point.of(0, 0))
                .lineTo(100, 0)
                .arcAround(Point.of(100, 20), Math.PI / 2)
                .lineTo(120, 80)
                .cubicTo(CONTROL_1, CONTROL_2, Point.of(0, 80))
                .closed(Role.CUT);
    }

    public static Drawing drawing() {
        return Drawing.builder()
                .add(outline())
                .add(Path.rectangle(Role.FINISHED_EDGE, Point.of(3, 3), 60, 50))
                .add(Path.from(Point.of(20, 20))
                        .lineTo(50, 20)
                        .arcAround(Point.of(50, 25), Math.PI)
                        .lineTo(20, 30)
                        .arcAround(Point.of(20, 25), Math.PI)
                        .closed(Role.INNER_CUT))
                .add(Path.from(Point.of(100, 30))
                        .arcAround(Point.of(90, 30), -1.75 * Math.PI)
                        .open(Role.STITCH))
                .add(Circle.of(Role.STITCH_HOLE, Point.of(100, 30), 0.6))
                .add(Circle.hole(Point.of(70, 60), 4.5))
                .line(Role.FOLD, Point.of(0, 40), Point.of(120, 40))
                .line(Role.MARK, Point.of(10, 10), Point.of(12, 10))
                .line(Role.DIRECTION, Point.of(30, 60), Point.of(60, 60))
                .label("Größe 7 × 5", Point.of(30, 70), Anchor.CENTRE, 3)
                .build();
    }

    public static List<Named> named() {
        return List.of(new Named("front", "Front, cut 2", drawing()));
    }
}
