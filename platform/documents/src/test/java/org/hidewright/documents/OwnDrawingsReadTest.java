package org.hidewright.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Curve;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.documents.dxf.DxfReader;
import org.hidewright.documents.dxf.DxfWriter;
import org.hidewright.documents.dxf.OldDxfWriter;
import org.hidewright.documents.svg.SvgReader;
import org.hidewright.documents.svg.SvgWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Patterns as they are written, read back: the areas are those of the curves they were made of. */
class OwnDrawingsReadTest {
    static Stream<Arguments> kinds() {
        return Stream.of(
                Arguments.of(new SvgWriter(), new SvgReader()),
                Arguments.of(new DxfWriter(), new DxfReader()),
                Arguments.of(new OldDxfWriter(), new DxfReader()));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aPatternComesBackAsItWasWritten(DrawingWriter writer, DrawingReader reader) throws FileTrouble {
        ReadDrawing drawing = reader.read(writer.write("Kit", SamplePattern.named()));
        List<DrawnLine> cut = of(Role.CUT, drawing);
        assertEquals(1, cut.size());
        double area = Curve.of(SamplePattern.outline()).area();
        assertTrue(area > 8000, area + " mm²");
        // a chain for a cubic leaves it by 0.005 mm at most where the release has none
        assertEquals(
                area,
                ReadLines.area(cut.get(0).places()),
                0.007 * ReadLines.length(cut.get(0).places()));
        Box box = ReadLines.box(cut.get(0).places());
        assertEquals(SamplePattern.outline().bounds().width(), box.width(), 0.01);
        assertEquals(SamplePattern.outline().bounds().height(), box.height(), 0.01);
        assertEquals(
                60 * 50, ReadLines.area(of(Role.FINISHED_EDGE, drawing).get(0).places()), 1e-3);
        List<DrawnLine> inner = of(Role.INNER_CUT, drawing);
        ReadLines.assertArea(30 * 10 + Math.PI * 25, inner.get(0)); // a slot, 30 mm between its centres and 10 mm wide
        ReadLines.assertArea(Math.PI * 4.5 * 4.5 / 4, inner.get(1));
        assertEquals(2, inner.size());
    }

    private static List<DrawnLine> of(Role role, ReadDrawing drawing) {
        String name = Roles.name(role);
        return drawing.lines().stream()
                .filter(DrawnLine::closed)
                .filter(line -> line.names().stream()
                        .map(given -> given.toLowerCase(Locale.ROOT))
                        .anyMatch(given -> given.equals(name) || given.endsWith("." + name)))
                .toList();
    }
}
