package org.hidewright.api.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Closed forms and handbook values; each row names its own source and whether it was read or is from memory. */
class WorkedExamplesTest {
    private static final Point ORIGIN = Point.of(0, 0);
    private static final Curve ELLIPSE = Outlines.ellipse(ORIGIN, 100, 60);
    private static final Curve TRIANGLE = Outlines.polygon(ORIGIN, Point.of(40, 0), Point.of(0, 30));

    private static final Map<String, DoubleSupplier> WORKED = Map.ofEntries(
            Map.entry("G.02", ELLIPSE::length),
            Map.entry("G.06", () -> Outlines.circle(ORIGIN, 150).length()),
            Map.entry("G.15", () -> parabola().length()),
            Map.entry(
                    "G.17",
                    () -> Outlines.roundedRectangle(ORIGIN, 200, 100, 15).length()),
            Map.entry(
                    "G.18",
                    () -> Outlines.roundedRectangle(ORIGIN, 200, 100, 15).area()),
            Map.entry(
                    "G.19", () -> Outlines.roundedRectangle(ORIGIN, 150, 40, 20).length()),
            Map.entry(
                    "G.20", () -> Outlines.roundedRectangle(ORIGIN, 150, 40, 20).area()),
            Map.entry("G.21", () -> beside(ELLIPSE, -5, Corner.ROUND).length()),
            Map.entry("G.22", () -> beside(ELLIPSE, 4, Corner.ROUND).length()),
            Map.entry("G.23", () -> 1 / ELLIPSE.at(0).curvature()),
            Map.entry(
                    "G.24",
                    () -> beside(Outlines.circle(ORIGIN, 80), -6, Corner.ROUND).length()),
            Map.entry("G.25", () -> beside(TRIANGLE, -5, Corner.ROUND).length()),
            Map.entry("G.26", () -> beside(TRIANGLE, -5, Corner.ROUND).area()),
            Map.entry("G.27", () -> beside(TRIANGLE, -5, Corner.POINTED).length()),
            Map.entry("G.28", () -> beside(TRIANGLE, -5, Corner.POINTED).area()),
            Map.entry("G.29", () -> beside(hexagon(20), -3, Corner.POINTED).length()),
            Map.entry(
                    "G.30",
                    () -> beside(Outlines.rectangle(ORIGIN, 200, 100), 4, Corner.ROUND)
                            .length()),
            Map.entry("G.31", () -> Arcs.over(ORIGIN, Point.of(100, 0), 12).radius()),
            Map.entry("G.33", WorkedExamplesTest::segmentArea),
            Map.entry(
                    "G.39",
                    () -> Curve.open(List.of(
                                    Segment.cubic(ORIGIN, Point.of(0, 50), Point.of(100, 50), Point.of(100, 0))))
                            .length()),
            Map.entry("G.41", WorkedExamplesTest::roundedCornerOf60Degrees),
            Map.entry(
                    "G.44",
                    () -> Arcs.through(ORIGIN, Point.of(20, 40), Point.of(60, 0))
                            .radius()));

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "worked-examples.csv")
    void agreesWithTheWorkedExample(
            String id, String description, String inputs, String closedForm, double expected, String unit) {
        DoubleSupplier worked = WORKED.get(id);
        assertNotNull(worked, () -> "nothing works " + id);
        // an ellipse is followed by cubics: a millionth of a millimetre, and of its curvature what that leaves
        double allowed = id.equals("G.23") ? 1e-4 : description.contains("ellipse") ? 1e-6 : 1e-9 * expected;
        assertEquals(expected, worked.getAsDouble(), allowed, description);
    }

    /** Marks on a circle are as far from each other, straight across, as the table of chords says. */
    @ParameterizedTest(name = "{0} holes")
    @CsvFileSource(resources = "chords.csv")
    void marksOnACircleAreChordsApart(int holes, double onCircleOf1, double onCircleOf100) {
        Curve circle = Outlines.circle(ORIGIN, 100);
        List<Spot> marks =
                Spacing.of(circle, circle.length() / holes, AtCorners.MARK).marks();
        assertEquals(holes, marks.size());
        for (int i = 0; i < holes; i++) {
            double chord =
                    marks.get(i).point().distanceTo(marks.get((i + 1) % holes).point());
            assertEquals(onCircleOf100, chord, 1e-9);
            assertEquals(onCircleOf1, chord / 100, 1e-11);
        }
    }

    private static Curve beside(Curve curve, double distance, Corner corner) {
        List<Curve> beside = Parallel.of(curve, distance, corner);
        assertEquals(1, beside.size());
        return beside.get(0);
    }

    /** y = 80 x (100 - x) / 10000 as a cubic: a parabola is one. */
    private static Curve parabola() {
        Point middle = Point.of(50, 40); // control point of the quadratic curve, raised to a cubic by thirds
        return Curve.open(List.of(Segment.cubic(
                ORIGIN,
                Point.of(middle.x() * 2 / 3, middle.y() * 2 / 3),
                Point.of(100 + (middle.x() - 100) * 2 / 3, middle.y() * 2 / 3),
                Point.of(100, 0))));
    }

    private static Curve hexagon(double side) {
        Point[] places = new Point[6];
        for (int i = 0; i < 6; i++) {
            places[i] = ORIGIN.towards(i * Math.PI / 3, side);
        }
        return Outlines.polygon(places);
    }

    private static double segmentArea() {
        Segment.Arc arc = Arcs.over(ORIGIN, Point.of(100, 0), 12);
        return -Curve.closed(List.of(arc, Segment.line(arc.end(), ORIGIN))).area();
    }

    private static double roundedCornerOf60Degrees() {
        Curve corner = Curve.open(List.of(
                Segment.line(Point.of(60, 0), ORIGIN), Segment.line(ORIGIN, ORIGIN.towards(Math.PI / 3, 60))));
        Curve rounded = Rounding.corner(corner, 1, 10).orElseThrow();
        assertEquals(10 / Math.tan(Math.PI / 6), 60 - rounded.startOf(1), 1e-9, "tangent length r / tan(theta / 2)");
        return rounded.startOf(2) - rounded.startOf(1);
    }
}
