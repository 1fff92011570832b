package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;

class CrossingsTest {
    private static Point at(double x, double y) {
        return Point.of(x, y);
    }

    private static Stretch line(double x1, double y1, double x2, double y2) {
        return Stretch.of(Segment.line(at(x1, y1), at(x2, y2)));
    }

    private static Stretch arc(double x, double y, double cx, double cy, double sweep) {
        return Stretch.of(Segment.arc(at(x, y), at(cx, cy), sweep));
    }

    private static Stretch cubic(double... xy) {
        return Stretch.of(Segment.cubic(at(xy[0], xy[1]), at(xy[2], xy[3]), at(xy[4], xy[5]), at(xy[6], xy[7])));
    }

    /** The places where two stretches meet, from left to right; both ways round they are the same. */
    private static void assertMeet(Stretch one, Stretch other, double... xy) {
        for (boolean swapped : new boolean[] {false, true}) {
            Stretch a = swapped ? other : one;
            Stretch b = swapped ? one : other;
            List<Point> places = Crossings.of(a, b).stream()
                    .map(crossing -> a.at(crossing.first()))
                    .sorted((p, q) -> Double.compare(p.x() + p.y() / 1e6, q.x() + q.y() / 1e6))
                    .toList();
            assertEquals(xy.length / 2, places.size(), places.toString());
            for (int i = 0; i < places.size(); i++) {
                assertEquals(0, places.get(i).distanceTo(at(xy[2 * i], xy[2 * i + 1])), 1e-7, places.toString());
            }
            Crossings.of(a, b)
                    .forEach(crossing ->
                            assertEquals(0, a.at(crossing.first()).distanceTo(b.at(crossing.second())), 1e-7));
        }
    }

    /** Where two curves only touch, the place is not sharp: within the reach of a millionth their lines are one. */
    private static void assertTouch(Stretch one, Stretch other, double x, double y) {
        List<Crossing> found = Crossings.of(one, other);
        assertEquals(1, found.size(), found.toString());
        assertEquals(0, one.at(found.get(0).first()).distanceTo(at(x, y)), 1e-5);
    }

    @Test
    void lines() {
        assertMeet(line(0, 0, 10, 10), line(0, 10, 10, 0), 5, 5);
        assertMeet(line(0, 0, 10, 0), line(10, 0, 10, 5), 10, 0);
        assertMeet(line(0, 0, 10, 0), line(5, 0, 5, 5), 5, 0);
        assertMeet(line(0, 0, 10, 0), line(11, -1, 11, 5));
        assertMeet(line(0, 0, 10, 0), line(5, 1, 5, 5));
        assertMeet(line(0, 0, 10, 10), line(6, 5, 12, 5));
    }

    @Test
    void linesOnEachOtherShareTheEndsOfWhatTheyShare() {
        assertMeet(line(0, 0, 10, 0), line(4, 0, 14, 0), 4, 0, 10, 0);
        assertMeet(line(0, 0, 10, 0), line(8, 0, 2, 0), 2, 0, 8, 0);
        assertMeet(line(0, 0, 10, 0), line(4, 1, 14, 1));
        assertMeet(line(0, 0, 10, 0), line(10, 0, 14, 0), 10, 0);
    }

    @Test
    void linesAndArcs() {
        assertMeet(line(-10, 3, 10, 3), arc(5, 0, 0, 0, Math.PI), -4, 3, 4, 3);
        assertMeet(line(-10, -3, 10, -3), arc(5, 0, 0, 0, Math.PI));
        assertMeet(line(0, 0, 10, 0), arc(5, 0, 0, 0, Math.PI / 2), 5, 0);
        assertMeet(line(-10, 5, 10, 5), arc(5, 0, 0, 0, Math.PI), 0, 5);
        assertMeet(line(-10, 5.001, 10, 5.001), arc(5, 0, 0, 0, Math.PI));
        assertMeet(line(0, 3, 3.9, 3), arc(5, 0, 0, 0, Math.PI));
        assertMeet(line(-10, -3, 10, -3), arc(5, 0, 0, 0, -Math.PI), -4, -3, 4, -3);
    }

    @Test
    void arcs() {
        assertMeet(arc(5, 0, 0, 0, Math.PI), arc(11, 0, 6, 0, Math.PI), 3, 4);
        assertMeet(arc(5, 0, 0, 0, 2 * Math.PI), arc(11, 0, 6, 0, 2 * Math.PI), 3, -4, 3, 4);
        assertMeet(arc(5, 0, 0, 0, 2 * Math.PI), arc(15, 0, 10, 0, 2 * Math.PI), 5, 0);
        assertMeet(arc(5, 0, 0, 0, 2 * Math.PI), arc(16, 0, 11, 0, 2 * Math.PI));
        assertMeet(arc(5, 0, 0, 0, 2 * Math.PI), arc(2, 0, 0, 0, 2 * Math.PI));
        assertMeet(arc(5, 0, 0, 0, 2 * Math.PI), arc(3, 0, 1, 0, 2 * Math.PI));
        assertMeet(arc(5, 0, 0, 0, Math.PI), arc(0, 5, 0, 0, Math.PI), -5, 0, 0, 5);
        assertMeet(arc(5, 0, 0, 0, Math.PI / 2), arc(0, -5, 0, 0, -Math.PI / 2));
    }

    @Test
    void cubics() {
        Stretch hill = cubic(0, 0, 0, 40, 60, 40, 60, 0); // 30 high in its middle
        assertMeet(hill, line(30, -5, 30, 50), 30, 30);
        assertMeet(hill, line(-5, 30.01, 65, 30.01));
        assertMeet(hill, line(0, 0, 0, -5), 0, 0);
        assertTouch(hill, cubic(0, 60, 0, 20, 60, 20, 60, 60), 30, 30);
        // y of the hill is 120 t (1 - t), of the dip 59 less that: both are 29.5 where t (1 - t) = 29.5 / 120
        double t = (1 - Math.sqrt(1 - 4 * 29.5 / 120)) / 2;
        double x = 60 * t * t * (3 - 2 * t);
        assertMeet(hill, cubic(0, 59, 0, 19, 60, 19, 60, 59), x, 29.5, 60 - x, 29.5);
    }
}
