package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Path data of SVG 1.1, section 8.3; y runs up here, which turns the sweep of an arc over with it. */
class PathDataTest {

    @Test
    void linesByPlaceAndByStepAreTheSame() throws PathData.Unreadable {
        Curve absolute = PathData.read("M 10,10 L 60,10 L 60,40 L 10,40 Z");
        assertTrue(absolute.isClosed());
        assertEquals(1500, absolute.area(), 1e-9);
        assertEquals(absolute, PathData.read("m10 10h50v30h-50z"));
        assertEquals(absolute, PathData.read("M10 10H60V40H10Z"));
        assertEquals(absolute, PathData.read("M10 10 60 10 60 40 10 40 10 10Z"), "places go on without a letter");
        assertFalse(PathData.read("M0 0L5 5").isClosed());
    }

    /** The four arcs between two places, as in the figure of section 8.3.8; true means the same in a system turned over. */
    @ParameterizedTest
    @CsvSource({"0,0,false", "0,1,false", "1,0,true", "1,1,true"})
    void arcsAreLargeOrSmallAndTurnLeftOrRight(int large, int left, boolean more) throws PathData.Unreadable {
        Segment.Arc arc = (Segment.Arc) PathData.read("M0 0 A 50 50 0 " + large + " " + left + " 60 0")
                .segments()
                .get(0);
        assertEquals(50, arc.radius(), 1e-9);
        assertEquals(left == 1, arc.sweep() > 0);
        assertEquals(more, Math.abs(arc.sweep()) > Math.PI);
        assertEquals(0, arc.end().distanceTo(Point.of(60, 0)), 1e-9);
    }

    @Test
    void aRadiusTooSmallGrowsToHalfTheChord() throws PathData.Unreadable {
        Segment.Arc arc =
                (Segment.Arc) PathData.read("M0 0A5 5 0 0160 0").segments().get(0);
        assertEquals(30, arc.radius(), 1e-9);
    }

