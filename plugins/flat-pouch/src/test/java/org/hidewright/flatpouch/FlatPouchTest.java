package org.hidewright.flatpouch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.hidewright.api.benchwork.Closing;
import org.hidewright.api.benchwork.HeldSize;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Length;
import org.hidewright.testkit.CalculatorRun;
import org.junit.jupiter.api.Test;

class FlatPouchTest {
    private static final Closing SNAP = new Closing.Snap(Length.ofMm(4.5), Length.ofMm(4), Length.ofMm(12.5));

    private static FlatPouch.Asking asked(double w, double h, double t, FlatPouch.Bottom bottom, Closing closing) {
        return new FlatPouch.Asking(
                new HeldSize(Length.ofMm(w), Length.ofMm(h), Length.ofMm(t)),
                bottom,
                Length.ofMm(4),
                Length.ofMm(2),
                Length.ofMm(3.85),
                closing);
    }

    private static Outcome<FlatPouch.Made> outcome(FlatPouch.Asking asked) {
        return new FlatPouch().calculate(asked, Working.NONE);
    }

    private static FlatPouch.Made made(FlatPouch.Asking asked) {
        return outcome(asked).answers().orElseThrow();
    }

    private static List<String> told(FlatPouch.Asking asked) {
        return outcome(asked).notices().stream()
                .map(notice -> notice.kind().key())
                .toList();
    }

    @Test
    void thingsOfTheirStandardsGreatestSizeGoIn() {
        // largest ID-1 card of ISO/IEC 7810, four of 0.84 mm; largest R6 cell of IEC 60086, 14.5 x 50.5 mm; A6 of ISO
        // 216 with 1.5 mm
        for (double[] thing : new double[][] {{85.72, 54.03, 3.36}, {14.5, 50.5, 14.5}, {106.5, 149.5, 8}}) {
            FlatPouch.Made made = made(asked(thing[0], thing[1], thing[2], FlatPouch.Bottom.SQUARE, SNAP));
            // girth of the two panels inside the seams against that of the thing, sharp-edged as it is at most
            assertTrue(2 * made.betweenSeams().mm() >= 2 * (thing[0] + thing[2]));
            Part front = made.item().part("front").orElseThrow();
            double seam = front.stitchLines().get(0).holes().stream()
                    .mapToDouble(Point::y)
                    .min()
                    .orElseThrow();
            assertTrue(front.outline().bounds().maxY() - seam >= thing[1] + thing[2] / 2, "deep enough");
        }
    }

    @Test
    void panelsAreHalfTheGirthAndTheEase() {
        FlatPouch.Made made = made(asked(80, 120, 12, FlatPouch.Bottom.SQUARE, SNAP));
        assertEquals(80 + 12 + 4, made.betweenSeams().mm(), 1e-9);
        assertEquals(96 + 2 * 3.5, made.panelWidth().mm(), 1e-9);
        // margin, half the thickness, the thing, 2 mm of room
        Box front = made.item().part("front").orElseThrow().outline().bounds();
        assertEquals(3.5 + 6 + 120 + 2, front.height(), 1e-9);
        // half a turn round 6 mm and the front of 2 mm, along the middle of 2 mm
        assertEquals(Math.PI * (6 + 2 + 1), made.flapBend().mm(), 1e-9);
        assertEquals((Math.PI * 9 - Math.PI * 3) / 2, made.slackEmpty().mm(), 1e-9);
    }

    @Test
    void theFlapMeetsTheFrontWhereTheClosureIs() {
        FlatPouch.Made made = made(asked(80, 120, 12, FlatPouch.Bottom.SQUARE, SNAP));
        Item item = made.item();
        List<OnPart> holes = item.fittings().get(0).holes();
        double onFlap = item.hole(holes.get(0)).orElseThrow().centre().y();
        double onFront = item.hole(holes.get(1)).orElseThrow().centre().y();
        double top = item.part("front").orElseThrow().outline().bounds().maxY();
        double bendEnd = top + made.flapBend().mm();
        assertEquals(top - onFront, onFlap - bendEnd, 1e-9, "folded proof: as far below the top as beyond the bend");
        assertEquals("back", holes.get(0).part());
        double end = item.part("back").orElseThrow().outline().bounds().maxY();
        assertTrue(end - onFlap >= 12.5 / 2 + 3, "leather beyond the cap");
    }

