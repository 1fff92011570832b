package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class OutlinesTest {
    private static final Point AT = Point.of(7, -3);

    @Test
    void allRunCounterClockwise() {
        assertEquals(Math.PI * 100, Outlines.circle(AT, 20).area(), 1e-9);
        assertEquals(800, Outlines.rectangle(AT, 40, 20).area(), 1e-9);
        assertEquals(Math.PI * 200, Outlines.ellipse(AT, 40, 20).area(), 1e-5);
        assertEquals(
                800 - (4 - Math.PI) * 25,
                Outlines.roundedRectangle(AT, 40, 20, 5).area(),
                1e-9);
        assertEquals(Outlines.rectangle(AT, 40, 20), Outlines.roundedRectangle(AT, 40, 20, 0));
    }

    @Test
    void everyPlaceOfAnEllipseIsOnIt() {
        Curve ellipse = Outlines.ellipse(AT, 100, 60);
        for (int i = 0; i < 1000; i++) {
            Point place = ellipse.at(ellipse.length() * i / 1000).point();
            double x = (place.x() - AT.x()) / 50;
            double y = (place.y() - AT.y()) / 30;
            assertEquals(1, x * x + y * y, 1e-7);
        }
    }

    @Test
    void whatHasNoInsideIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Outlines.circle(AT, 0));
        assertThrows(IllegalArgumentException.class, () -> Outlines.ellipse(AT, 10, 0));
        assertThrows(IllegalArgumentException.class, () -> Outlines.roundedRectangle(AT, 40, 20, 10.1));
        assertThrows(IllegalArgumentException.class, () -> Outlines.roundedRectangle(AT, 40, 20, -1));
        assertThrows(IllegalArgumentException.class, () -> Outlines.polygon(List.of(AT, Point.of(0, 0))));
    }

    @Test
    void anArcGoesThroughItsThreePlaces() {
        Segment.Arc arc = Arcs.through(Point.of(0, 0), Point.of(10, 10), Point.of(20, 0));
        assertEquals(0, arc.centre().distanceTo(Point.of(10, 0)), 1e-9);
        assertEquals(-Math.PI, arc.sweep(), 1e-9);
        Segment.Arc most = Arcs.through(Point.of(1, 0), Point.of(-1, 0), Point.of(0, -1));
        assertEquals(1.5 * Math.PI, most.sweep(), 1e-9);
        assertEquals(0, most.end().distanceTo(Point.of(0, -1)), 1e-9);
        assertThrows(
                IllegalArgumentException.class, () -> Arcs.through(Point.of(0, 0), Point.of(5, 5), Point.of(10, 10)));
    }

    @Test
    void anArcRisesToItsSide() {
        Segment.Arc left = Arcs.over(Point.of(0, 0), Point.of(100, 0), 12);
        assertEquals(12, left.bounds().maxY(), 1e-9);
        Segment.Arc right = Arcs.over(Point.of(0, 0), Point.of(100, 0), -12);
        assertEquals(-12, right.bounds().minY(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> Arcs.over(Point.of(0, 0), Point.of(100, 0), 0));
    }

    @Test
    void anEllipseNeedsBothAxes() {
        assertThrows(IllegalArgumentException.class, () -> Outlines.ellipse(Point.of(0, 0), 0, 5));
        assertThrows(IllegalArgumentException.class, () -> Outlines.ellipse(Point.of(0, 0), 5, 0));
    }
}
