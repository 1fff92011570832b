package org.hidewright.core.item;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.item.StitchLine;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.ItemWords;
import org.junit.jupiter.api.Test;

/** Each check just where it begins and just before; distances worked by hand. */
class ItemChecksTest {
    private static List<String> told(Item item) {
        return ItemChecks.told(item, new ItemWords((key, language) -> Optional.empty())).stream()
                .map(ItemChecksTest::shown)
                .toList();
    }

    private static String shown(Notice notice) {
        List<String> args = new ArrayList<>();
        for (Object arg : notice.args()) {
            args.add(
                    arg instanceof Length length
                            ? String.format(Locale.ROOT, "%.2f", length.mm())
                            : String.valueOf(arg));
        }
        return notice.kind().key() + " " + String.join(" ", args);
    }

    /** A plate of 100 by 60 whose lower left corner lies at 10, 20. */
    private static Item plate(UnaryOperator<Part.Builder> with) {
        Part.Builder plate = Part.of("plate", "Plate", Path.rectangle(Role.CUT, Point.of(10, 20), 100, 60));
        return Item.builder().part(with.apply(plate).build()).build();
    }

    private static Point at(double x, double y) {
        return Point.of(10 + x, 20 + y);
    }

    private static StitchLine line(String id, double y, Point... holes) {
        return StitchLine.of(id, Path.line(Role.STITCH, at(5, y), at(95, y)), List.of(holes));
    }

    @Test
    void anItemWithoutFaultHasNoChecks() {
        assertEquals(List.of(), told(plate(part -> part)));
        assertEquals(List.of(), told(ItemFactsTest.item()));
    }

    @Test
    void aHoleIsTwoDiametersFromTheEdge() {
        assertEquals(List.of(), told(plate(part -> part.hole(Hole.of("a", at(50, 8), 4)))));
        assertEquals(
                List.of("item-hole-near-edge 1 Plate 50.00 7.90 a 7.90 8.00"),
                told(plate(part -> part.hole(Hole.of("a", at(50, 7.9), 4)))));
        assertEquals(
                List.of("item-hole-near-edge 1 Plate 50.00 30.00 a 5.00 8.00"),
                told(plate(part -> part.cutOut(Path.rectangle(Role.INNER_CUT, at(55, 20), 20, 20))
                        .hole(Hole.of("a", at(50, 30), 4)))),
                "the edge of a window too");
        assertEquals(
                List.of("item-hole-outside 1 Plate 50.00 -1.00"),
                told(plate(part -> part.hole(Hole.of("a", at(50, -1), 4)))));
    }

    @Test
    void holesAreThreeDiametersApart() {
        assertEquals(
                List.of(),
                told(plate(part -> part.hole(Hole.of("a", at(40, 30), 4)).hole(Hole.of("b", at(52, 30), 2)))));
        assertEquals(
                List.of("item-holes-near 1 Plate 40.00 30.00 a b 11.90 12.00"),
                told(plate(part -> part.hole(Hole.of("a", at(40, 30), 4)).hole(Hole.of("b", at(51.9, 30), 2)))));
    }

    @Test
    void aLargeHoleThatHoldsNothingLeavesLeatherAsAWindowDoes() {
        assertEquals(List.of(), told(plate(part -> part.hole(Hole.of("a", at(50, 13), 20)))));
        assertEquals(
                List.of("item-hole-near-edge 1 Plate 50.00 12.90 a 12.90 13.00"),
                told(plate(part -> part.hole(Hole.of("a", at(50, 12.9), 20)))));
        assertEquals(
                List.of("item-holes-near 1 Plate 40.00 30.00 a b 13.90 14.00"),
                told(plate(part -> part.hole(Hole.of("a", at(40, 30), 20)).hole(Hole.of("b", at(53.9, 30), 2)))));
    }

    /** Round 2 in leather of 2: π/4 · 3 = 2.356, one thickness 2, half of the hole 1.5: 5.856. */
    @Test
    void aHoleStaysClearOfABend() {
        assertEquals(List.of(), told(folded(2, 5.9)));
        assertEquals(List.of("item-hole-near-fold 1 Plate 50.00 35.80 a lid 5.80 5.86"), told(folded(2, 5.8)));
    }

