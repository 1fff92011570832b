package org.hidewright.sheath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;
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
}
