package org.hidewright.documents.dxf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Corner;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.geometry.Region;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.DrawingWriter.Named;
import org.hidewright.documents.OutsideTool;
import org.hidewright.documents.SamplePattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files read by ezdxf and by OGR (GDAL), which share no code with ours nor with each other. */
class DxfWriterTest {
    private static final Set<String> LAYERS =
            Set.of("CUT", "FINISHED-EDGE", "INNER-CUT", "STITCH", "STITCH-HOLE", "FOLD", "MARK", "DIRECTION", "NOTE");

    static List<DrawingWriter> writers() {
        return List.of(new DxfWriter(), new OldDxfWriter());
    }

    private static ReadDxf read(DrawingWriter writer, Drawing drawing) {
        return ReadDxf.of(writer.write("Kit", List.of(new Named("front", "Front", drawing))));
    }

    @ParameterizedTest
    @MethodSource("writers")
    void theAuditFindsNothingToMendAndEveryKindOfLineHasItsLayer(DrawingWriter writer) {
        ReadDxf read = read(writer, SamplePattern.drawing());
        assertEquals(List.of(List.of("0", "0")), read.of("audit"));
        Set<String> layers =
                read.of("layer").stream().map(words -> words.get(0)).collect(Collectors.toSet());
        assertTrue(layers.containsAll(LAYERS), layers.toString());
        Set<String> colours = read.of("layer").stream()
                .filter(words -> LAYERS.contains(words.get(0)))
                .map(words -> words.get(1))
                .collect(Collectors.toSet());
        assertEquals(LAYERS.size(), colours.size(), "a colour each");
    }

    @Test
    void theUnitIsTheMillimetre() {
        ReadDxf read = read(new DxfWriter(), SamplePattern.drawing());
        assertEquals(List.of(List.of("AC1015")), read.of("version"));
        assertEquals(List.of(List.of("4")), read.of("unit"), "4 stands for millimetres in $INSUNITS");
        assertEquals(
                List.of(List.of("AC1009")),
                read(new OldDxfWriter(), SamplePattern.drawing()).of("version"));
    }

    @ParameterizedTest
    @MethodSource("writers")
    void linesArcsAndCirclesStandWhereTheyWereDrawn(DrawingWriter writer) {
        ReadDxf read = read(writer, SamplePattern.drawing());
        assertArrayEquals(new double[] {0, 0, 100, 0}, read.on("LINE", "CUT").get(0), 1e-6);
        assertArrayEquals(
                new double[] {100, 20, 20, 100, 0, 120, 20},
                read.on("ARC", "CUT").get(0),
                1e-6);
        // drawn clockwise from the right; a DXF arc is counter-clockwise
        double x = 90 + 10 * Math.cos(-1.75 * Math.PI);
        double y = 30 + 10 * Math.sin(-1.75 * Math.PI);
        assertArrayEquals(
                new double[] {90, 30, 10, x, y, 100, 30},
                read.on("ARC", "STITCH").get(0),
                1e-5);
        assertEquals(2, read.on("ARC", "INNER-CUT").size());
        assertArrayEquals(
                new double[] {70, 60, 2.25}, read.on("CIRCLE", "INNER-CUT").get(0), 1e-6);
        assertArrayEquals(
                new double[] {100, 30, 0.3}, read.on("CIRCLE", "STITCH-HOLE").get(0), 1e-6);
    }

    @ParameterizedTest
    @MethodSource("writers")
    void lettersOfEveryLanguageAreRead(DrawingWriter writer) {
        assertEquals(
                List.of(List.of("NOTE", "Gr\u00f6\u00dfe_7_\u00d7_5")),
                read(writer, SamplePattern.drawing()).of("TEXT"));
    }

    @Test
    void aCubicCurveIsASplineOfDegreeThree() {
        double[] spline = read(new DxfWriter(), SamplePattern.drawing())
                .on("SPLINE", "CUT")
                .get(0);
        assertArrayEquals(new double[] {3, 0, 0, 0, 0, 1, 1, 1, 1, 120, 80, 80, 95, 40, 65, 0, 80}, spline, 1e-6);
    }

    @Test
    void inTheOldReleaseACubicCurveIsLinesWithinFiveThousandths() {
        double[] chain = read(new OldDxfWriter(), SamplePattern.drawing())
                .on("POLYLINE", "CUT")
                .get(0);
        Segment.Cubic cubic =
                Segment.cubic(Point.of(120, 80), SamplePattern.CONTROL_1, SamplePattern.CONTROL_2, Point.of(0, 80));
        double farthest = 0;
        for (int i = 0; i <= 20_000; i++) {
            farthest = Math.max(farthest, distance(chain, cubic.at(i / 20_000.0)));
        }
        assertTrue(farthest <= 0.005, "leaves it by " + farthest);
        assertTrue(farthest > 0.0005, "no needless lines: " + chain.length / 2);
    }

