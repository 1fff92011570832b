package org.hidewright.sheath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;
import org.hidewright.testkit.CalculatorRun;
import org.junit.jupiter.api.Test;

class SheathTest {
    private static Sheath.Asking asked(
            double w, double h, double t, Sheath.Tip tip, Sheath.Tannage tannage, Optional<Length> belt) {
        return new Sheath.Asking(
                new Sheath.Blade(Length.ofMm(w), Length.ofMm(h), Length.ofMm(t)),
                tip,
                Length.ofMm(2),
                tannage,
                Length.ofMm(3),
                Length.ofMm(5),
                belt);
    }

    private static Sheath.Asking knife() {
        return asked(28, 110, 4, Sheath.Tip.BLUNT, Sheath.Tannage.VEGETABLE, Optional.of(Length.ofMm(40)));
    }

    private static Outcome<Sheath.Made> outcome(Sheath.Asking asked) {
        return new Sheath().calculate(asked, Working.NONE);
    }

    private static List<String> told(Sheath.Asking asked) {
        return outcome(asked).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    @Test
    void theBladeLiesBetweenTheWelts() {
        Sheath.Made made = outcome(knife()).answers().orElseThrow();
        // margin 4.5, welt 8.5 wide on either side, and the blade with its ease between
        assertEquals(28 + 2 + 2 * 8.5, made.panelWidth().mm(), 1e-9);
        assertEquals(8.5, made.weltWidth().mm(), 1e-9);
        Part welt = made.item().part("welt").orElseThrow();
        Curve outline = Curve.of(welt.outline());
        double front = 8.5 + 110;
        // every corner of the blade, 1 mm of ease on either side, is outside the welt and inside the front
        for (Point corner :
                List.of(Point.of(9.5, 8.6), Point.of(37.5, 8.6), Point.of(9.5, front), Point.of(37.5, front - 1))) {
            assertTrue(!outline.surrounds(corner), corner.toString());
        }
        assertTrue(outline.surrounds(Point.of(4, 60)));
    }

    @Test
    void theWeltIsAsThickAsTheBlade() {
        Sheath.Made made = outcome(knife()).answers().orElseThrow();
        assertEquals(2, made.weltLayers(), "two of 3 mm for 4 mm");
        assertEquals(2, made.item().part("welt").orElseThrow().pieces());
        assertEquals(12, made.stack().mm(), 1e-9);
        Sheath.Made thin = outcome(asked(28, 110, 3, Sheath.Tip.BLUNT, Sheath.Tannage.OTHER, Optional.empty()))
                .answers()
                .orElseThrow();
        assertEquals(1, thin.weltLayers());
        assertEquals(8.5 + 110, thin.backHeight().mm(), 1e-9, "without a loop");
    }

    @Test
    void oneSeamGoesThroughAllLayersWithTheSameHoles() {
        Item item = outcome(knife()).answers().orElseThrow().item();
        Seam rim = item.seams().stream()
                .filter(seam -> seam.id().equals("rim"))
                .findFirst()
                .orElseThrow();
        assertEquals("[front.rim, welt.rim, back.rim]", rim.lines().toString());
        List<Point> holes = item.stitchLine(rim.lines().get(0)).orElseThrow().holes();
        for (OnPart on : rim.lines()) {
            assertEquals(holes, item.stitchLine(on).orElseThrow().holes());
        }
    }

    @Test
    void foldedTheLoopMeetsItsRowsOnTheBack() {
        Item item = outcome(knife()).answers().orElseThrow().item();
        double bend = Math.PI * (3 + 1.5);
        double bendAt = 8.5 + 110 + 12;
        for (int nth = 1; nth <= 2; nth++) {
            List<Point> over = item.stitchLine(new OnPart("back", "loop-" + nth))
                    .orElseThrow()
                    .holes();
            List<Point> under = item.stitchLine(new OnPart("back", "loop-" + nth + "-under"))
                    .orElseThrow()
                    .holes();
            assertEquals(over.size(), under.size());
            for (int i = 0; i < over.size(); i++) {
                assertEquals(over.get(i).x(), under.get(i).x(), 1e-9);
                assertEquals(
                        over.get(i).y() - bendAt - bend, bendAt - under.get(i).y(), 1e-9);
            }
        }
        double first = item.stitchLine(new OnPart("back", "loop-1-under"))
                .orElseThrow()
                .holes()
                .get(0)
                .y();
        assertTrue(bendAt - first >= 40 + 6, "room for a belt of 40 mm");
    }

    @Test
    void whatIsRiskyIsTold() {
        assertEquals(List.of("stored-in-leather", "sharp", "law"), told(knife()));
        assertEquals(
                List.of("chrome-against-steel", "stored-in-leather", "sharp", "law"),
                told(asked(28, 110, 4, Sheath.Tip.ROUND, Sheath.Tannage.CHROME, Optional.empty())));
        assertTrue(told(asked(28, 110, 12, Sheath.Tip.ROUND, Sheath.Tannage.OTHER, Optional.empty()))
                .contains("thick-stack"));
        assertEquals(
                List.of("no-room"),
                told(asked(28, 20, 4, Sheath.Tip.ROUND, Sheath.Tannage.OTHER, Optional.of(Length.ofMm(100)))));
    }

    @Test
    void aLoopIsAsWideAsAStitchAtLeast() {
        // its rows end 2 mm inside the welts: the blade and 2 mm of ease, less 4 mm, against a pitch of 5 mm
        for (double blade : new double[] {1, 2, 6.9}) {
            assertEquals(
                    List.of("no-room"),
                    told(asked(blade, 110, 4, Sheath.Tip.BLUNT, Sheath.Tannage.OTHER, Optional.of(Length.ofMm(25)))));
        }
        assertTrue(!told(asked(7, 110, 4, Sheath.Tip.BLUNT, Sheath.Tannage.OTHER, Optional.of(Length.ofMm(25))))
                .contains("no-room"));
    }

    private static List<String> working(Sheath.Asking asked) {
        return CalculatorRun.of(new Sheath(), asked)
                .working(value -> value instanceof Length length
                        ? String.format(Locale.ROOT, "%.3f", length.mm())
                        : String.valueOf(value));
    }

    @Test
    void everyAllowanceIsExplained() {
        assertEquals(
                List.of(
                        "W = b + e + 2 · u | b 28.000, e 2.000, u 8.500 | 47.000",
                        "n = ceil(d / s) | s 3.000, d 4.000 | 2",
                        "L = r + π · (g + s / 2) + w + c | r 12.000, g 3.000, s 3.000, w 58.000, c 12.500 | 96.637"),
                working(knife()));
        assertEquals(
                2,
                working(asked(28, 110, 4, Sheath.Tip.BLUNT, Sheath.Tannage.OTHER, Optional.empty()))
                        .size());
        assertEquals(2, new Sheath().sources().size());
    }

    @Test
    void partsAreAsLargeAsTheyMustBe() {
        Sheath.Made made = outcome(knife()).answers().orElseThrow();
        Part back = made.item().part("back").orElseThrow();
        Part front = made.item().part("front").orElseThrow();
        assertEquals(118.5, front.outline().bounds().height(), 1e-9);
        // rise, bend, down past a belt of 40 mm and 6 mm, the box and the margin
        double loop = 12 + Math.PI * 4.5 + 58 + 8 + 4.5;
        assertEquals(118.5 + loop, back.outline().bounds().height(), 1e-9);
        assertEquals(118.5 + loop, made.backHeight().mm(), 1e-9);
        assertEquals(
                118.5 + 12 + Math.PI * 4.5 / 2,
                back.folds().get(0).line().segments().get(0).start().y(),
                1e-9);
        assertEquals(3, back.folds().get(0).insideRadius());
        assertEquals(8.5, radius(front, 0), 1e-9, "blunt: corners as round as the welt is wide");
        assertEquals(8, radius(back, 2), 1e-9, "of the loop");
        Part round = outcome(asked(28, 110, 4, Sheath.Tip.ROUND, Sheath.Tannage.VEGETABLE, Optional.empty()))
                .answers()
                .orElseThrow()
                .item()
                .part("front")
                .orElseThrow();
        assertEquals(47.0 / 2, radius(round, 0), 1e-9);
        double seam = 2 * 118.5 + 47 - 4 * 8.5 + Math.PI * 8.5;
        assertEquals(seam, front.edges().get(0).from(), 1e-6);
        assertEquals(seam + 47, front.edges().get(0).to(), 1e-6);
    }

    private static double radius(Part part, int nth) {
        return part.outline().segments().stream()
                .filter(Segment.Arc.class::isInstance)
                .map(segment -> ((Segment.Arc) segment).radius())
                .toList()
                .get(nth);
    }

    @Test
    void theRowsOfTheLoopKeepClearOfTheWelt() {
        Item item = outcome(knife()).answers().orElseThrow().item();
        List<Point> row = item.stitchLine(new OnPart("back", "loop-2-under"))
                .orElseThrow()
                .holes();
        assertEquals(10.5, row.get(0).x(), 1e-9);
        assertEquals(47 - 10.5, row.get(row.size() - 1).x(), 1e-9);
        double first = item.stitchLine(new OnPart("back", "loop-1-under"))
                .orElseThrow()
                .holes()
                .get(0)
                .y();
        assertEquals(8, first - row.get(0).y(), 1e-9);
        List<Point> over =
                item.stitchLine(new OnPart("back", "loop-1")).orElseThrow().holes();
        assertEquals(10.5, over.get(0).x(), 1e-9);
        assertEquals(47 - 10.5, over.get(over.size() - 1).x(), 1e-9);
        assertEquals(
                List.of("throat", "loop-on", "welt-on", "close", "stitch", "edges", "form"),
                item.operations().stream().map(operation -> operation.id()).toList());
        assertEquals(
                6,
                outcome(asked(28, 110, 4, Sheath.Tip.BLUNT, Sheath.Tannage.OTHER, Optional.empty()))
                        .answers()
                        .orElseThrow()
                        .item()
                        .operations()
                        .size());
    }

    @Test
    void limitsOfWhatIsToldAreExact() {
        // two panels and two layers of 3 mm are 12 mm; with three layers 15 mm
        assertEquals(
                List.of("stored-in-leather", "sharp", "law"),
                told(asked(28, 110, 6, Sheath.Tip.ROUND, Sheath.Tannage.OTHER, Optional.empty())));
        assertTrue(told(asked(28, 110, 6.1, Sheath.Tip.ROUND, Sheath.Tannage.OTHER, Optional.empty()))
                .contains("thick-stack"));
        Sheath.Asking loose = new Sheath.Asking(
                new Sheath.Blade(Length.ofMm(28), Length.ofMm(110), Length.ofMm(4)),
                Sheath.Tip.ROUND,
                Length.ofMm(5.1),
                Sheath.Tannage.VEGETABLE,
                Length.ofMm(2),
                Length.ofMm(5),
                Optional.empty());
        assertTrue(told(loose).contains("loose"));
        // thin leather has a margin of 4 mm, so a welt of 8
        assertEquals(
                28 + 5.1 + 16,
                outcome(loose).answers().orElseThrow().panelWidth().mm(),
                1e-9);
    }
}
