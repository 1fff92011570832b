package org.hidewright.liddedpouch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.benchwork.HeldSize;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.item.Seam;
import org.hidewright.api.measure.Length;
import org.hidewright.testkit.CalculatorRun;
import org.junit.jupiter.api.Test;

class LiddedPouchTest {
    private static final Closing STUD = new Closing.Stud(Length.ofMm(3), Length.ofMm(4), Length.ofMm(7));

    private static final Closing SNAP = new Closing.Snap(Length.ofMm(4.5), Length.ofMm(4), Length.ofMm(12.5));

    private static LiddedPouch.Asking asked(
            double w, double h, double t, Closing closing, Optional<LiddedPouch.Ring> ring) {
        return new LiddedPouch.Asking(
                new HeldSize(Length.ofMm(w), Length.ofMm(h), Length.ofMm(t)),
                Length.ofMm(4),
                Length.ofMm(2),
                Length.ofMm(1.4),
                Length.ofMm(3.85),
                closing,
                ring);
    }

    private static Optional<LiddedPouch.Ring> ring() {
        return Optional.of(new LiddedPouch.Ring(Length.ofMm(20), Length.ofMm(3)));
    }

    private static Outcome<LiddedPouch.Made> outcome(LiddedPouch.Asking asked) {
        return new LiddedPouch().calculate(asked, Working.NONE);
    }

    private static LiddedPouch.Made made(LiddedPouch.Asking asked) {
        return outcome(asked).answers().orElseThrow();
    }

