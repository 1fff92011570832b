package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

/** Places worked by hand: the skive of a 3-4-5 triangle, a lap of eight thicknesses. */
class BevelPictureTest {
    private static String place(Point point) {
        return String.format(Locale.ROOT, "%.2f %.2f", point.x(), point.y());
    }

    private static List<String> corners(Path path) {
        return path.segments().stream()
                .map(Segment::start)
                .map(BevelPictureTest::place)
                .toList();
    }

    private static List<Path> paths(Drawing drawing, Role role) {
        return drawing.shapes().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .filter(path -> path.role() == role)
                .toList();
    }

    private static String lines(Drawing drawing, Role role) {
        Path only = paths(drawing, role).get(0);
        Segment line = only.segments().get(0);
        return place(line.start()) + " to " + place(line.end());
    }

    private static List<String> dimensions(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(DimensionLine.class::isInstance)
                .map(DimensionLine.class::cast)
                .map(line -> place(line.from()) + " to " + place(line.to()) + " beside " + Math.signum(line.offset())
                        + ": " + ((Length) line.words()).mm())
                .toList();
    }

    @Test
    void aSkiveRunsFromWhatIsLeftToTheFullThickness() {
        // 4 mm to 1 mm over 4 mm; three thicknesses shown beyond: to 16 mm
        Drawing drawing = BevelPicture.skive(Length.ofMm(4), Length.ofMm(1), Length.ofMm(4));
        Path leather = paths(drawing, Role.SECTION).get(0);
        assertEquals(List.of("16.00 0.00", "0.00 0.00", "0.00 1.00", "4.00 4.00", "16.00 4.00"), corners(leather));
        assertTrue(leather.isClosed());
        assertEquals("0.00 0.00 to 16.00 0.00", lines(drawing, Role.GRAIN));
        assertEquals("4.00 4.00 to 16.00 4.00", lines(drawing, Role.FLESH));
        assertEquals("0.00 4.00 to 4.00 4.00", lines(drawing, Role.MARK));
        assertEquals(
                List.of(
                        "0.00 4.00 to 4.00 4.00 beside 1.0: 4.0",
                        "16.00 0.00 to 16.00 4.00 beside -1.0: 4.0",
                        "0.00 0.00 to 0.00 1.00 beside 1.0: 1.0"),
                dimensions(drawing));
    }

    @Test
    void theBrokenEndWavesAboutItsLine() {
        Path leather = paths(BevelPicture.skive(Length.ofMm(3), Length.ofMm(1), Length.ofMm(4)), Role.SECTION)
                .get(0);
        Segment.Cubic wave = (Segment.Cubic) leather.segments().get(4);
        assertEquals("13.00 3.00", place(wave.start()));
        assertEquals("14.00 2.00", place(wave.control1()));
        assertEquals("12.00 1.00", place(wave.control2()));
        assertEquals("13.00 0.00", place(wave.end()));
    }

    @Test
    void aFeatheredEdgeHasNothingLeftToMeasure() {
        assertEquals(
                2,
                dimensions(BevelPicture.skive(Length.ofMm(2), Length.ofMm(0), Length.ofMm(8)))
                        .size());
    }

    @Test
    void theEndsOfAScarfLieOnEachOtherWithTheGlueLineBetween() {
        // bevel of 30 degrees: 0.1 mm square to it are 0.2 mm along the face
        double half = Math.PI / 6;
        Drawing drawing = BevelPicture.scarf(Length.ofMm(2), Length.ofMm(3), Length.ofMm(16), Length.ofMm(0.1), half);
        List<Path> ends = paths(drawing, Role.SECTION);
        assertEquals(List.of("-6.00 0.00", "16.00 0.00", "0.00 2.00", "-6.00 2.00"), corners(ends.get(0)));
        assertEquals(List.of("25.20 0.00", "16.20 0.00", "0.20 2.00", "0.20 3.00", "25.20 3.00"), corners(ends.get(1)));
        assertEquals(
                List.of(
                        "0.00 0.00 to 16.00 0.00 beside -1.0: 16.0",
                        "-6.00 0.00 to -6.00 2.00 beside 1.0: 2.0",
                        "25.20 0.00 to 25.20 3.00 beside -1.0: 3.0"),
                dimensions(drawing));
    }

    @Test
    void bothCalculatorsAnswerWithTheirPicture() {
        Skive skive = new Skive();
        Skive.Edge edge = new Skive.Edge(Length.ofMm(4), Length.ofMm(1), new Skive.ByWidth(Length.ofMm(4)));
        assertEquals(
                BevelPicture.skive(Length.ofMm(4), Length.ofMm(1), Length.ofMm(4)),
                Told.answers(skive, skive.calculate(edge, Working.NONE)).fromTheSide());
        Scarf scarf = new Scarf();
        Scarf.Ends ends = new Scarf.Ends(
                Length.ofMm(3), Length.ofMm(2), new Scarf.BySlope(8), Length.ofMm(0.1), Optional.empty());
        assertEquals(
                BevelPicture.scarf(
                        Length.ofMm(2), Length.ofMm(3), Length.ofMm(16), Length.ofMm(0.1), Math.atan2(2, 16)),
                Told.answers(scarf, scarf.calculate(ends, Working.NONE)).fromTheSide());
    }
}
