package org.hidewright.documents.dxf;

import static org.hidewright.documents.ReadLines.assertArea;
import static org.hidewright.documents.ReadLines.one;
import static org.hidewright.documents.ReadLines.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.documents.OutsideTool;
import org.hidewright.documents.ReadLines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that ezdxf writes, by plain arithmetic and beside what OGR (GDAL) reads of them; and small ones by hand. */
class DxfReaderTest {
    private static final Pattern WKT =
            Pattern.compile("Layer \\(String\\) = (\\S+)\\n(?:.*\\n)*?  LINESTRING(?: Z)? \\(([^)]*)\\)");

    private static byte[] drawn(int unit, String release) {
        try (InputStream script = DxfReaderTest.class.getResourceAsStream("draw_dxf.py")) {
            String program = new String(script.readAllBytes(), StandardCharsets.UTF_8);
            return OutsideTool.runOn(
                    new byte[0], ".dxf", "/usr/bin/python3", "-c", program, Integer.toString(unit), release);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /** Group code and value, line by line. */
    private static ReadDrawing read(String... pairs) throws FileTrouble {
        return ReadLines.of(new DxfReader(), String.join("\n", pairs) + "\n");
    }

    private static String entities(String... pairs) {
        return "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n"
                + String.join("\n", pairs) + "\n0\nENDSEC\n0\nEOF";
    }

    @ParameterizedTest
    @ValueSource(strings = {"R2000", "R2004", "R2010", "R2018"})
    void everyKindOfLineHasItsArea(String release) throws FileTrouble {
        ReadDrawing drawing = new DxfReader().read(drawn(4, release));
        assertOld(drawing);
        assertArea(60 * 40 - (4 - Math.PI) * 100, one(drawing, "round"));
        // bulge = tan(angle / 4), so the radius is chord (1 + b²) / 4b; DXF Reference, LWPOLYLINE
        double angle = 4 * Math.atan(0.5);
        assertArea(12.5 * 12.5 / 2 * (angle - Math.sin(angle)), one(drawing, "cap"));
        assertArea(Math.PI * 50 * 15, one(drawing, "ellipse"));
        assertArea(Math.PI * 20 * 10 / 2, one(drawing, "half"));
        assertArea(Math.PI * 25 * 25, one(drawing, "spline"));
        Box below = ReadLines.box(one(drawing, "below").places());
        assertEquals(-10, below.minX(), 1e-9, "seen from below it lies mirrored");
        assertEquals(List.of("notice.entities-left-out"), told(drawing));
        String left = drawing.remarks().get(0).toString();
        assertTrue(left.contains("INSERT (1), POLYLINE (1), SPLINE (1)"), left);
    }

    @Test
    void theOldestReleaseIsReadToo() throws FileTrouble {
        ReadDrawing drawing = new DxfReader().read(drawn(4, "R12"));
        assertOld(drawing);
        assertTrue(told(drawing).contains("notice.millimetres-taken"), "it has no unit");
    }

    private static void assertOld(ReadDrawing drawing) {
        assertArea(Math.PI * 400, one(drawing, "circle"));
        assertArea(30 * 10 + Math.PI * 25, one(drawing, "slot"));
        assertArea(40 * 30 + Math.PI * 15 * 15 / 2, one(drawing, "old-bulge"));
        List<DrawnLine> open = drawing.lines().stream()
                .filter(line -> line.names().contains("open"))
                .toList();
        assertEquals(2, open.size(), "0.02 mm apart they are not one");
        assertTrue(open.stream().noneMatch(DrawnLine::closed));
        Set<String> layers =
                drawing.lines().stream().map(line -> line.names().get(0)).collect(Collectors.toSet());
        assertFalse(layers.contains("off") || layers.contains("space") || layers.contains("text"), layers.toString());
    }

    /** OGR parts arcs at every fifth of a degree, which takes less than a part in ten thousand of these areas. */
    @Test
    void theAreasAreThoseOfOgr() throws FileTrouble {
        byte[] file = drawn(4, "R2000");
        String said = new String(
                OutsideTool.runOn(file, ".dxf", "ogrinfo", "-al", "--config", "OGR_ARC_STEPSIZE", "0.2", "FILE"),
                StandardCharsets.UTF_8);
        ReadDrawing drawing = new DxfReader().read(file);
        Matcher feature = WKT.matcher(said);
        List<String> compared = new ArrayList<>();
        while (feature.find()) {
            if (Set.of("circle", "old-bulge", "round", "cap", "ellipse", "below")
                    .contains(feature.group(1))) {
                List<Point> places = new ArrayList<>();
                for (String place : feature.group(2).split(",")) {
                    String[] numbers = place.split(" ");
                    places.add(Point.of(Double.parseDouble(numbers[0]), Double.parseDouble(numbers[1])));
                }
                double area = ReadLines.area(places);
                DrawnLine ours = one(drawing, feature.group(1));
                assertArea(area, ours, 1e-4 * area);
                assertEquals(
                        ReadLines.box(places).minX(),
                        ReadLines.box(ours.places()).minX(),
                        0.01,
                        feature.group(1));
                compared.add(feature.group(1));
            }
        }
        assertEquals(List.of("circle", "old-bulge", "round", "cap", "ellipse", "below"), compared, said);
    }

    /** Units by the DXF Reference, HEADER section, $INSUNITS: the radius of 20 in millimetres. */
    @ParameterizedTest
    @CsvSource({"1,508", "2,6096", "4,20", "5,200", "6,20000", "10,18288", "14,2000"})
    void unitsAreReadFromTheHeader(int unit, double radius) throws FileTrouble {
        ReadDrawing drawing = new DxfReader().read(drawn(unit, "R2000"));
        assertEquals(2 * radius, ReadLines.box(one(drawing, "circle").places()).width(), 0.005);
        assertFalse(told(drawing).contains("notice.millimetres-taken"));
    }

    @Test
    void withoutAUnitMillimetresAreTakenAndThatIsTold() throws FileTrouble {
        ReadDrawing drawing = new DxfReader().read(drawn(0, "R2000"));
        assertArea(Math.PI * 400, one(drawing, "circle"));
        assertTrue(told(drawing).contains("notice.millimetres-taken"));
    }

    @Test
    void aUnitThatNobodyDrawsHidesInIsRefused() {
        FileTrouble trouble = assertThrows(FileTrouble.class, () -> new DxfReader().read(drawn(3, "R2000")));
        assertEquals("notice.drawing-unit", trouble.remarks().get(0).key());
    }

    /** Two corners of a triangle shared by three lines in any order and direction; a tail that leads nowhere stays apart. */
    @Test
    void stretchesAreChainedAlongOneLayer() throws FileTrouble {
        ReadDrawing drawing = read(entities(
                line("HOLE", 0, 0, 10, 0),
                line("HOLE", 0, 20, 10.008, 0),
                line("HOLE", 0, 20.004, 0, 0),
                line("OTHER", 10, 0, 30, 0),
                line("TAIL", 50, 0, 60, 0),
                line("TAIL", 40, 0, 50, 0)));
        assertArea(100, one(drawing, "HOLE"));
        assertEquals(
                List.of("HOLE", "OTHER", "TAIL"),
                drawing.lines().stream().map(line -> line.names().get(0)).toList());
        assertEquals(3, drawing.lines().get(2).places().size());
        assertEquals("LINE \"HOLE\"", drawing.lines().get(0).entity());
        assertEquals(16, drawing.lines().get(0).at().line());
    }

    private static String line(String layer, double x1, double y1, double x2, double y2) {
        return String.join("\n", "0", "LINE", "8", layer, "10", "" + x1, "20", "" + y1, "11", "" + x2, "21", "" + y2);
    }

    @Test
    void lettersOfALayerAreReadInEitherWay() throws FileTrouble {
        String circle = "0\nCIRCLE\n8\n%s\n10\n0\n20\n0\n40\n5";
        assertEquals(
                List.of("region-Rücken", "region-Flämme"),
                read(entities(circle.formatted("region-R\\U+00FCcken"), circle.formatted("region-Flämme")))
                        .lines()
                        .stream()
                        .map(line -> line.names().get(0))
                        .toList());
        byte[] old = entities(circle.formatted("Flämme")).getBytes(Charset.forName("windows-1252"));
        assertEquals(List.of("Flämme"), new DxfReader().read(old).lines().get(0).names());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,CIRCLE,8,A,10,0,20,0|notice.drawn-unreadable 16",
                "0,CIRCLE,8,A,10,0,20,0,40,wide|notice.drawn-unreadable 24",
                "0,CIRCLE,8,A,10,0,20,0,40,1e999|notice.drawn-unreadable 24",
                "0,CIRCLE,8,A,10,0,20,0,40,2e6|notice.drawn-too-far 16",
                "0,SPLINE,8,A,71,3,40,0,40,1,10,0,20,0,10,5,20,5|notice.drawn-unreadable 16",
                "nought,CIRCLE|notice.no-dxf 15"
            })
    void whatCannotBeReadIsToldWithItsLine(String pairs, String told) {
        FileTrouble trouble = assertThrows(FileTrouble.class, () -> read(entities(pairs.split(","))));
        assertEquals(told, ReadLines.trouble(trouble));
    }

    @Test
    void anotherKindOfFileAndHalfAFileAreTold() {
        for (String file : List.of(
                "",
                "<svg/>",
                "AutoCAD Binary DXF\r\n\u001a",
                entities("0", "POINT").replace("EOF", "EN"))) {
            FileTrouble trouble = assertThrows(FileTrouble.class, () -> ReadLines.of(new DxfReader(), file));
            assertEquals("notice.no-dxf", trouble.remarks().get(0).key(), file);
        }
    }

    /** A square as a curve of degree one, then the same corners as a closed one of degree two, which cuts each corner by a third. */
    @Test
    void splinesWithoutWeightsAreFollowed() throws FileTrouble {
        String corners = "10,0,20,0,10,30,20,0,10,30,20,30,10,0,20,30,";
        ReadDrawing drawing =
                read(entities(("0,SPLINE,8,A,71,1,40,0,40,0,40,1,40,2,40,3,40,4,40,4," + corners + "10,0,20,0,"
                                + "0,SPLINE,8,B,71,2,40,0,40,1,40,2,40,3,40,4,40,5,40,6,40,7,40,8," + corners
                                + "10,0,20,0,10,30,20,0")
                        .split(",")));
        assertArea(900, one(drawing, "A"));
        // each bow is a parabola between the middles of two sides: it cuts off a third of the triangle beyond its chord
        assertArea(900 - 4 * (15 * 15 / 2.0) / 3, one(drawing, "B"));
    }
}
