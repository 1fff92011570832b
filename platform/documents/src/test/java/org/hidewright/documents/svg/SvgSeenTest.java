package org.hidewright.documents.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.hidewright.api.drawing.Box;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.documents.OutsideTool;
import org.hidewright.documents.ReadLines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read of a drawing beside what librsvg paints and Chromium lays out of it. */
class SvgSeenTest {
    private static final double DOTS_PER_MM = 10;
    private static final Pattern BOX = Pattern.compile("\\[([^ ]+) ([-\\d.e]+) ([-\\d.e]+) ([-\\d.e]+) ([-\\d.e]+)\\]");

    private static String page(String body) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='120mm' height='90mm' viewBox='-20 -10 240 180'>" + body
                + "</svg>";
    }

    /** The share of black over all dots, half-covered ones by half. */
    private static double inkMm2(String svg) throws IOException {
        String resolution = Double.toString(25.4 * DOTS_PER_MM);
        byte[] png = OutsideTool.runOn(
                svg.getBytes(StandardCharsets.UTF_8),
                ".svg",
                "rsvg-convert",
                "-d",
                resolution,
                "-p",
                resolution,
                "-b",
                "white",
                "FILE");
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        double dots = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dots += 1 - (image.getRGB(x, y) & 0xff) / 255.0;
            }
        }
        return dots / DOTS_PER_MM / DOTS_PER_MM;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<path d='M20 20C60 -10 120 60 180 10S200 120 150 140Q80 170 60 120T20 20Z'/>",
                "<g transform='rotate(20) skewX(15)'><path d='m80 20a60 25 30 1 1 -20 60z'/></g>",
                "<ellipse cx='90' cy='60' rx='70' ry='30' transform='matrix(.8 .3 -.2 1.1 10 5)'/>",
                "<rect x='10' y='10' width='140' height='90' rx='30' ry='12' transform='scale(1.1,1.3)'/>",
                "<polygon points='10,10 150,30 100,140.5 60,60' transform='translate(5 -3)'/>",
                "<path d='M30 30l100 10-30 80A50 50 0 0 1 30 30'/>"
            })
    void theAreaIsThatOfTheInk(String shape) throws IOException, FileTrouble {
        ReadDrawing drawing = ReadLines.of(new SvgReader(), page(shape));
        DrawnLine line = drawing.lines().get(0);
        assertTrue(line.closed());
        double ink = inkMm2(page(shape));
        assertTrue(ink > 500, "something is painted");
        assertEquals(ink, ReadLines.area(line.places()), 0.002 * ink);
    }

    @Test
    void theBoxesAreThoseOfThePlacesThatChromiumFindsAlongTheLines() throws FileTrouble {
        String svg = page("<g id='a' transform='translate(30 20) rotate(33)'>"
                + "<path id='b' transform='scale(.7 1.2)' d='M0 0c40-30 80 40 120 0s-20 90-60 60z'/>"
                + "<circle id='c' cx='20' cy='40' r='15'/></g>"
                + "<path id='d' transform='skewY(-12)' d='M120 60a40 18 25 0 0 60 20L130 120z'/>"
                + "<ellipse id='e' cx='60' cy='120' rx='40' ry='12' transform='rotate(-25 60 120)'/>");
        String html = "<!DOCTYPE html><html><body style='margin:0'>" + svg
                + "<script>let told='';document.querySelectorAll('[id]:not(g)').forEach(e=>{"
                + "const m=e.getScreenCTM(),n=20000,l=e.getTotalLength(),x=[],y=[];"
                + "for(let i=0;i<n;i++){const p=e.getPointAtLength(l*i/n).matrixTransform(m);x.push(p.x);y.push(p.y);}"
                + "const a=Math.min(...x),b=Math.min(...y);"
                + "told+='['+e.id+' '+[a,b,Math.max(...x)-a,Math.max(...y)-b].join(' ')+']';});"
                + "document.body.textContent=told;</script></body></html>";
        String said = OutsideTool.chromium(html);
        ReadDrawing drawing = ReadLines.of(new SvgReader(), svg);
        Matcher matcher = BOX.matcher(said);
        int found = 0;
        for (; matcher.find(); found++) {
            List<DrawnLine> lines = ReadLines.named(drawing, matcher.group(1));
            Box box = ReadLines.box(lines.get(0).places());
            // half a millimetre a unit, and the page begins at -20, -10
            double[] ours = {box.minX() + 10, -box.maxY() + 5, box.width(), box.height()};
            for (int i = 0; i < ours.length; i++) {
                double mm = Double.parseDouble(matcher.group(i + 2)) * 25.4 / 96;
                assertEquals(mm, ours[i], 0.01, matcher.group() + " " + i);
            }
        }
        assertEquals(4, found, said);
    }
}
