package org.hidewright.fasteners;

import static org.hidewright.fasteners.Fitted.PLAIN;
import static org.hidewright.fasteners.Fitted.answers;
import static org.hidewright.fasteners.Fitted.between;
import static org.hidewright.fasteners.Fitted.mm;
import static org.hidewright.fasteners.Fitted.notice;
import static org.hidewright.fasteners.Fitted.punches;
import static org.hidewright.fasteners.Fitted.stack;
import static org.hidewright.fasteners.Fitted.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.drawing.Circle;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Role;
import org.junit.jupiter.api.Test;

/** The two holes of a stud, worked by hand on paper. */
class StudTest {
    private static StudSizes stud(double screw, double head, double neck, double height) {
        return new StudSizes(mm(3), Optional.of(mm(screw)), mm(head), mm(neck), mm(height));
    }

    private static Stud.Closure closure(Stack carrying, Stack strap, StudSizes stud, Optional<Double> width) {
        return new Stud.Closure(
                carrying, strap, stud, width.map(Fitted::mm), mm(1.5), Temper.MEDIUM, punches(3, 3.6), PLAIN);
    }

    private static Stud.Closure plain() {
        return closure(stack(2.4), stack(2.4), stud(4, 6, 3.5, 3), Optional.of(22.0));
    }

    /** Head 6, neck 3.5: the slit’s two edges and the hole go round the head, π · (6 - 3.5) / 2 = 3.93. */
    @Test
    void twoHolesAndASlit() {
        Stud.Cut cut = answers(new Stud(), plain());
        assertEquals(mm(3), cut.screwHole());
        assertEquals(mm(3.5), cut.closingHole());
        assertEquals(3.92699, cut.slitAtMost().mm(), 1e-5);
        assertEquals(Math.PI * 6, Math.PI * 3.5 + 2 * cut.slitAtMost().mm(), 1e-9, "round the head");
        assertEquals(mm(1.5), cut.endHole());
        assertEquals(10.5, cut.toTip().mm(), 1e-9, "a closing hole is always pulled: three holes");
        assertEquals(0.6, cut.play().mm(), 1e-9);
        assertEquals(3.9, cut.screwFrom().mm(), 1e-9);
        assertEquals(
                List.of("screw", "closing"),
                cut.holes().stream().map(HoleRow::id).toList());
        assertEquals(mm(3), cut.holes().get(0).cut());
        assertEquals(mm(6), cut.holes().get(0).fromEdge());
        assertEquals(mm(3.6), cut.holes().get(1).cut());
        assertEquals(
                List.of(1.963, 2.749, 3.338, 3.927),
                cut.testSlits().stream()
                        .map(test -> Math.round(test.slit().mm() * 1000) / 1000.0)
                        .toList());
        assertEquals(List.of("stud-slit-side", "struck-tools"), told(new Stud(), plain()));
    }

    /** The tip is on the left, the slit goes to the right, towards where the strap is held, and a small hole ends it. */
    @Test
    void theSlitIsDrawnOnTheAnchoredSide() {
        Drawing drawing = answers(new Stud(), plain()).closing();
        List<Circle> holes = drawing.shapes().stream()
                .filter(Circle.class::isInstance)
                .map(Circle.class::cast)
                .toList();
        assertEquals(0, holes.get(0).centre().x(), 1e-9);
        assertEquals(1.75 + 3.92699, holes.get(1).centre().x(), 1e-5);
        Path slit = drawing.shapes().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .filter(path -> path.role() == Role.INNER_CUT)
                .findFirst()
                .orElseThrow();
        assertEquals(1.75, slit.segments().get(0).start().x(), 1e-9);
        assertEquals(1.75 + 3.92699, slit.segments().get(0).end().x(), 1e-5);
        double tip = drawing.shapes().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .filter(path -> path.role() == Role.CUT)
                .mapToDouble(path -> path.bounds().minX())
                .min()
                .orElseThrow();
        assertEquals(-10.5, tip, 1e-9);
        assertTrue(slit.bounds().minX() > 0);
    }