    private static Item folded(double radius, double away) {
        return plate(part -> part.thickness(2)
                .fold(Fold.of("lid", Path.line(Role.FOLD, at(0, 30), at(100, 30)), radius, Face.GRAIN))
                .hole(Hole.of("a", at(50, 30 + away), 3)));
    }

    @Test
    void aFoldIsNotTighterThanAQuarterOfTheThickness() {
        assertEquals(List.of(), told(folded(0.5, 20)));
        assertEquals(List.of("item-fold-tight 1 Plate 0.00 30.00 lid 0.49 2.00"), told(folded(0.49, 20)));
        assertEquals(
                List.of(),
                told(plate(part -> part.thickness(2)
                        .fold(Fold.of("lid", Path.line(Role.FOLD, at(0, 30), at(100, 30)), 0, Face.FLESH)))));
    }

    @Test
    void stitchesKeepFromTheEdge() {
        assertEquals(List.of(), told(plate(part -> part.stitchLine(line("rim", 2.5, at(10, 2.5), at(50, 2.5))))));
        assertEquals(
                List.of("item-stitch-near-edge 1 Plate 30.00 2.40 rim 2.40 2.50"),
                told(plate(part -> part.stitchLine(line("rim", 2.4, at(10, 2.4), at(30, 2.4), at(50, 2.4))))));
    }

    @Test
    void aLineMayEndNearAnEdgeItRunsOutTo() {
        StitchLine across = StitchLine.of(
                "across", Path.line(Role.STITCH, at(50, 1), at(50, 40)), List.of(at(50, 1), at(50, 20), at(50, 40)));
        assertEquals(List.of(), told(plate(part -> part.stitchLine(across))));
    }

    @Test
    void aStitchBesideTheLeatherIsTold() {
        assertEquals(
                List.of("item-stitch-off-part 1 Plate 101.00 30.00 rim"),
                told(plate(part -> part.stitchLine(line("rim", 30, at(50, 30), at(101, 30))))));
    }

    @Test
    void holesOfTwoLinesAreApartOrOne() {
        StitchLine one = line("one", 30, at(50, 30), at(54, 30));
        assertEquals(List.of(), told(plate(part -> part.stitchLine(one).stitchLine(line("two", 31.5, at(50, 31.5))))));
        assertEquals(
                List.of("item-stitches-near 1 Plate 50.00 30.00 one two 1.40 1.50"),
                told(plate(part -> part.stitchLine(one).stitchLine(line("two", 31.4, at(50, 31.4))))));
        assertEquals(List.of(), told(plate(part -> part.stitchLine(one).stitchLine(line("two", 30, at(50, 30))))));
    }

    @Test
    void aStitchLineKeepsFromAFittingButNotFromAFreeHole() {
        Part part = Part.of("plate", "Plate", Path.rectangle(Role.CUT, Point.of(10, 20), 100, 60))
                .hole(Hole.of("a", at(50, 33.4), 4))
                .stitchLine(line("rim", 30, at(10, 30)))
                .build();
        assertEquals(List.of(), told(Item.builder().part(part).build()));
        assertEquals(
                List.of("item-stitch-through-fitting 1 Plate 50.00 33.40 rim a 1.40 1.50"),
                told(Item.builder()
                        .part(part)
                        .fitting(Fitting.of("rivet", "Rivet", List.of(new OnPart("plate", "a"))))
                        .build()));
    }

    @Test
    void leatherIsLeftBetweenWindows() {
        assertEquals(List.of(), told(windows(3, 3)));
        assertEquals(List.of("item-little-left 1 Plate 2.90 20.00 2.90 3.00"), told(windows(2.9, 3)));
        List<String> between = told(windows(3, 2.9));
        assertEquals(1, between.size());
        assertTrue(between.get(0).startsWith("item-little-left 1 Plate")
                && between.get(0).endsWith("2.90 3.00"));
    }

    private static Item windows(double left, double between) {
        return plate(part -> part.cutOut(Path.rectangle(Role.INNER_CUT, at(left, 20), 20, 10))
                .cutOut(Path.rectangle(Role.INNER_CUT, at(left + 20 + between, 15), 20, 30)));
    }

