package org.hidewright.documents.svg;

import static org.hidewright.documents.ReadLines.assertArea;
import static org.hidewright.documents.ReadLines.box;
import static org.hidewright.documents.ReadLines.named;
import static org.hidewright.documents.ReadLines.one;
import static org.hidewright.documents.ReadLines.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.documents.ReadLines;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas and boxes by plain arithmetic; what librsvg and Chromium make of the same files is in {@code SvgSeenTest}. */
class SvgReaderTest {
    private static final String MM = "width='400mm' height='300mm' viewBox='0 0 400 300'";

    private static ReadDrawing read(String page, String body) throws FileTrouble {
        return ReadLines.of(
                new SvgReader(),
                "<?xml version='1.0'?>\n<svg xmlns='http://www.w3.org/2000/svg' xmlns:k='urn:kit' " + page + ">\n"
                        + body + "\n</svg>");
    }

    private static String trouble(String body) {
        return ReadLines.trouble(assertThrows(FileTrouble.class, () -> read(MM, body)));
    }

    @Test
    void everyShapeHasItsArea() throws FileTrouble {
        ReadDrawing drawing = read(
                MM,
                "<circle id='circle' cx='100' cy='100' r='40'/><ellipse id='ellipse' cx='200' cy='100' rx='40' ry='15'/>"
                        + "<rect id='rect' x='10' y='20' width='30.5' height='8'/>"
                        + "<rect id='round' x='10' y='20' width='60' height='40' rx='10'/>"
                        + "<rect id='oval' x='10' y='20' width='60' height='40' rx='12' ry='6'/>"
                        + "<rect id='full' x='10' y='20' width='60' height='40' rx='99' ry='99'/>"
                        + "<polygon id='triangle' points='0,0 30,0 0,40'/>"
                        + "<path id='arc' d='M 10 10 A 30 12 0 0 1 70 10 Z'/><rect id='none' width='5'/>"
                        + "<polyline id='shut' points='0,0 30,0 0,40 0,0'/>"
                        + "<path id='two' d='M0 0H10V10H0Z m20 20h5v5h-5z'/>");
        assertArea(Math.PI * 40 * 40, one(drawing, "circle"));
        assertArea(Math.PI * 40 * 15, one(drawing, "ellipse"));
        assertArea(30.5 * 8, one(drawing, "rect"));
        assertArea(60 * 40 - (4 - Math.PI) * 10 * 10, one(drawing, "round"));
        assertArea(60 * 40 - (4 - Math.PI) * 12 * 6, one(drawing, "oval"));
        assertArea(Math.PI * 30 * 20, one(drawing, "full"));
        assertArea(600, one(drawing, "triangle"));
        assertArea(600, one(drawing, "shut"));
        assertArea(Math.PI * 30 * 12 / 2, one(drawing, "arc"));
        assertEquals(List.of(), named(drawing, "none"));
        assertEquals(
                List.of(100.0, 25.0),
                named(drawing, "two").stream()
                        .map(line -> ReadLines.area(line.places()))
                        .toList());
    }

    /** Each transform by itself and within another: areas by the determinant, places worked by hand. */
    @Test
    void transformsAreNested() throws FileTrouble {
        ReadDrawing drawing = read(
                MM,
                "<g transform='translate(100,50) scale(2)'><rect id='far' width='10' height='5' transform='rotate(90)'/>"
                        + "<circle id='flat' r='10' transform='scale(1,.5)'/></g>"
                        + "<rect id='slanted' width='10' height='10' transform='skewX(45)'/>"
                        + "<rect id='mirrored' width='10' height='10' transform='matrix(-1 0 0 1 30 0)'/>"
                        + "<rect id='turned' x='20' width='10' height='10' transform='rotate(180 20,0),translate(-5)'/>");
        assertArea(200, one(drawing, "far"));
        assertBox(90, -70, 100, -50, box(one(drawing, "far").places()));
        assertArea(Math.PI * 20 * 10, one(drawing, "flat"));
        assertBox(0, -10, 20, 0, box(one(drawing, "slanted").places()));
        assertBox(20, -10, 30, 0, box(one(drawing, "mirrored").places()));
        assertBox(15, 0, 25, 10, box(one(drawing, "turned").places()));
    }

