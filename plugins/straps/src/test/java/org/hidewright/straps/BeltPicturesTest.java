package org.hidewright.straps;

import static org.hidewright.straps.OutsideChecksTest.answers;
import static org.hidewright.straps.Straps.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.DimensionLine;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

/**
 * What the two drawings of a belt show and where. Places are worked by hand: leather 3 mm, bar 4 mm, legs parallel, so the
 * inside faces lie 2 mm and the grain 5 mm from the bar’s centre; the turn takes π (2 + 0.6 · 3) = 11.938 mm.
 */
class BeltPicturesTest {
    /** Holes 110, 130 and 150 mm from the bar, tip at 200. */
    private static Belts collar() {
        Belts belt = new Belts();
        belt.datum = BeltMeasure.BAR;
        belt.size = 130;
        belt.thickness = 3;
        belt.width = 20;
        belt.bar = 4;
        belt.frame = 20;
        belt.contact = 0;
        belt.turnBack = 60;
        belt.holes = 3;
        belt.spacing = 20;
        belt.hole = 4;
        belt.tipBeyond = 50;
        belt.tipLength = 10;
        belt.slot = 16;
        return belt;
    }

    private static Drawing picture(Belts belt) {
        return answers(new BeltLayout(), belt.build()).sizePicture();
    }

    private static Drawing flat(Belts belt) {
        return answers(new BeltLayout(), belt.build()).flatView();
    }

    private static String places(double... mm) {
        List<String> words = new ArrayList<>();
        for (double one : mm) {
            words.add(String.format(Locale.ROOT, "%.2f", one + 0.0).replace("-0.00", "0.00"));
        }
        return String.join(" ", words);
    }

    private static String box(Box box) {
        return places(box.minX(), box.minY(), box.maxX(), box.maxY());
    }

    /** Paths of a role as their boxes. */
    private static List<String> boxes(Drawing drawing, Role role) {
        return drawing.shapes().stream()
                .filter(shape -> shape.role() == role && shape instanceof Path)
                .map(Shape::bounds)
                .map(BeltPicturesTest::box)
                .toList();
    }

    /** Every corner of a path. */
    private static String corners(Path path) {
        List<String> corners = new ArrayList<>();
        path.segments().forEach(segment -> {
            if (segment instanceof Segment.Cubic cubic) {
                corners.add("("
                        + places(
                                cubic.control1().x(),
                                cubic.control1().y(),
                                cubic.control2().x(),
                                cubic.control2().y()) + ")");
            }
            corners.add(places(segment.end().x(), segment.end().y()));
        });
        return String.join(", ", corners);
    }

    private static List<Path> paths(Drawing drawing, Role role) {
        return drawing.shapes().stream()
                .filter(shape -> shape.role() == role && shape instanceof Path)
                .map(Path.class::cast)
                .toList();
    }

    private static List<String> circles(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .map(circle -> places(circle.centre().x(), circle.centre().y(), circle.diameter()))
                .toList();
    }

