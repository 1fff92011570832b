package org.hidewright.documents.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.drawing.Anchor;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Label;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.junit.jupiter.api.Test;

/** A belt of 700 x 40 mm on sheets of 190 x 260 mm that overlap by 12 mm: the second one begins at 178 mm. */
class WholeNamesTest {
    private static final Typeface EVEN = WrappingTest.EVEN;

    /** @param middle where the two lines of letters stand, along the belt */
    private static Drawing.Builder belt(double middle) {
        return Drawing.builder()
                .add(Path.rectangle(Role.CUT, Point.of(0, 0), 700, 40))
                .label("Belt, natural", Point.of(middle, 23), Anchor.CENTRE, 3)
                .label("cut 1", Point.of(middle, 17.6), Anchor.CENTRE, 3);
    }

    private static FigurePlan plan(Drawing drawing, boolean turned) {
        return new FigurePlan(drawing, new PaperScale(1, turned), Double.POSITIVE_INFINITY, EVEN);
    }

    private static Tiling tiling(FigurePlan plan) {
        return new Tiling(plan.box(), 190, 260, 12);
    }

    private static List<Label> labels(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    private static Drawing whole(Drawing drawing, boolean turned) {
        FigurePlan plan = plan(drawing, turned);
        return WholeNames.of(drawing, plan, tiling(plan), EVEN);
    }

    /** Whether both lines are whole on one and the same sheet of those that lie across the belt. */
    private static boolean onOneSheet(Drawing drawing, boolean turned) {
        FigurePlan plan = plan(drawing, turned);
        Tiling tiling = tiling(plan);
        List<Box> boxes = new ArrayList<>();
        for (Label label : labels(drawing)) {
            boxes.add(FigureText.of((Label) plan.scale().of(label), label.text(), EVEN)
                    .box());
        }
        Box both = boxes.get(0).with(boxes.get(1));
        boolean found = false;
        for (int column = 0; column < tiling.columns(); column++) {
            for (int row = 0; row < tiling.rows(); row++) {
                double left = plan.box().minX() + tiling.left(column);
                double top = plan.box().maxY() - tiling.top(row);
                found |= both.minX() >= left
                        && both.maxX() <= left + 190
                        && both.maxY() <= top
                        && both.minY() >= top - 260;
            }
        }
        return found;
    }

    @Test
    void aNameBetweenTwoSheetsMovesToOneOfThemWithItsLinesTogether() {
        for (boolean turned : new boolean[] {false, true}) {
            // upright the sheets part at 178 to 190 mm; turned the belt runs up, and they part at 440 to 452 mm
            Drawing parted = belt(turned ? 446 : 184).build();
            assertFalse(onOneSheet(parted, turned), "nothing to mend");
            Drawing whole = whole(parted, turned);
            assertTrue(onOneSheet(whole, turned));
            List<Label> lines = labels(whole);
            assertEquals(5.4, lines.get(0).at().distanceTo(lines.get(1).at()), 1e-9);
            assertEquals(23, lines.get(0).at().y(), 1e-9, "along the belt, and on it");
            assertTrue(Math.abs(lines.get(0).at().x() - (turned ? 446 : 184)) < 50, "no farther than it must");
        }
    }

    @Test
    void itMovesPastHolesAndNotOntoThem() {
        Drawing.Builder holed = belt(184);
        for (int nth = 0; nth < 6; nth++) {
            holed.add(Circle.hole(Point.of(215 + 20 * nth, 20), 5));
        }
        Drawing whole = whole(holed.build(), false);
        assertTrue(onOneSheet(whole, false));
        assertTrue(labels(whole).get(0).at().x() < 184, "away from the holes");
    }

    /** Texts of a sheet that lie wholly in what is shown of it. */
    private static List<String> seenWhole(Piece sheet) {
        List<String> seen = new ArrayList<>();
        Deque<Box> shown = new ArrayDeque<>(List.of(Box.around(Point.of(-1000, -1000), Point.of(1000, 1000))));
        Canvas canvas = (Canvas) Proxy.newProxyInstance(
                Canvas.class.getClassLoader(), new Class<?>[] {Canvas.class}, (self, method, given) -> {
                    if (method.getName().equals("within")) {
                        Point corner = Point.of((double) given[0], (double) given[1]);
                        shown.push(Box.around(corner, corner.plus((double) given[2], (double) given[3])));
                        ((Runnable) given[4]).run();
                        shown.pop();
                    } else if (method.getName().equals("text")) {
                        Point foot = Point.of((double) given[1], (double) given[2]);
                        double turn = -(double) given[4]; // y runs down
                        Point end = foot.towards(turn, EVEN.widthMm((Style) given[3], (String) given[0]));
                        Box box = shown.peek();
                        if (Math.min(foot.x(), end.x()) >= box.minX()
                                && Math.max(foot.x(), end.x()) <= box.maxX()
                                && Math.min(foot.y(), end.y()) >= box.minY()
                                && Math.max(foot.y(), end.y()) <= box.maxY()) {
                            seen.add((String) given[0]);
                        }
                    }
                    return null;
                });
        sheet.draw(canvas, 0, 0);
        return seen;
    }

    /** Wherever the name was meant to stand, one of the sheets as they are printed shows it whole. */
    @Test
    void oneOfTheSheetsShowsTheNameWhole() {
        for (int middle = 100; middle <= 600; middle += 4) {
            PatternSheets sheets = PatternSheets.of(
                    List.of(new PatternSheets.Pattern("Belt", belt(middle).build())),
                    "measure",
                    "pale",
                    "{0}: {1} of {2}, {3}, {4}");
            List<Piece> pieces = new PatternLayout(sheets, EVEN, 180, 250, new CheckSquares(EVEN)).pieces();
            assertTrue(pieces.size() > 2, "on several sheets");
            int at = middle;
            assertTrue(
                    pieces.stream().anyMatch(piece -> seenWhole(piece).contains("Belt, natural")),
                    () -> "parted at " + at);
        }
    }

    @Test
    void whatIsWholeStaysWhereItIs() {
        Drawing belt = belt(300).build();
        assertEquals(belt, whole(belt, false));
    }

    /** A part that is full of lines has no other place. */
    @Test
    void withoutAFreePlaceItStays() {
        Drawing.Builder full = belt(184);
        for (int x = 4; x < 700; x += 8) {
            full.line(Role.FOLD, Point.of(x, 0), Point.of(x, 40));
        }
        Drawing drawing = full.build();
        assertEquals(drawing, whole(drawing, false));
    }
}