    @Test
    void theNeckMustSuitTheStrapAtBothEnds() {
        assertEquals(
                "stud-neck-too-low at stud.neck-height [3.0, 3.1]",
                notice(
                        new Stud(),
                        closure(stack(2), between(2.6, 3.1), stud(4, 6, 3.5, 3), Optional.empty()),
                        "stud-neck-too-low"));
        assertEquals(
                "not told",
                notice(
                        new Stud(),
                        closure(stack(2), between(2.6, 3), stud(4, 6, 3.5, 3), Optional.empty()),
                        "stud-neck-too-low"));
        assertEquals(
                "stud-neck-too-high at stud.neck-height [1.6, 1.5]",
                notice(
                        new Stud(),
                        closure(stack(2), between(1.4, 2), stud(4, 6, 3.5, 3), Optional.empty()),
                        "stud-neck-too-high"));
        assertEquals(
                "not told",
                notice(
                        new Stud(),
                        closure(stack(2), between(1.5, 2), stud(4, 6, 3.5, 3), Optional.empty()),
                        "stud-neck-too-high"));
    }

    @Test
    void theScrewMustReachIntoTheStud() {
        assertEquals(
                "post-too-short at stud.post-length [4.0, 3.0, 4.5]",
                notice(
                        new Stud(),
                        closure(between(2, 3), stack(2.4), stud(4, 6, 3.5, 3), Optional.empty()),
                        "post-too-short"));
        StudSizes unknown = new StudSizes(mm(3), Optional.empty(), mm(6), mm(3.5), mm(3));
        assertEquals(
                "not told",
                notice(new Stud(), closure(stack(9), stack(2.4), unknown, Optional.empty()), "post-too-short"));
    }

    @Test
    void aStrapTooNarrowForItsHoleIsCaught() {
        assertEquals(
                "stud-strap-too-narrow at strap-width [20.9, 21.0, 10.5]",
                notice(
                        new Stud(),
                        closure(stack(2.4), stack(2.4), stud(4, 6, 3.5, 3), Optional.of(20.9)),
                        "stud-strap-too-narrow"));
        assertEquals(
                "not told",
                notice(
                        new Stud(),
                        closure(stack(2.4), stack(2.4), stud(4, 6, 3.5, 3), Optional.of(21.0)),
                        "stud-strap-too-narrow"));
    }

    @Test
    void whatCannotCloseIsRefused() {
        assertEquals(
                "stud-head-no-wider at stud.head-diameter [3.5, 3.5]",
                notice(
                        new Stud(),
                        closure(stack(2), stack(2.4), stud(4, 3.5, 3.5, 3), Optional.empty()),
                        "stud-head-no-wider"));
        assertEquals(
                "stack-ends-swapped at carrying [3.0, 2.0]",
                notice(
                        new Stud(),
                        closure(between(3, 2), stack(2), stud(4, 6, 3.5, 3), Optional.empty()),
                        "stack-ends-swapped"));
        assertEquals(
                "stack-ends-swapped at strap [3.0, 2.0]",
                notice(
                        new Stud(),
                        closure(stack(2), between(3, 2), stud(4, 6, 3.5, 3), Optional.empty()),
                        "stack-ends-swapped"));
        Stud.Closure kerf = new Stud.Closure(
                stack(2),
                stack(2),
                stud(4, 6, 3.5, 3),
                Optional.empty(),
                mm(1.5),
                Temper.MEDIUM,
                new HoleMade.MachineCut(mm(3)),
                PLAIN);
        assertEquals("kerf-too-wide at made.machine-cut.kerf [3.0, 3.0]", notice(new Stud(), kerf, "kerf-too-wide"));
        Stud.Closure wide = new Stud.Closure(
                stack(2),
                stack(2),
                new StudSizes(mm(4), Optional.empty(), mm(6), mm(3.2), mm(3)),
                Optional.empty(),
                mm(1.5),
                Temper.MEDIUM,
                new HoleMade.MachineCut(mm(3.2)),
                PLAIN);
        assertEquals("kerf-too-wide at made.machine-cut.kerf [3.2, 3.2]", notice(new Stud(), wide, "kerf-too-wide"));
    }
}