    @Test
    void curvesGoOnSmoothly() throws PathData.Unreadable {
        Curve wave = PathData.read("M0 0C10 20 20 20 30 0S50 -20 60 0");
        assertEquals(0, wave.corners().size());
        Curve bows = PathData.read("M0 0Q10 20 20 0T40 0");
        assertEquals(0, bows.corners().size());
        assertEquals(
                10,
                bows.at(PathData.read("M0 0Q10 20 20 0").length() / 2).point().y(),
                1e-9,
                "half its height");
        assertEquals(PathData.read("M5 5c10 20 20 20 30 0"), PathData.read("M5 5C15 25 25 25 35 5"));
        assertEquals(
                PathData.read("M0 0C0 0 20 20 30 0"), PathData.read("M0 0S20 20 30 0"), "nothing before to go on from");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "L 10 10|10 10|one curve begins with one M",
                "M 0 0 L 10|''|a number is missing",
                "M 0 0 L 10 x|x|a number is missing",
                "M 0 0 L 10 1e999|1e999|a number is too large",
                "M 0 0 B 10 10|B 10 10|no letter or number",
                "M 0 0 L 5 5 M 6 6|6 6|one curve begins with one M",
                "M 0 0 L 5 5 Z L 4 4|4 4|one curve ends with Z",
                "M 0 0 A 5 6 0 0 0 10 0|''|an arc is part of a circle: both radii are the same",
                "M 0 0 A 5 5 0 2 0 10 0|2 0 10 0|0 or 1 is missing",
                "M 0 0|''|there is no line",
                "''|''|there is no line",
                "10 10|10 10|a letter comes first"
            })
    void whatCannotBeReadIsToldWithItsPlace(String text, String near, String why) {
        PathData.Unreadable trouble = assertThrows(PathData.Unreadable.class, () -> PathData.read(text));
        assertEquals(why, trouble.getMessage());
        assertEquals(near, trouble.near());
    }

    @Test
    void aQuadraticCurveGoesOnWithItsControlTurnedRound() throws PathData.Unreadable {
        List<Segment> bows = PathData.read("M5 7Q15 27 25 7T45 9t3 4").segments();
        assertEquals(3, bows.size());
        // the control 15, 27 turned round 25, 7 is 35, -13; that one round 45, 9 is 55, 31
        Segment.Cubic second = (Segment.Cubic) bows.get(1);
        assertEquals(0, second.control1().distanceTo(Point.of(25 + 10 * 2 / 3.0, 7 - 20 * 2 / 3.0)), 1e-9);
        assertEquals(0, second.control2().distanceTo(Point.of(45 - 10 * 2 / 3.0, 9 - 22 * 2 / 3.0)), 1e-9);
        Segment.Cubic third = (Segment.Cubic) bows.get(2);
        assertEquals(0, third.control1().distanceTo(Point.of(45 + 10 * 2 / 3.0, 9 + 22 * 2 / 3.0)), 1e-9);
        assertEquals(0, third.end().distanceTo(Point.of(48, 13)), 1e-9);
    }

    /** Each of the four arcs over one chord by its middle, worked by hand: radius 50, chord 60, so 40 from centre to chord. */
    @Test
    void anArcRisesToItsSide() throws PathData.Unreadable {
        assertMiddle(-10, "M0 0A50 50 0 0 1 60 0");
        assertMiddle(10, "M0 0A50 50 0 0 0 60 0");
        assertMiddle(-90, "M0 0A50 50 0 1 1 60 0");
        assertMiddle(90, "M0 0A50 50 0 1 0 60 0");
        assertEquals(60, PathData.read("M0 0A0 0 0 0 1 60 0").length(), 1e-9, "without a radius it is a line");
    }

    @Test
    void aTextOfManyCurvesIsReadWholeAndGoesOnWhereTheOneBeforeBegan() throws PathData.Unreadable {
        List<Curve> curves =
                PathData.readAll("M0 0h10v10h-10z m20 5h4v4z M50 50 M0 0 M1 1Z M30 0 L40 0 z l 0 5 l 5 0 M7 7l0 0");
        assertEquals(4, curves.size(), "a place alone is no line, nor is one without length");
        assertEquals(100, curves.get(0).area(), 1e-9);
        assertEquals(PathData.read("M20 5H24V9Z"), curves.get(1), "a step of M is from where the one before began");
        assertTrue(curves.get(2).isClosed());
        assertEquals(
                PathData.read("M30 0L30 5L35 5"), curves.get(3), "without an M the next begins where this one did");
        assertEquals(List.of(), PathData.readAll(" "));
        assertEquals(
                "a number is missing",
                assertThrows(PathData.Unreadable.class, () -> PathData.readAll("M 0 0 L 5 5 M 6"))
                        .getMessage());
    }

    /** SVG 1.1, appendix F.6.2: the points of an arc fulfil the equation of its ellipse; a whole one has the area πab. */
    @ParameterizedTest
    @CsvSource({"0", "30", "-75", "90"})
    void arcsOfEllipsesAreFollowed(double turned) throws PathData.Unreadable {
        double angle = Math.toRadians(turned);
        Point tip = Point.of(0, 0).towards(angle, 40);
        Point tail = Point.of(0, 0).towards(angle, -40);
        String arc = "A 40 15 " + turned + " 1 1 ";
        Curve whole = PathData.readAll("M " + tip.x() + " " + tip.y() + arc + tail.x() + " " + tail.y() + arc + tip.x()
                        + " " + tip.y() + " Z")
                .get(0);
        assertEquals(Math.PI * 40 * 15, whole.area(), 1e-6);
        for (int i = 0; i < 100; i++) {
            Point place = whole.at(whole.length() * i / 100).point();
            double along = place.x() * Math.cos(angle) + place.y() * Math.sin(angle);
            double across = place.y() * Math.cos(angle) - place.x() * Math.sin(angle);
            assertEquals(1, Math.pow(along / 40, 2) + Math.pow(across / 15, 2), 1e-8);
        }
    }

    /** Worked by hand: stretched to twice its width, each arc of a circle over a chord is the arc of an ellipse over it. */
    @ParameterizedTest
    @CsvSource({"0,0", "0,1", "1,0", "1,1"})
    void anArcOfAnEllipseIsThatOfACircleStretched(int large, int left) throws PathData.Unreadable {
        Curve circle = PathData.read("M5 7A50 50 0 " + large + " " + left + " 35 47");
        Curve ellipse = PathData.readAll("M10 7A100 50 0 " + large + " " + left + " 70 47")
                .get(0);
        for (int i = 0; i <= 50; i++) {
            Point place = circle.at(circle.length() * i / 50).point();
            assertEquals(0, ellipse.distanceTo(Point.of(2 * place.x(), place.y())), 1e-6);
        }
        assertEquals(0, ellipse.end().distanceTo(Point.of(70, 47)), 1e-12);
    }

    @Test
    void radiiTooSmallForAnEllipseGrowTogether() throws PathData.Unreadable {
        Curve half = PathData.readAll("M0 0A4 2 0 0 1 80 0").get(0);
        assertEquals(40 / 2.0, half.bounds().height(), 1e-6, "40 along, so 20 across");
        assertEquals(80, PathData.readAll("M0 0A4 0 0 0 1 80 0").get(0).length(), 1e-9, "without one it is a line");
    }

    private static void assertMiddle(double y, String text) throws PathData.Unreadable {
        Curve arc = PathData.read(text);
        assertEquals(0, arc.at(arc.length() / 2).point().distanceTo(Point.of(30, y)), 1e-9, text);
    }
}