    private static List<String> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .map(label -> label.words() + " at "
                        + places(label.at().x(), label.at().y()))
                .toList();
    }

    private static List<String> dimensions(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(DimensionLine.class::isInstance)
                .map(DimensionLine.class::cast)
                .map(line -> places(line.from().x(), line.to().x(), line.from().y(), line.offset()) + " " + words(line))
                .toList();
    }

    private static Object words(DimensionLine line) {
        return line.words() instanceof Length length ? places(length.mm()) + " mm" : line.words();
    }

    @Test
    void thePictureShowsBarFrameAndProng() {
        Drawing drawing = picture(collar());
        // frame from its outer bar’s centre at 2 - 20 = -18 to the bar, half as high as the bar is thick; then the
        // prong
        assertEquals(List.of("-18.00 -1.00 0.00 1.00", "-20.00 0.00 0.00 3.60"), boxes(drawing, Role.HARDWARE));
        assertEquals(
                "-20.00 2.00, -20.00 3.60, 0.00 2.00, -1.00 0.00",
                corners(paths(drawing, Role.HARDWARE).get(1)));
        assertEquals(List.of("-18.00 0.00 4.00", "0.00 0.00 4.00"), circles(drawing));
    }

    @Test
    void aFrameNoLongerThanItsBarIsNotDrawn() {
        Belts belt = collar();
        belt.frame = 4;
        assertEquals(List.of(), boxes(picture(belt), Role.HARDWARE));
        assertEquals(List.of("0.00 0.00 4.00"), circles(picture(belt)));
        belt.frame = 4.1;
        assertEquals(2, boxes(picture(belt), Role.HARDWARE).size());
    }

    @Test
    void thePictureShowsTheLeatherToBeyondTheWornHole() {
        Drawing drawing = picture(collar());
        // 130 + 1.5 · 20 = 160; there the belt is broken off, 3 mm beyond either face
        assertEquals(List.of("-5.00 -5.00 160.00 5.00"), boxes(drawing, Role.SECTION));
        assertEquals(List.of("-5.00 -5.00 160.00 5.00"), boxes(drawing, Role.GRAIN));
        assertEquals(List.of("-2.00 -2.00 160.00 2.00"), boxes(drawing, Role.FLESH));
        assertEquals(
                "(163.00 2.00 157.00 5.00), 160.00 8.00",
                corners(paths(drawing, Role.NOTE).get(0)));
        assertEquals(1, paths(drawing, Role.NOTE).size());
        Box turnBack = paths(drawing, Role.GRAIN).get(0).segments().get(0).bounds();
        assertEquals("0.00 -5.00 60.00 -5.00", box(turnBack));
    }

    @Test
    void aTipWithinThePictureIsCutNotBroken() {
        Belts belt = collar();
        belt.tipBeyond = 9;
        belt.tipLength = 5;
        Drawing drawing = picture(belt);
        assertEquals(List.of("-5.00 -5.00 159.00 5.00"), boxes(drawing, Role.SECTION));
        assertEquals(List.of(), paths(drawing, Role.NOTE));
    }

    @Test
    void thePictureShowsHolesAndMarks() {
        Drawing drawing = picture(collar());
        assertEquals(
                List.of(
                        "108.00 2.00 108.00 5.00",
                        "112.00 2.00 112.00 5.00",
                        "128.00 2.00 128.00 5.00",
                        "132.00 2.00 132.00 5.00",
                        "148.00 2.00 148.00 5.00",
                        "152.00 2.00 152.00 5.00"),
                boxes(drawing, Role.INNER_CUT));
        assertEquals(List.of("130.00 -2.00 130.00 7.00", "0.00 -7.00 0.00 7.00"), boxes(drawing, Role.MARK));
        assertEquals(List.of("belt-to-worn-hole[2] at 130.00 -2.00"), labels(drawing));
        assertEquals(
                List.of(
                        "0.00 130.00 7.00 9.00 belt-size-from-bar[130.0 mm]",
                        "0.00 60.00 -5.00 -7.00 belt-turn-back[60.0 mm]"),
                dimensions(drawing));
    }

    @Test
    void aHoleBeyondThePictureIsLeftOut() {
        Belts belt = collar();
        belt.holes = 7;
        belt.wornHole = Optional.of(1);
        belt.size = 110;
        // 110 + 30 = 140: only the holes at 110 and 130
        assertEquals(4, boxes(picture(belt), Role.INNER_CUT).size());
    }

    @Test
    void theDatumIsMarkedWhereItLies() {
        Belts belt = collar();
        belt.datum = BeltMeasure.FOLD;
        assertEquals("-5.00 -7.00 -5.00 7.00", boxes(picture(belt), Role.MARK).get(1));
        assertEquals(
                "-5.00 125.00 7.00 9.00 belt-size-from-fold[130.0 mm]",
                dimensions(picture(belt)).get(0));
        belt.datum = BeltMeasure.FRAME_END;
        assertEquals("-20.00 -7.00 -20.00 7.00", boxes(picture(belt), Role.MARK).get(1));
    }

    @Test
    void aRowThatEndsBeforeTheSizeIsSaidInThePicture() {
        Belts belt = collar();
        belt.size = 150;
        belt.wornHole = Optional.of(4);
        assertTrue(
                labels(picture(belt)).get(0).startsWith("belt-to-no-hole[3] at "),
                labels(picture(belt)).toString());
        belt.wornHole = Optional.of(3);
        assertTrue(labels(picture(belt)).get(0).startsWith("belt-to-worn-hole[3] at "));
    }

    @Test
    void aKeeperIsPicturedRoundBothLegs() {
        Belts belt = collar();
        belt.keeper = Optional.of(mm(40));
        Drawing drawing = picture(belt);
        assertEquals("34.00 -6.00 46.00 6.00", boxes(drawing, Role.MARK).get(0));
        assertEquals("belt-keeper[] at 40.00 6.00", labels(drawing).get(0));
    }

    @Test
    void whatLiesBetweenTurnBackAndWornHoleIsLeftOut() {
        Belts belt = collar();
        belt.size = 300;
        // drawn to 60 + 15 = 75, then from 300 - 30 = 270, 8 mm apart: the worn hole at 300 - 195 + 8 = 113
        Drawing drawing = picture(belt);
        assertEquals(List.of("-5.00 -5.00 75.00 5.00", "83.00 2.00 143.00 5.00"), boxes(drawing, Role.SECTION));
        assertEquals(List.of("-5.00 -5.00 75.00 5.00", "83.00 5.00 143.00 5.00"), boxes(drawing, Role.GRAIN));
        assertEquals(List.of("-2.00 -2.00 75.00 2.00", "83.00 2.00 143.00 2.00"), boxes(drawing, Role.FLESH));
        assertEquals(
                List.of("75.00 8.00", "83.00 8.00", "143.00 8.00"),
                paths(drawing, Role.NOTE).stream()
                        .map(wave -> places(
                                wave.segments().get(0).end().x(),
                                wave.segments().get(0).end().y()))
                        .toList());
        assertEquals("91.00 2.00 91.00 5.00", boxes(drawing, Role.INNER_CUT).get(0));
        assertEquals(
                "0.00 113.00 7.00 9.00 belt-size-from-bar[300.0 mm]",
                dimensions(drawing).get(0));
        belt.keeper = Optional.of(mm(69));
        assertEquals("63.00 -6.00 75.00 6.00", boxes(picture(belt), Role.MARK).get(0));
        belt.keeper = Optional.of(mm(70));
        assertFalse(labels(picture(belt)).toString().contains("keeper"), "it would lie in what is left out");
        belt.size = 135; // 135 - 30 - 75 = 30 mm are not worth leaving out
        assertEquals(1, boxes(picture(belt), Role.SECTION).size());
        belt.size = 135.1;
        assertEquals(2, boxes(picture(belt), Role.SECTION).size());
    }

    @Test
    void legsThatMeetLieOnEachOther() {
        Belts belt = collar();
        belt.contact = 12;
        Drawing drawing = picture(belt);
        assertEquals(
                List.of("-5.00 -5.00 160.00 5.00"),
                boxes(drawing, Role.SECTION).stream()
                        .map(box -> box.replaceAll("-4.9\\d|-5.0\\d", "-5.00"))
                        .toList());
        assertEquals("108.00 0.00 108.00 3.00", boxes(drawing, Role.INNER_CUT).get(0));
        // the grain of the turn reaches 5 mm from the bar’s centre, the leg 3 mm
        assertEquals("130.00 -4.00 130.00 5.00", boxes(drawing, Role.MARK).get(0));
        assertEquals("0.00 -7.00 0.00 7.00", boxes(drawing, Role.MARK).get(1));
        Box main = paths(drawing, Role.GRAIN).get(0).segments().get(5).bounds();
        assertEquals("12.00 3.00 160.00 3.00", box(main));
        Box turnBack = paths(drawing, Role.GRAIN).get(0).segments().get(0).bounds();
        assertEquals("12.00 -3.00 60.00 -3.00", box(turnBack));
    }

    @Test
    void theFlatBeltHasItsPlacesBelowIt() {
        Belts belt = collar();
        belt.size = 240;
        belt.datum = BeltMeasure.BAR;
        // turn 60 to 71.938, slot’s middle 65.969; holes at 71.938 + 220, 240, 260; cut 71.938 + 310 = 381.938
        // slot to 73.969, drawn on to 98.969; drawn again from 291.938 - 25 = 266.938; 8 mm apart
        Drawing drawing = flat(belt);
        assertEquals(List.of("60.00 0.00 60.00 20.00", "71.94 0.00 71.94 20.00"), boxes(drawing, Role.FOLD));
        assertEquals(List.of("57.97 7.50 73.97 12.50"), boxes(drawing, Role.INNER_CUT));
        assertEquals(List.of("131.97 10.00 4.00", "151.97 10.00 4.00", "171.97 10.00 4.00"), circles(drawing));
        assertEquals(
                List.of(
                        "belt-turn-and-slot[] at 65.97 20.00",
                        "1 at 131.97 20.00",
                        "belt-worn[2] at 151.97 20.00",
                        "3 at 171.97 20.00"),
                labels(drawing));
        assertEquals(
                List.of(
                        "0.00 60.00 0.00 -6.00 60.00 mm",
                        "0.00 65.97 0.00 -12.00 65.97 mm",
                        "0.00 71.94 0.00 -18.00 71.94 mm",
                        "171.97 221.97 0.00 -6.00 50.00 mm",
                        "151.97 171.97 0.00 -6.00 20.00 mm",
                        "131.97 221.97 0.00 -18.00 90.00 mm",
                        "151.97 221.97 0.00 -12.00 70.00 mm",
                        "0.00 221.97 0.00 -24.00 381.94 mm"),
                dimensions(drawing));
        List<Path> cuts = paths(drawing, Role.CUT);
        assertEquals("0.00 20.00, 0.00 0.00, 98.97 0.00", corners(cuts.get(0)));
        assertEquals("211.97 0.00, 221.97 10.00, 211.97 20.00, 106.97 20.00", corners(cuts.get(1)));
        assertEquals(
                List.of("(101.97 6.67 95.97 13.33), 98.97 20.00", "(109.97 6.67 103.97 13.33), 106.97 20.00"),
                paths(drawing, Role.NOTE).stream()
                        .map(BeltPicturesTest::corners)
                        .toList());
    }

    @Test
    void aSingleHoleHasNoSpacingAndNoRow() {
        Belts belt = collar();
        belt.holes = 1;
        belt.tipBeyond = 60;
        assertTrue(
                dimensions(flat(belt)).get(3).endsWith(" 60.00 mm"),
                dimensions(flat(belt)).toString());
        assertEquals(5, dimensions(flat(belt)).size());
    }

    @Test
    void aShapeThatIsNoLongerThanTheTipMayReachBackToTheRow() {
        Belts belt = collar();
        belt.size = 240;
        belt.tipLength = 110; // its shoulder at 381.938 - 110 lies before the first hole at 291.938
        Path right = paths(flat(belt), Role.CUT).get(1);
        double start = right.segments().get(0).start().x();
        double shoulder = right.segments().get(0).end().x();
        assertEquals(25, shoulder - start, 1e-9);
    }

    @Test
    void theTipsHaveTheirShapes() {
        Belts belt = collar();
        belt.size = 240;
        belt.tip = BeltTip.SQUARE;
        assertEquals(
                "221.97 0.00, 221.97 20.00, 106.97 20.00",
                corners(paths(flat(belt), Role.CUT).get(1)));
        belt.tip = BeltTip.ROUND; // 4/3 (√2 - 1) of the radii: 5.52 of 10 mm
        assertEquals(
                "211.97 0.00, (217.49 0.00 221.97 4.48), 221.97 10.00, (221.97 15.52 217.49 20.00), 211.97 20.00, "
                        + "106.97 20.00",
                corners(paths(flat(belt), Role.CUT).get(1)));
        belt.tip = BeltTip.ENGLISH;
        assertEquals(
                "211.97 0.00, (216.47 0.00 219.97 6.00), 221.97 10.00, (219.97 14.00 216.47 20.00), 211.97 20.00, "
                        + "106.97 20.00",
                corners(paths(flat(belt), Role.CUT).get(1)));
    }

    @Test
    void aMiddleNotWorthLeavingOutIsDrawn() {
        Belts belt = collar();
        belt.turnBack = 30;
        belt.size = 80;
        // turn to 41.938, slot to 43.969: drawn to 68.969; first hole 41.938 + 60 = 101.938, less 25 = 76.938
        Drawing drawing = flat(belt);
        assertEquals(1, paths(drawing, Role.CUT).size());
        assertEquals("0.00 0.00 191.94 20.00", boxes(drawing, Role.CUT).get(0));
        assertEquals(List.of(), paths(drawing, Role.NOTE));
    }
}