    private static double distance(double[] chain, Point from) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 3 < chain.length; i += 2) {
            double dx = chain[i + 2] - chain[i];
            double dy = chain[i + 3] - chain[i + 1];
            double t = ((from.x() - chain[i]) * dx + (from.y() - chain[i + 1]) * dy) / (dx * dx + dy * dy);
            double held = Math.max(0, Math.min(1, t));
            least = Math.min(least, Math.hypot(chain[i] + held * dx - from.x(), chain[i + 1] + held * dy - from.y()));
        }
        return least;
    }

    /** A plate with rounded ends grown by 3, a disc added and a notch cut out of one end: radii are 13, 15 and 4. */
    @Test
    void anArcThatWasOffsetTrimmedAndJoinedIsStillAnArc() {
        Path plate = Path.from(Point.of(0, -10))
                .lineTo(60, -10)
                .arcAround(Point.of(60, 0), Math.PI)
                .lineTo(0, 10)
                .arcAround(Point.of(0, 0), Math.PI)
                .closed(Role.CUT);
        Region grown = Region.of(Curve.of(plate)).grown(3, Corner.ROUND).get(0);
        Region joined =
                grown.plus(Region.of(Outlines.circle(Point.of(30, 13), 30))).get(0);
        Region cut = joined.minus(Region.of(Outlines.circle(Point.of(72, 0), 8))
                        .grown(0, Corner.ROUND)
                        .get(0))
                .get(0);
        ReadDxf read = read(
                new DxfWriter(),
                Drawing.of(cut.edges().stream().map(edge -> edge.path(Role.CUT)).toList()));
        Set<String> radii = new TreeSet<>();
        read.on("ARC", "CUT").forEach(arc -> radii.add(String.format(Locale.ROOT, "%.6f", arc[2])));
        assertEquals(Set.of("13.000000", "15.000000", "4.000000"), radii);
        assertEquals(0, read.on("SPLINE", "CUT").size());
        assertEquals(0, read.on("POLYLINE", "CUT").size());
    }

    @ParameterizedTest
    @MethodSource("writers")
    void aDirectionHasPointsAtBothEnds(DrawingWriter writer) {
        List<double[]> lines = read(writer, SamplePattern.drawing()).on("LINE", "DIRECTION");
        assertEquals(5, lines.size());
        assertEquals(
                2,
                lines.stream()
                        .filter(line -> line[0] == 30 && line[2] > 32 && line[2] < 33.1)
                        .count());
        assertEquals(
                2,
                lines.stream()
                        .filter(line -> line[0] == 60 && line[2] < 58 && line[2] > 56.9)
                        .count());
    }

    @Test
    void anArcOfAWholeTurnIsACircle() {
        Path round =
                Path.from(Point.of(5, 0)).arcAround(Point.of(0, 0), 2 * Math.PI).closed(Role.CUT);
        ReadDxf read = read(new DxfWriter(), Drawing.of(List.of(round)));
        assertArrayEquals(new double[] {0, 0, 5}, read.on("CIRCLE", "CUT").get(0), 1e-6);
        assertEquals(List.of(List.of("0", "0")), read.of("audit"));
    }

    @ParameterizedTest
    @MethodSource("writers")
    void ogrReadsEveryEntityWithItsLayer(DrawingWriter writer) {
        byte[] file = writer.write("Kit", SamplePattern.named());
        String said = new String(OutsideTool.runOn(file, ".dxf", "ogrinfo", "-al", "FILE"), StandardCharsets.UTF_8);
        int entities = ReadDxf.of(file).records().stream()
                .filter(words -> words.get(0).equals(words.get(0).toUpperCase(Locale.ROOT)))
                .toList()
                .size();
        assertTrue(said.contains("Feature Count: " + entities), said);
        for (String layer : LAYERS) {
            assertTrue(said.contains("Layer (String) = " + layer + "\n"), layer);
        }
    }

    @ParameterizedTest
    @MethodSource("writers")
    void theSameDrawingsGiveTheSameBytes(DrawingWriter writer) {
        assertArrayEquals(writer.write("Kit", SamplePattern.named()), writer.write("Kit", SamplePattern.named()));
    }
}