    private static void assertBox(double minX, double minY, double maxX, double maxY, Box box) {
        assertEquals(minX, box.minX(), 1e-9);
        assertEquals(minY, box.minY(), 1e-9, "y runs up");
        assertEquals(maxX, box.maxX(), 1e-9);
        assertEquals(maxY, box.maxY(), 1e-9);
    }

    /** The width of 10 units in millimetres, by CSS Values and Units, section 5.2. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width='400mm' height='300mm' viewBox='0 0 400 300'|10|true",
                "width='40cm' height='30cm' viewBox='7 9 4000 3000'|1|true",
                "width='10in' viewBox='0 0 100 50'|25.4|true",
                "height='72pt' viewBox='0,0,100,50'|5.08|true",
                "width='100mm' height='100mm' viewBox='0 0 100 50'|10|true",
                "width='100mm' height='100mm' viewBox='0 0 50 100'|10|true",
                "width='100mm' height='100mm' viewBox='0 0 100 50' preserveAspectRatio='xMidYMid slice'|20|true",
                "width='960' height='480px' viewBox='0 0 100 50'|25.4|false",
                "width='100%' viewBox='0 0 100 50'|2.6458333|false",
                "width='100mm' height='100mm'|2.6458333|false",
                "''|2.6458333|false"
            })
    void aUnitIsAsLargeAsThePageSays(String page, double mm, boolean said) throws FileTrouble {
        ReadDrawing drawing = read(page.equals("''") ? "" : page, "<rect id='a' width='10' height='5'/>");
        Box box = box(one(drawing, "a").places());
        assertEquals(mm, box.width(), 1e-6);
        assertEquals(mm / 2, box.height(), 1e-6);
        assertEquals(said ? List.of() : List.of("notice.pixels-taken"), told(drawing));
    }

    @Test
    void aPageMayBeStretched() throws FileTrouble {
        Box box = box(one(
                        read(
                                "width='100mm' height='100mm' viewBox='0 0 100 50' preserveAspectRatio='none'",
                                "<rect id='a' width='10mm' height='5'/>"),
                        "a")
                .places());
        assertEquals(10 * 96 / 25.4, box.width(), 1e-6, "a length with a unit inside the drawing is in pixels of it");
        assertEquals(10, box.height(), 1e-9);
    }

    @Test
    void whatIsNotDrawnIsLeftOutAndWhatIsNotFollowedIsTold() throws FileTrouble {
        String circle = "<circle id='no' r='5'/>";
        ReadDrawing drawing = read(
                MM,
                "<defs>" + circle + "</defs><clipPath><g>" + circle + "</g></clipPath><symbol>" + circle
                        + "</symbol><g display='none'>" + circle + "</g><g style='fill:red; display : none'>" + circle
                        + "</g><k:g>" + circle + "</k:g><k:circle id='no' r='5'/><mask>" + circle
                        + "</mask><use href='#no'/><use href='#no'/><svg>" + circle + "</svg>"
                        + "<a><circle id='yes' r='5'><title>A bite</title></circle></a>");
        assertEquals(
                List.of("yes"),
                drawing.lines().stream().map(line -> line.names().get(0)).toList());
        assertEquals(List.of("notice.entities-left-out"), told(drawing));
        assertTrue(drawing.remarks().get(0).toString().contains("svg (1), use (2)"), drawing.remarks()::toString);
    }

    @Test
    void theNearestNameComesFirst() throws FileTrouble {
        ReadDrawing drawing = read(
                MM,
                "<g id='layer1' k:label='region-belly'><g class='weak  loose'>\n"
                        + "<path\n d='M0 0h9v9z' class='c' id='p7'/></g><path d='M0 0h9v9' k:d='x'/></g>");
        assertEquals(
                List.of("p7", "c", "weak", "loose", "layer1", "region-belly"),
                drawing.lines().get(0).names());
        assertEquals("path \"p7\"", drawing.lines().get(0).entity());
        assertEquals(4, drawing.lines().get(0).at().line(), "the line its tag begins in");
        assertEquals("path", drawing.lines().get(1).entity());
        assertFalse(drawing.lines().get(1).closed());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<path d='M 0 0 L 10'/>|notice.drawn-unreadable 3",
                "<g>\\n<polygon points='0,0 5,5 x'/></g>|notice.drawn-unreadable 4",
                "<rect width='10%' height='5'/>|notice.drawn-unreadable 3",
                "<g transform='turn(5)'/>|notice.drawn-unreadable 3",
                "<g transform='rotate(5) 7'/>|notice.drawn-unreadable 3",
                "<g transform='scale(1 2 3)'/>|notice.drawn-unreadable 3",
                "<g style='transform: scale(2)'/>|notice.drawn-unreadable 3",
                "<circle r='600000' transform='scale(2)'/>|notice.drawn-too-far 3",
                "<g>|notice.no-svg 4",
                "&kit;|notice.no-svg 3"
            })
    void whatCannotBeReadIsToldWithItsLine(String body, String told) {
        assertEquals(told, trouble(body.replace("\\n", "\n")));
    }

    @Test
    void anotherKindOfFileIsTold() {
        for (String file : List.of("", "0\nSECTION\n", "<html/>")) {
            FileTrouble trouble = assertThrows(FileTrouble.class, () -> ReadLines.of(new SvgReader(), file));
            assertEquals("notice.no-svg", trouble.remarks().get(0).key(), file);
        }
    }

    @Test
    void theEncodingIsAsTheFileSays() throws FileTrouble {
        String file = "<svg xmlns='http://www.w3.org/2000/svg'>\n<circle id='Bär' r='5'/></svg>";
        String declared = "<?xml version='1.0' encoding='ISO-8859-1'?>" + file;
        for (byte[] bytes : List.of(
                file.getBytes(StandardCharsets.UTF_8),
                ("\ufeff" + file).getBytes(StandardCharsets.UTF_8),
                file.getBytes(StandardCharsets.UTF_16),
                declared.getBytes(StandardCharsets.ISO_8859_1))) {
            assertEquals(
                    "Bär", new SvgReader().read(bytes).lines().get(0).names().get(0));
        }
        byte[] wrong = file.getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(
                "notice.no-svg 2",
                ReadLines.trouble(assertThrows(FileTrouble.class, () -> new SvgReader().read(wrong))));
        byte[] unknown = declared.replace("ISO-8859-1", "kit-1").getBytes(StandardCharsets.UTF_8);
        assertEquals(
                "notice.no-svg 1",
                ReadLines.trouble(assertThrows(FileTrouble.class, () -> new SvgReader().read(unknown))));
    }

    /** A document type as older drawing programs write it is passed over; nothing it declares is taken. */
    @Test
    void nothingOutsideIsReadAndNothingGrows(@TempDir Path folder) throws Exception {
        String circle = "<svg xmlns='http://www.w3.org/2000/svg'><circle r='5'/>";
        assertEquals(
                1,
                ReadLines.of(
                                new SvgReader(),
                                "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>"
                                        + circle + "</svg>")
                        .lines()
                        .size());
        Path outside = Files.writeString(folder.resolve("outside.txt"), "<circle r='7'/>");
        String reads = "<!DOCTYPE svg [<!ENTITY far SYSTEM '" + outside.toUri() + "'>]>" + circle + "&far;</svg>";
        StringBuilder grows = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 '<circle r=\"5\"/>'>");
        for (int i = 1; i < 30; i++) {
            grows.append("<!ENTITY a" + i + " '&a" + (i - 1) + ";&a" + (i - 1) + ";&a" + (i - 1) + ";'>");
        }
        grows.append("]>" + circle + "&a29;</svg>");
        for (String file : List.of(reads, grows.toString())) {
            Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
                byte[] bytes = file.getBytes(StandardCharsets.UTF_8);
                try {
                    assertEquals(1, new SvgReader().read(bytes).lines().size(), "none but its own");
                } catch (FileTrouble told) {
                    assertEquals("notice.no-svg", told.remarks().get(0).key());
                }
            });
        }
    }
}
