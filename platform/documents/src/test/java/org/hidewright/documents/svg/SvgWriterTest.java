package org.hidewright.documents.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.core.paper.DrawingWriter.Named;
import org.hidewright.documents.OutsideTool;
import org.hidewright.documents.Roles;
import org.hidewright.documents.SamplePattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The file read by an XML parser, by librsvg and by Chromium. */
class SvgWriterTest {
    private static final Pattern CSS_BOX =
            Pattern.compile("\\[([^ ]+) ([-\\d.e]+) ([-\\d.e]+) ([-\\d.e]+) ([-\\d.e]+)\\]");
    private static final double DOTS_PER_MM = 20;

    private static byte[] svg(Drawing drawing) {
        return new SvgWriter().write("Field kit", List.of(new Named("front", "Front, cut 2", drawing)));
    }

    private static Element parsed(byte[] svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg))
                .getDocumentElement();
    }

    @Test
    void eachPartIsAGroupAndInItEachKindOfLine() throws Exception {
        Element root = parsed(svg(SamplePattern.drawing()));
        NodeList groups = root.getElementsByTagName("g");
        StringBuilder ids = new StringBuilder();
        for (int i = 0; i < groups.getLength(); i++) {
            ids.append(((Element) groups.item(i)).getAttribute("id")).append(' ');
        }
        assertEquals(
                "front front.cut front.finished-edge front.inner-cut front.mark front.stitch front.stitch-hole"
                        + " front.fold front.direction front.note ",
                ids.toString());
        assertEquals("Front, cut 2", root.getElementsByTagName("title").item(1).getTextContent());
    }

    @Test
    void aUserUnitIsAMillimetreAndArcsStayArcs() throws Exception {
        Element root = parsed(svg(SamplePattern.drawing()));
        Box box = SamplePattern.drawing().bounds().grown(5);
        assertEquals(box.width(), Double.parseDouble(root.getAttribute("width").replace("mm", "")), 1e-6);
        assertEquals(
                box.height(), Double.parseDouble(root.getAttribute("height").replace("mm", "")), 1e-6);
        String[] view = root.getAttribute("viewBox").split(" ");
        assertEquals(box.width(), Double.parseDouble(view[2]), 1e-6);
        assertEquals(box.height(), Double.parseDouble(view[3]), 1e-6);
        String outline = ((Element) root.getElementsByTagName("path").item(0)).getAttribute("d");
        assertEquals("M 0 0 L 100 0 A 20 20 0 0 0 120 -20 L 120 -80 C 80 -95 40 -65 0 -80 L 0 0 Z", outline);
    }

    /** The box round all ink in what librsvg paints, 20 dots a millimetre. */
    @Test
    void librsvgPaintsItInMillimetres() throws IOException {
        byte[] svg = svg(Drawing.of(List.of(SamplePattern.outline())));
        String resolution = Double.toString(25.4 * DOTS_PER_MM);
        byte[] png = OutsideTool.runOn(
                svg, ".svg", "rsvg-convert", "-d", resolution, "-p", resolution, "-b", "white", "FILE");
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        int left = image.getWidth();
        int right = 0;
        int top = image.getHeight();
        int bottom = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, y) & 0xff) < 128) {
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y);
                }
            }
        }
        Box box = SamplePattern.outline().bounds().grown(0.35 / 2);
        assertEquals(box.width(), (right - left + 1) / DOTS_PER_MM, 0.15);
        assertEquals(box.height(), (bottom - top + 1) / DOTS_PER_MM, 0.15);
    }

    /** The boxes of all groups as Chromium lays them out: its pixel is 1/96 in (CSS Values and Units, 5.2). */
    @Test
    void chromiumLaysItOutInMillimetres() {
        List<Shape> plain = SamplePattern.drawing().shapes().stream()
                .filter(shape -> shape instanceof Path || shape instanceof Circle)
                .toList();
        String svg = new String(svg(Drawing.of(plain)), StandardCharsets.UTF_8);
        String page = "<!DOCTYPE html><html><body style='margin:0'>" + svg.substring(svg.indexOf("<svg"))
                + "<script>let told='';document.querySelectorAll('g').forEach(g=>{const b=g.getBBox(),m=g.getScreenCTM();"
                + "told+='['+g.id+' '+[(m.a*b.x+m.e),(m.d*b.y+m.f),m.a*b.width,m.d*b.height].join(' ')+']';});"
                + "document.body.textContent=told;</script></body></html>";
        String said = OutsideTool.chromium(page);
        Map<String, double[]> boxes = new HashMap<>();
        Matcher matcher = CSS_BOX.matcher(said);
        while (matcher.find()) {
            double[] box = new double[4];
            for (int i = 0; i < 4; i++) {
                box[i] = Double.parseDouble(matcher.group(i + 2)) * 25.4 / 96;
            }
            boxes.put(matcher.group(1), box);
        }
        Box all = Drawing.of(plain).bounds();
        for (Role role : List.of(Role.CUT, Role.FINISHED_EDGE, Role.INNER_CUT, Role.STITCH, Role.FOLD)) {
            Box drawn = Drawing.of(
                            plain.stream().filter(shape -> shape.role() == role).toList())
                    .bounds();
            double[] expected = {
                drawn.minX() - all.minX() + 5, all.maxY() - drawn.maxY() + 5, drawn.width(), drawn.height()
            };
            String id = "front." + Roles.name(role);
            assertTrue(boxes.containsKey(id), said);
            assertArrayEquals(expected, boxes.get(id), 0.01, id);
        }
    }

    @Test
    void anArcOfNearlyOrJustAWholeTurnIsDrawnWhole() throws Exception {
        Path round =
                Path.from(Point.of(5, 0)).arcAround(Point.of(0, 0), 2 * Math.PI).closed(Role.CUT);
        Element root = parsed(svg(Drawing.of(List.of(round))));
        assertEquals(
                "M 5 0 A 5 5 0 0 0 -5 0 A 5 5 0 0 0 5 0 Z",
                ((Element) root.getElementsByTagName("path").item(0)).getAttribute("d"));
    }

    @Test
    void theSameDrawingsGiveTheSameBytes() {
        assertArrayEquals(svg(SamplePattern.drawing()), svg(SamplePattern.drawing()));
    }
}