    @Test
    void bothPanelsHaveTheSameHoles() {
        Item item = made(asked(60, 60, 14, FlatPouch.Bottom.ROUND, new Closing.Open(Length.ofMm(12))))
                .item();
        List<Point> front =
                item.part("front").orElseThrow().stitchLines().get(0).holes();
        List<Point> back = item.part("back").orElseThrow().stitchLines().get(0).holes();
        assertEquals(front, back);
        assertEquals(0, item.fittings().size());
        // a round bottom is a half circle of half the width
        double width = 60 + 14 + 4 + 7;
        Part part = item.part("front").orElseThrow();
        assertEquals(0, Curve.of(part.outline()).distanceTo(Point.of(width / 2, 0)), 1e-9);
        double half = width / 2 * Math.sqrt(0.5);
        assertEquals(0, Curve.of(part.outline()).distanceTo(Point.of(width / 2 + half, width / 2 - half)), 1e-9);
    }

    @Test
    void openTheThingStandsOut() {
        FlatPouch.Made made = made(asked(80, 120, 12, FlatPouch.Bottom.SQUARE, new Closing.Open(Length.ofMm(15))));
        assertEquals(3.5 + 6 + 120 - 15, made.backHeight().mm(), 1e-9);
        assertEquals(0, made.flapBend().mm());
        assertEquals(
                List.of("stands-out-too-far"),
                told(asked(80, 20, 12, FlatPouch.Bottom.SQUARE, new Closing.Open(Length.ofMm(15)))));
    }

    @Test
    void everyClosureHasItsPlace() {
        for (Closing closing : List.of(
                SNAP,
                new Closing.Stud(Length.ofMm(3), Length.ofMm(4), Length.ofMm(7)),
                new Closing.Magnet(Length.ofMm(9), Length.ofMm(4), Length.ofMm(18)))) {
            assertEquals(List.of("own-use", "knife"), told(asked(80, 120, 10, FlatPouch.Bottom.SQUARE, closing)));
        }
        assertEquals(
                List.of("no-room"),
                told(asked(
                        5,
                        10,
                        1,
                        FlatPouch.Bottom.SQUARE,
                        new Closing.Magnet(Length.ofMm(20), Length.ofMm(4), Length.ofMm(18)))));
    }

    @Test
    void aClosureIsNotCutIntoTheSeamOrOverTheEdge() {
        // a front of 3.5 + 6 + h + 2 mm; the magnet 12.1 mm below its top, 8.1 mm from there to the seam, which is 3.5
        // mm up
        Closing magnet = new Closing.Magnet(Length.ofMm(9), Length.ofMm(4), Length.ofMm(5));
        assertEquals(List.of("no-room"), told(asked(300, 9.1, 12, FlatPouch.Bottom.SQUARE, magnet)));
        assertEquals(List.of("own-use", "knife"), told(asked(300, 9.3, 12, FlatPouch.Bottom.SQUARE, magnet)));
        // a panel of 15 mm, stitched 3.5 mm from its edges, and slits of 12 mm
        Closing wide = new Closing.Magnet(Length.ofMm(9), Length.ofMm(12), Length.ofMm(5));
        assertEquals(List.of("no-room"), told(asked(3, 120, 1, FlatPouch.Bottom.SQUARE, wide)));
        // a flap of 3 + 1 + 7 = 11 mm, and a neck of 12 mm
        assertEquals(
                List.of("no-room"),
                told(new FlatPouch.Asking(
                        new HeldSize(Length.ofMm(3), Length.ofMm(120), Length.ofMm(1)),
                        FlatPouch.Bottom.SQUARE,
                        Length.ofMm(0),
                        Length.ofMm(2),
                        Length.ofMm(3.85),
                        new Closing.Stud(Length.ofMm(2), Length.ofMm(12), Length.ofMm(5)))));
    }

    @Test
    void aThickThingIsSlackWhenItIsOut() {
        assertTrue(told(asked(80, 120, 30, FlatPouch.Bottom.SQUARE, SNAP)).contains("flap-slack"));
    }

    @Test
    void theWorkIsInAnOrderThatWorks() {
        Item item = made(asked(80, 120, 12, FlatPouch.Bottom.SQUARE, SNAP)).item();
        assertEquals(
                List.of("mouth", "set", "glue", "stitch", "edges", "fit"),
                item.operations().stream().map(operation -> operation.id()).toList());
    }

    private static List<String> working(FlatPouch.Asking asked) {
        return CalculatorRun.of(new FlatPouch(), asked)
                .working(value -> value instanceof Length length
                        ? String.format(Locale.ROOT, "%.3f", length.mm())
                        : String.valueOf(value));
    }

    @Test
    void everyAllowanceIsExplained() {
        assertEquals(
                List.of(
                        "B = w + t + e | w 80.000, t 12.000, e 4.000 | 96.000",
                        "H = m + t / 2 + h + a | m 3.500, t 12.000, h 120.000, a 2.000 | 131.500",
                        "L = π · (t / 2 + s + s / 2) | t 12.000, s 2.000 | 28.274"),
                working(asked(80, 120, 12, FlatPouch.Bottom.SQUARE, SNAP)));
        assertEquals(
                2,
                working(asked(80, 120, 12, FlatPouch.Bottom.SQUARE, new Closing.Open(Length.ofMm(15))))
                        .size());
        assertEquals(2, new FlatPouch().sources().size());
    }

