package org.hidewright.core.item;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.drawing.Shape;
import org.hidewright.api.geometry.Curve;
import org.hidewright.api.item.Face;
import org.hidewright.api.item.Fold;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Part;
import org.junit.jupiter.api.Test;

/** Parts to cut by, with what is written on them. */
class PartPatternTest {
    private static final List<String> LINES = List.of("Front", "cut 2", "shoulder, 2 mm");
    private static final PartPattern.Words WORDS = new PartPattern.Words(LINES, hole -> hole.diameter() + " mm");

    private static List<Label> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    /** Every tenth of a millimetre of every line of the drawing against the box of every text. */
    static void assertLettersLieOnNothing(Drawing drawing) {
        for (Label label : labels(drawing)) {
            Box box = label.bounds();
            for (Shape shape : drawing.shapes()) {
                if (shape instanceof Path path) {
                    Curve curve = Curve.of(path);
                    for (double along = 0; along < curve.length(); along += 0.1) {
                        Point at = curve.at(along).point();
                        boolean inside = at.x() > box.minX()
                                && at.x() < box.maxX()
                                && at.y() > box.minY()
                                && at.y() < box.maxY();
                        assertFalse(inside, label + " lies on " + shape.role() + " at " + at);
                    }
                } else if (shape instanceof Circle circle) {
                    Point at = circle.centre();
                    assertFalse(
                            at.x() > box.minX() && at.x() < box.maxX() && at.y() > box.minY() && at.y() < box.maxY());
                }
            }
        }
    }

    @Test
    void whatIsWrittenLiesOnNothingThatIsDrawn() {
        Drawing plate =
                PartPattern.of(ItemFactsTest.plate("front").direction(0.5).build(), WORDS);
        assertEquals(LINES, labels(plate).stream().map(Label::text).toList());
        assertLettersLieOnNothing(plate);
        Box part = Path.rectangle(Role.CUT, Point.of(0, 0), 100, 60).bounds();
        labels(plate)
                .forEach(label ->
                        assertTrue(label.at().x() > part.minX() && label.at().y() > part.minY()));
    }

    @Test
    void whereALevelLineHasNoRoomItStandsUprightAndSmaller() {
        Part strip = Part.of("strip", "Strip", Path.rectangle(Role.CUT, Point.of(0, 0), 18, 120))
                .fold(Fold.of("middle", Path.line(Role.FOLD, Point.of(0, 60), Point.of(18, 60)), 0, Face.GRAIN))
                .build();
        Drawing drawing = PartPattern.of(strip, WORDS);
        assertLettersLieOnNothing(drawing);
        assertEquals(Math.PI / 2, labels(drawing).get(0).turn(), 1e-9);
        assertEquals(3, labels(drawing).get(0).height(), 0.51);
    }

    @Test
    void besideAPartWithoutRoomItStandsBelow() {
        Part small = Part.of("keeper", "Keeper", Path.rectangle(Role.CUT, Point.of(0, 0), 9, 20))
                .build();
        Drawing drawing = PartPattern.of(small, WORDS);
        assertLettersLieOnNothing(drawing);
        labels(drawing).forEach(label -> assertTrue(label.bounds().maxY() < 0));
    }

    /** A belt of 30 mm: a rivet at its end, five holes of one size and two of another; each size stands there once. */
    @Test
    void sizesOfHolesAreToldApartOnce() {
        Part.Builder belt = Part.of("belt", "Belt", Path.rectangle(Role.CUT, Point.of(0, 0), 400, 30))
                .hole(Hole.of("near", Point.of(20, 15), 3.2))
                .hole(Hole.of("far", Point.of(60, 15), 3.2));
        assertEquals(LINES, texts(PartPattern.of(belt.build(), WORDS)), "holes of one size need no word");
        for (int nth = 0; nth < 5; nth++) {
            belt.hole(Hole.of("hole-" + nth, Point.of(250 + 25 * nth, 15), 4));
        }
        Drawing drawing = PartPattern.of(belt.build(), WORDS);
        assertEquals(List.of("3.2 mm", "4.0 mm", "Front", "cut 2", "shoulder, 2 mm"), texts(drawing));
        assertLettersLieOnNothing(drawing);
        assertTrue(labels(drawing).get(0).at().distanceTo(Point.of(20, 15)) < 6, "beside its hole");
        assertTrue(labels(drawing).get(1).at().distanceTo(Point.of(250, 15)) < 6, "beside its hole");
    }

    private static List<String> texts(Drawing drawing) {
        return labels(drawing).stream().map(Label::text).toList();
    }

    @Test
    void turnedOverLeftBecomesRightAndNothingElseChanges() {
        Part part = ItemFactsTest.plate("front").direction(Math.PI / 6).build();
        Drawing drawn = PartPattern.of(part, WORDS);
        Drawing over = PartPattern.turnedOver(part, WORDS);
        assertLettersLieOnNothing(over);
        Point hole = circles(drawn, Role.INNER_CUT).get(0);
        Point turned = circles(over, Role.INNER_CUT).get(0);
        assertEquals(100 - hole.x(), turned.x(), 1e-9);
        assertEquals(hole.y(), turned.y(), 1e-9);
        assertEquals(
                circles(drawn, Role.STITCH_HOLE).size(),
                circles(over, Role.STITCH_HOLE).size());
        Path arrow = over.shapes().stream()
                .filter(shape -> shape.role() == Role.DIRECTION)
                .map(Path.class::cast)
                .findFirst()
                .orElseThrow();
        double direction = arrow.segments()
                .get(0)
                .start()
                .directionTo(arrow.segments().get(0).end());
        assertEquals(Math.tan(Math.PI - Math.PI / 6), Math.tan(direction), 1e-9);
    }

    private static List<Point> circles(Drawing drawing, Role role) {
        return drawing.shapes().stream()
                .filter(shape -> shape instanceof Circle && shape.role() == role)
                .map(shape -> ((Circle) shape).centre())
                .toList();
    }

    @Test
    void sideBySideNoneLiesOnAnother() {
        List<Drawing> laid = PartPattern.sideBySide(List.of(
                PartPattern.of(ItemFactsTest.plate("a").build(), WORDS),
                PartPattern.of(ItemFactsTest.plate("b").oversize(2).build(), WORDS),
                PartPattern.of(ItemFactsTest.plate("c").build(), WORDS)));
        for (Drawing one : laid) {
            for (Drawing other : laid) {
                Box a = one.bounds();
                Box b = other.bounds();
                assertTrue(one == other
                        || a.maxX() < b.minX()
                        || b.maxX() < a.minX()
                        || a.maxY() < b.minY()
                        || b.maxY() < a.minY());
            }
        }
    }
}
