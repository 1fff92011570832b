package org.hidewright.core.item;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.item.Edge;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

class ItemFactsTest {
    private static final Point ORIGIN = Point.of(0, 0);

    /** A plate of 100 by 60 with a slot, a hole and a line of stitches. */
    static Part.Builder plate(String id) {
        return Part.of(id, "Plate " + id, Path.rectangle(Role.CUT, ORIGIN, 100, 60))
                .cutOut(Path.rectangle(Role.INNER_CUT, Point.of(10, 10), 20, 4))
                .hole(Hole.of("rivet", Point.of(80, 30), 4))
                .stitchLine(StitchLine.of(
                        "seam",
                        Path.line(Role.STITCH, Point.of(5, 5), Point.of(95, 5)),
                        List.of(Point.of(5, 5), Point.of(50, 5), Point.of(95, 5))))
                .fold(Fold.of("lid", Path.line(Role.FOLD, Point.of(0, 40), Point.of(100, 40)), 2, Face.GRAIN))
                .edge(Edge.of("top", "mouth", 160, 260))
                .edge(Edge.of("rest", "rim", 260, 160));
    }

    static Item item() {
        return Item.builder()
                .part(plate("front").thickness(1.8).pieces(2, 1).oversize(1.5).build())
                .part(plate("back").thickness(2.2).build())
                .seam(Seam.of("side", List.of(new OnPart("front", "seam"), new OnPart("back", "seam"))))
                .fitting(
                        Fitting.of("loop", "Rivet", List.of(new OnPart("front", "rivet"), new OnPart("back", "rivet"))))
                .build();
    }

    private static Map<String, Values> facts(Item item) {
        return ItemFacts.rows(item).stream().collect(Collectors.toMap(Values::rowId, Function.identity()));
    }

    private static void assertFact(double expected, Values row, String key) {
        Object value = row.get(key).orElseThrow();
        double found = value instanceof Length length
                ? length.mm()
                : value instanceof Area area ? area.mm2() : ((Integer) value).doubleValue();
        assertEquals(expected, found, 1e-9, row.rowId() + "." + key);
    }

    @Test
    void partsAreMeasuredAsFinishedAndAsCut() {
        Map<String, Values> facts = facts(item());
        double finished = 6000 - 80 - Math.PI * 4;
        assertFact(320, facts.get("front"), "length");
        assertFact(finished, facts.get("front"), "area");
        assertFact(103 * 63, facts.get("front"), "cut");
        assertFact(3, facts.get("front"), "count");
        assertFact(1.8, facts.get("front"), "stack");
        assertFact(6000, facts.get("back"), "cut");
        assertFact(4 * finished, facts.get("all"), "area");
        assertFact(3 * 103 * 63 + 6000, facts.get("all"), "cut");
        assertFact(4, facts.get("all"), "count");
    }

    @Test
    void whatIsOnPartsIsMeasured() {
        Map<String, Values> facts = facts(item());
        assertFact(100, facts.get("front.top"), "length");
        assertFact(220, facts.get("front.rest"), "length");
        assertFact(1.8, facts.get("front.rest"), "stack");
        assertFact(90, facts.get("back.seam"), "length");
        assertFact(3, facts.get("back.seam"), "count");
        assertFact(100, facts.get("back.lid"), "length");
        assertFact(400, facts.get("edges.mouth"), "length"); // three fronts and a back
        assertFact(880, facts.get("edges.rim"), "length");
    }

    @Test
    void seamsAndFittingsHaveTheStackOfTheirParts() {
        Map<String, Values> facts = facts(item());
        assertFact(4, facts.get("side"), "stack");
        assertFact(3, facts.get("side"), "count");
        assertFact(90, facts.get("side"), "length");
        assertFact(4, facts.get("loop"), "stack");
        assertFact(2, facts.get("loop"), "count");
        Item unknown = Item.builder()
                .part(plate("front").build())
                .seam(Seam.of("row", List.of(new OnPart("front", "seam"))))
                .build();
        assertTrue(facts(unknown).get("row").get("stack").isEmpty(), "no thickness, no stack");
        assertTrue(facts(unknown).get("front").get("stack").isEmpty());
    }

    @Test
    void aDrawingOfAPartTellsCutAndFinishedEdgeApart() {
        Drawing front = PartDrawing.of(item().parts().get(0));
        assertEquals(103, front.bounds().width(), 1e-9);
        assertEquals(
                List.of(Role.CUT, Role.FINISHED_EDGE, Role.INNER_CUT, Role.INNER_CUT, Role.STITCH),
                front.shapes().stream().map(Shape::role).limit(5).toList());
        Drawing back = PartDrawing.of(item().parts().get(1));
        assertEquals(100, back.bounds().width(), 1e-9);
        assertTrue(back.shapes().stream().noneMatch(shape -> shape.role() == Role.FINISHED_EDGE));
        Drawing turned = PartDrawing.of(plate("x").direction(Math.PI / 2).build());
        assertTrue(turned.shapes().stream().anyMatch(shape -> shape.role() == Role.DIRECTION));
    }

    @Test
    void aPictureHasAllPartsApartFromEachOtherAndNamed() {
        Drawing picture = ItemPicture.of(item()).drawing();
        List<Box> parts = picture.shapes().stream()
                .filter(shape -> shape.role() == Role.CUT)
                .map(Shape::bounds)
                .toList();
        assertEquals(2, parts.size());
        Box a = parts.get(0);
        Box b = parts.get(1);
        assertTrue(a.maxX() < b.minX() || b.maxX() < a.minX() || a.maxY() < b.minY() || b.maxY() < a.minY());
        assertEquals(
                List.of("Plate front", "Plate back"),
                picture.shapes().stream()
                        .filter(Label.class::isInstance)
                        .map(label -> ((Label) label).text())
                        .toList());
    }

    @Test
    void theNameOfANarrowPartRunsAlongItAndClearOfItsArrow() {
        Label plain = name(Part.of("strip", "Strip", Path.rectangle(Role.CUT, Point.of(0, 0), 20, 100)));
        assertEquals(Math.PI / 2, plain.turn(), 1e-9);
        assertEquals(10, plain.at().x(), 0.5, "in its middle");
        Label beside = name(Part.of("strip", "Strip", Path.rectangle(Role.CUT, Point.of(0, 0), 20, 100))
                .direction(Math.PI / 2));
        assertEquals(Math.PI / 2, beside.turn(), 1e-9);
        assertTrue(beside.at().distanceTo(plain.at()) > beside.height(), "clear of the arrow in its middle");
        Label wide = name(Part.of("strip", "Strip", Path.rectangle(Role.CUT, Point.of(0, 0), 100, 60))
                .direction(Math.PI));
        assertEquals(0, wide.turn(), 1e-9);
        assertTrue(Math.abs(wide.at().y() - 30) > wide.height(), "clear of the arrow in its middle");
    }

    private static Label name(Part.Builder part) {
        return ItemPicture.of(Item.builder().part(part.build()).build()).drawing().shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** Work of which nobody said how long it takes is there, and nothing more is known of it. */
    @Test
    void workWithoutATimeIsARowWithoutFacts() {
        Item item = Item.builder()
                .part(Part.of("strip", "Strip", Path.rectangle(Role.CUT, Point.of(0, 0), 100, 20))
                        .build())
                .operation(Operation.of("lay", "Lay it round the ring").build())
                .build();
        Map<String, Values> rows = facts(item);
        assertEquals(Map.of(), rows.get("lay").entries());
        assertTrue(rows.get("all").get("hands-on").isEmpty());
    }
}