    @Test
    void cornersFlapAndClosureAreWhereTheyBelong() {
        Item item = made(asked(80, 120, 12, FlatPouch.Bottom.SQUARE, SNAP)).item();
        Part back = item.part("back").orElseThrow();
        // corners: 8 mm and the margin; the flap: bend, three tenths of the height, and 4 mm beyond the cap
        assertEquals(11.5, radius(back, 0), 1e-9);
        double bend = Math.PI * 9;
        double hanging = 0.3 * 131.5 + 12.5 / 2 + 3 + 4;
        assertEquals(131.5 + bend + hanging, back.outline().bounds().height(), 1e-9);
        assertEquals(18, radius(back, 2), 1e-9, "of the flap");
        assertEquals(
                103.0 / 2,
                item.hole(item.fittings().get(0).holes().get(0))
                        .orElseThrow()
                        .centre()
                        .x(),
                1e-9);
        assertEquals(
                131.5 + bend / 2,
                back.folds().get(0).line().segments().get(0).start().y(),
                1e-9);
        assertEquals(8, back.folds().get(0).insideRadius(), 1e-9);
        Part front = item.part("front").orElseThrow();
        double seam = 2 * 131.5 + 103 - 4 * 11.5 + Math.PI * 11.5;
        assertEquals(seam, front.edges().get(0).from(), 1e-6);
        assertEquals(seam + 103, front.edges().get(0).to(), 1e-6);
    }

    /** Of the nth arc of an outline. */
    private static double radius(Part part, int nth) {
        return part.outline().segments().stream()
                .filter(Segment.Arc.class::isInstance)
                .map(segment -> ((Segment.Arc) segment).radius())
                .toList()
                .get(nth);
    }

    @Test
    void smallPouchesHaveSmallCorners() {
        Part small = made(asked(10, 30, 2, FlatPouch.Bottom.SQUARE, SNAP))
                .item()
                .part("back")
                .orElseThrow();
        // width 23 mm: a third below, a third of the width for the flap
        assertEquals(23.0 / 3, radius(small, 0), 1e-9);
        assertEquals(23.0 / 3, radius(small, 2), 1e-9);
    }

    @Test
    void limitsOfWhatIsToldAreExact() {
        FlatPouch.Asking just = asked(80, 30, 12, FlatPouch.Bottom.SQUARE, new Closing.Open(Length.ofMm(15)));
        assertEquals(List.of("own-use", "knife"), told(just), "half of it may stand out");
        assertTrue(told(tight(0.99)).contains("tight"));
        assertEquals(List.of("own-use", "knife"), told(tight(1)));
        // slack: a quarter of π times the thickness
        assertEquals(List.of("own-use", "knife"), told(asked(80, 120, 15.2, FlatPouch.Bottom.SQUARE, SNAP)));
        assertTrue(told(asked(80, 120, 15.4, FlatPouch.Bottom.SQUARE, SNAP)).contains("flap-slack"));
    }

    private static FlatPouch.Asking tight(double ease) {
        return new FlatPouch.Asking(
                new HeldSize(Length.ofMm(80), Length.ofMm(120), Length.ofMm(10)),
                FlatPouch.Bottom.SQUARE,
                Length.ofMm(ease),
                Length.ofMm(2),
                Length.ofMm(3.85),
                SNAP);
    }

    @Test
    void whatCanBeSwallowedIsTold() {
        assertEquals(
                List.of("small-things", "own-use", "knife"),
                told(asked(31.6, 63.3, 15, FlatPouch.Bottom.SQUARE, SNAP)));
        assertEquals(List.of("own-use", "knife"), told(asked(31.7, 63.3, 15, FlatPouch.Bottom.SQUARE, SNAP)));
        assertEquals(List.of("own-use", "knife"), told(asked(31.6, 63.4, 15, FlatPouch.Bottom.SQUARE, SNAP)));
        assertTrue(told(asked(50, 20, 2, FlatPouch.Bottom.SQUARE, new Closing.Open(Length.ofMm(0))))
                .contains("small-things"));
        assertTrue(told(asked(31.6, 63.3, 31.6, FlatPouch.Bottom.SQUARE, SNAP)).contains("small-things"));
        assertTrue(!told(asked(31.6, 63.3, 31.7, FlatPouch.Bottom.SQUARE, SNAP)).contains("small-things"));
    }
}