    @Test
    void aPartThatComesApartIsToldOfThatAlone() {
        Path bowTie = Path.from(Point.of(0, 0))
                .lineTo(40, 30)
                .lineTo(40, 0)
                .lineTo(0, 30)
                .lineTo(0, 0)
                .closed(Role.CUT);
        Item item = Item.builder()
                .part(Part.of("bow", "Bow", bowTie)
                        .hole(Hole.of("a", Point.of(1, 15), 4))
                        .build())
                .build();
        assertEquals(List.of("item-crosses 1 Bow 20.00 15.00"), told(item));
        assertTrue(told(plate(part -> part.cutOut(Path.rectangle(Role.INNER_CUT, at(90, 20), 20, 10)))).stream()
                .anyMatch(text -> text.matches("item-hole-outside . Plate 100.00 20.00")));
        assertEquals(
                List.of("item-holes-meet 1 Plate 40.00 25.00", "item-holes-meet 2 Plate 30.00 20.00"),
                told(plate(part -> part.cutOut(Path.rectangle(Role.INNER_CUT, at(20, 20), 20, 10))
                                .cutOut(Path.rectangle(Role.INNER_CUT, at(30, 15), 20, 10))))
                        .stream()
                        .sorted()
                        .toList());
    }

    @Test
    void aStrapGoesOnBeyondItsLastHole() {
        assertEquals(List.of(), told(strap(25, 3)));
        assertEquals(List.of("item-ends-soon 1 Strap 176.00 12.50 h3 24.00 25.00"), told(strap(24, 3)));
        assertEquals(List.of(), told(strap(24, 2)), "two holes are no row");
    }

    private static Item strap(double left, int holes) {
        Part.Builder strap = Part.of("strap", "Strap", Path.rectangle(Role.CUT, Point.of(0, 0), 200, 25));
        for (int i = 1; i <= holes; i++) {
            strap.hole(Hole.of("h" + i, Point.of(200 - left - (holes - i) * 25.0, 12.5), 4));
        }
        return Item.builder().part(strap.build()).build();
    }

    @Test
    void linesOfASeamHaveAsManyHoles() {
        Part one = Part.of("one", "One", Path.rectangle(Role.CUT, Point.of(10, 20), 100, 60))
                .stitchLine(line("rim", 30, at(10, 30), at(20, 30), at(30, 30)))
                .build();
        Part two = Part.of("two", "Two", Path.rectangle(Role.CUT, Point.of(10, 20), 100, 60))
                .stitchLine(line("rim", 30, at(10, 30), at(20, 30)))
                .build();
        Item item = Item.builder()
                .part(one)
                .part(two)
                .seam(Seam.of("side", List.of(new OnPart("one", "rim"), new OnPart("two", "rim"))))
                .build();
        assertEquals(
                List.of("item-counts-differ 1 Two 5.00 30.00 side item-on[Two, rim] 2 item-on[One, rim] 3"),
                told(item));
    }

    @Test
    void eachCheckIsMarkedByItsNumberOnThePictureAndThePattern() {
        Item item = plate(part -> part.hole(Hole.of("a", at(50, 5), 4)).hole(Hole.of("b", at(90, 5), 4)));
        Drawing picture = ItemPicture.of(item).drawing();
        assertEquals(List.of("Plate", "1", "2"), labels(picture));
        Drawing pattern = PartPattern.marked(
                item.parts().get(0), ItemChecks.of(item), new PartPattern.Words(List.of("Plate"), hole -> ""));
        assertEquals(List.of("Plate", "1", "2"), labels(pattern));
        assertTrue(pattern.shapes().stream()
                .anyMatch(shape -> shape instanceof Circle ring
                        && ring.role() == Role.NOTE
                        && ring.centre().equals(at(90, 5))));
    }

    private static List<String> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(shape -> ((Label) shape).text())
                .toList();
    }

    @Test
    void ofVeryManyTheFirstAreToldAndHowManyMore() {
        Item item = plate(part -> {
            for (int i = 0; i < 45; i++) {
                part.hole(Hole.of("h" + i, at(5 + 2 * i, 1), 0.6));
            }
            return part;
        });
        List<String> told = told(item);
        assertEquals(41, told.size());
        assertEquals("item-more-checks 5", told.get(40));
        assertEquals(40, ItemChecks.of(item).size());
    }
}