    private static List<String> told(LiddedPouch.Asking asked) {
        return outcome(asked).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    @Test
    void thingsOfTheirStandardsGreatestSizeGoIn() {
        // four R6 cells of IEC 60086 side by side, 14.5 x 50.5 mm each; a pack of 54 playing cards of 0.3 mm
        for (double[] thing : new double[][] {{58, 50.5, 14.5}, {63.5, 88.9, 16.2}}) {
            LiddedPouch.Made made = made(asked(thing[0], thing[1], thing[2], STUD, Optional.empty()));
            double flange = 2 * 3.5;
            assertTrue(made.panelWidth().mm() - 2 * flange - 2 * 1.4 >= thing[0]);
            // web of the gusset between the flat faces of both panels, leather of the gusset not in it
            double web = made.gussetWidth().mm() - 2 * flange + 3 * 1.4 - Math.PI / 2 * 1.4;
            assertTrue(web >= thing[2], web + " is the depth");
            double inside =
                    made.item().part("front").orElseThrow().outline().bounds().height() - flange - 1.4;
            assertTrue(inside >= thing[1]);
        }
    }

    @Test
    void theGussetIsAsLongAsTheStitchesItIsSewnTo() {
        LiddedPouch.Made made = made(asked(80, 100, 30, STUD, Optional.empty()));
        Item item = made.item();
        Curve line = Curve.of(
                item.stitchLine(new OnPart("front", "rim")).orElseThrow().line());
        assertEquals(line.length() + 5, made.gussetLength().mm(), 1e-6);
        double edge = 2 * (item.part("front").orElseThrow().outline().bounds().height());
        assertTrue(made.gussetLength().mm() < edge + made.panelWidth().mm(), "shorter than along the edge");
        for (Seam seam : item.seams()) {
            assertEquals(
                    1,
                    seam.lines().stream()
                            .map(on -> item.stitchLine(on).orElseThrow().holes().size())
                            .distinct()
                            .count(),
                    seam.id());
        }
    }

    @Test
    void theLidGoesRoundTheGussetAndMeetsTheFront() {
        LiddedPouch.Made made = made(asked(80, 100, 30, SNAP, Optional.empty()));
        // a quarter turn round 1.5 mm of 2 mm leather: π/2 · 2.5; depth 32 and the front of 2 mm between
        double quarter = Math.PI / 2 * 2.5;
        assertEquals(32 + 2 - 3 + 2 * quarter, made.lid().mm(), 1e-9);
        Part back = made.item().part("back").orElseThrow();
        List<Double> folds = back.folds().stream().map(LiddedPouchTest::at).toList();
        double front =
                made.item().part("front").orElseThrow().outline().bounds().height();
        assertEquals(front + quarter / 2, folds.get(0), 1e-9);
        assertEquals(front + made.lid().mm() - quarter / 2, folds.get(1), 1e-9);
        List<OnPart> holes = made.item().fittings().get(0).holes();
        double onLid = made.item().hole(holes.get(0)).orElseThrow().centre().y();
        double onFront = made.item().hole(holes.get(1)).orElseThrow().centre().y();
        assertEquals(front - onFront, onLid - front - made.lid().mm(), 1e-9, "folded, they meet");
    }

    private static double at(Fold fold) {
        return fold.line().segments().get(0).start().y();
    }

    @Test
    void aRingHangsOnATab() {
        Item item = made(asked(80, 100, 30, STUD, ring())).item();
        assertTrue(item.part("tab").isPresent());
        assertTrue(told(asked(80, 100, 30, STUD, ring())).contains("ring-no-rating"));
        assertEquals(
                3,
                item.seams().stream()
                        .filter(seam -> seam.id().equals("tab-box"))
                        .findFirst()
                        .orElseThrow()
                        .lines()
                        .size());
        assertEquals("ring", item.operations().get(1).id());
    }

    @Test
    void whatCannotBeMadeIsRefused() {
        assertEquals(
                List.of("deeper-than-thing", "stiff-gusset", "own-use", "knife"),
                told(asked(80, 100, 2, STUD, Optional.empty())));
        // two bends of 1.5 mm and four thicknesses of 1.4 mm
        assertEquals(
                3 + 4 * 1.4 - 3 * 1.4 + 14 + Math.PI / 2 * 1.4,
                made(asked(80, 100, 2, STUD, Optional.empty())).gussetWidth().mm(),
                1e-9);
        assertEquals(
                List.of("stands-out-too-far"),
                told(asked(80, 20, 30, new Closing.Open(Length.ofMm(12)), Optional.empty())));
        assertEquals(List.of("no-room"), told(asked(10, 10, 30, STUD, ring())));
        // a front of 7 + 1.4 + h + 1 mm; the magnet 12.1 mm below its top, 8.1 mm from there to the seam, which is 3.5
        // mm up
        Closing magnet = new Closing.Magnet(Length.ofMm(9), Length.ofMm(4), Length.ofMm(5));
        assertEquals(List.of("no-room"), told(asked(80, 11.2, 30, magnet, Optional.empty())));
        assertEquals(List.of("own-use", "knife"), told(asked(80, 11.4, 30, magnet, Optional.empty())));
        assertEquals(
                List.of("own-use", "knife"),
                told(asked(80, 100, 30, new Closing.Open(Length.ofMm(12)), Optional.empty())));
    }

    private static List<String> working(LiddedPouch.Asking asked) {
        return CalculatorRun.of(new LiddedPouch(), asked)
                .working(value -> value instanceof Length length
                        ? String.format(Locale.ROOT, "%.3f", length.mm())
                        : String.valueOf(value));
    }

    @Test
    void everyAllowanceIsExplained() {
        List<String> lines = working(asked(80, 100, 30, STUD, Optional.empty()));
        assertEquals("G = D + 2 · f - 3 · s + π · s / 2 | D 32.000, f 7.000, s 1.400 | 43.999", lines.get(2));
        assertEquals("A = D + q - 2 · r + 2 · π / 2 · (r + q / 2) | D 32.000, q 2.000, r 1.500 | 38.854", lines.get(4));
        // 80 + 4 + 2 · 1.4 + 2 · 7, and 7 + 1.4 + 100 + 1
        assertEquals("W = w + e + 2 · s + 2 · f | w 80.000, e 4.000, s 1.400, f 7.000 | 100.800", lines.get(0));
        assertEquals("H = f + s + h + b | f 7.000, s 1.400, h 100.000, b 1.000 | 109.400", lines.get(1));
        Item item = made(asked(80, 100, 30, STUD, Optional.empty())).item();
        double line = Curve.of(item.stitchLine(new OnPart("front", "rim"))
                        .orElseThrow()
                        .line())
                .length();
        assertEquals(
                String.format(Locale.ROOT, "L = P + 2 · x | P %.3f, x 2.500 | %.3f", line, line + 5), lines.get(3));
        assertEquals(
                4,
                working(asked(80, 100, 30, new Closing.Open(Length.ofMm(10)), Optional.empty()))
                        .size());
    }

    @Test
    void partsAreAsLargeAsTheyMustBe() {
        LiddedPouch.Made made = made(asked(80, 100, 30, SNAP, ring()));
        Item item = made.item();
        // the thing and its ease, the gusset twice, and flanges of twice the margin of 3.5 mm
        assertEquals(80 + 4 + 2 * 1.4 + 4 * 3.5, made.panelWidth().mm(), 1e-9);
        double front = 7 + 1.4 + 100 + 1;
        assertEquals(front, item.part("front").orElseThrow().outline().bounds().height(), 1e-9);
        double hanging = 0.3 * front + 12.5 / 2 + 3 + 4;
        assertEquals(front + made.lid().mm() + hanging, made.backHeight().mm(), 1e-9);
        assertEquals(
                made.backHeight().mm(),
                item.part("back").orElseThrow().outline().bounds().height(),
                1e-9);
        assertEquals(
                front - 0.3 * front,
                item.hole(item.fittings().get(0).holes().get(1))
                        .orElseThrow()
                        .centre()
                        .y(),
                1e-9);
        double middle = made.panelWidth().mm() / 2;
        assertEquals(
                middle,
                item.hole(item.fittings().get(0).holes().get(0))
                        .orElseThrow()
                        .centre()
                        .x(),
                1e-9);
        List<Segment.Arc> arcs = item.part("back").orElseThrow().outline().segments().stream()
                .filter(Segment.Arc.class::isInstance)
                .map(Segment.Arc.class::cast)
                .toList();
        assertEquals(15, arcs.get(0).radius(), 1e-9, "flange and 8 mm");
        assertEquals(18, arcs.get(2).radius(), 1e-9, "of the lid");
        Part frontPart = item.part("front").orElseThrow();
        double seam = 2 * front + made.panelWidth().mm() - 60 + Math.PI * 15;
        assertEquals(seam, frontPart.edges().get(0).from(), 1e-6);
        assertEquals(seam + made.panelWidth().mm(), frontPart.edges().get(0).to(), 1e-6);
    }

    @Test
    void theTabIsSewnInTheMiddleOfTheBackBelowTheLid() {
        LiddedPouch.Made made = made(asked(80, 100, 30, SNAP, ring()));
        List<Point> box = made.item()
                .stitchLine(new OnPart("back", "tab-box"))
                .orElseThrow()
                .holes();
        double left = box.stream().mapToDouble(point -> point.x()).min().orElseThrow();
        double right = box.stream().mapToDouble(point -> point.x()).max().orElseThrow();
        double top = box.stream().mapToDouble(point -> point.y()).max().orElseThrow();
        double bottom = box.stream().mapToDouble(point -> point.y()).min().orElseThrow();
        assertEquals(made.panelWidth().mm(), left + right, 1e-9);
        assertEquals(19.5 - 6, right - left, 1e-9, "a tab half a millimetre narrower than its ring, margins of 3 mm");
        double front = 7 + 1.4 + 100 + 1;
        assertEquals(front - 7 - 5, top, 1e-9, "a neck of 5 mm below the ring");
        assertEquals(front - 7 - (5 + 14 + 3.5) + 3, bottom, 1e-9);
    }

    @Test
    void stepsAndLimitsAreThoseOfWhatIsChosen() {
        Item open = made(asked(80, 100, 30, new Closing.Open(Length.ofMm(10)), Optional.empty()))
                .item();
        assertEquals(
                List.of("mouths", "form", "front-sewn", "back-sewn", "edges"),
                open.operations().stream().map(operation -> operation.id()).toList());
        assertEquals(
                7 + 1.4 + 100 - 10,
                open.part("front").orElseThrow().outline().bounds().height(),
                1e-9);
        assertEquals(
                0,
                made(asked(80, 100, 30, new Closing.Open(Length.ofMm(10)), Optional.empty()))
                        .lid()
                        .mm());
        assertEquals(
                List.of("own-use", "knife"),
                told(asked(80, 20, 30, new Closing.Open(Length.ofMm(10)), Optional.empty())));
        assertTrue(told(new LiddedPouch.Asking(
                        new HeldSize(Length.ofMm(80), Length.ofMm(100), Length.ofMm(30)),
                        Length.ofMm(0.9),
                        Length.ofMm(2),
                        Length.ofMm(1.4),
                        Length.ofMm(3.85),
                        SNAP,
                        Optional.empty()))
                .contains("tight"));
    }

    @Test
    void whatCanBeSwallowedIsTold() {
        assertTrue(told(asked(31.6, 63.3, 20, STUD, Optional.empty())).contains("small-things"));
        assertTrue(!told(asked(31.7, 63.3, 20, STUD, Optional.empty())).contains("small-things"));
        assertTrue(!told(asked(31.6, 63.4, 20, STUD, Optional.empty())).contains("small-things"));
        assertTrue(!told(asked(31.6, 63.3, 31.7, STUD, Optional.empty())).contains("small-things"));
    }
}
