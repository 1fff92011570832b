package org.hidewright.layout;

import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.rectangle;
import static org.hidewright.layout.Cuts.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.hidewright.api.calculator.Working;
import org.junit.jupiter.api.Test;

/** What is too large for every sheet is said before anything is searched for. */
class TooLargeTest {
    private static List<String> told(Cuts cuts) {
        return new CuttingLayout()
                .calculate(cuts.cut(), Working.NONE).notices().stream()
                        .filter(notice -> notice.kind() == LayoutNotices.TOO_LARGE)
                        .map(notice -> notice.place() + " " + notice.args())
                        .toList();
    }

    private static boolean isToldFree(double length, double width, double panelLength, double panelWidth) {
        Cuts cuts = Cuts.of(rectangle("strap", length, width))
                .on(panel("panel", panelLength, panelWidth, 1))
                .rules(rule("strap", Lies.AT_ANY_ANGLE, null, null, null, null));
        return !told(cuts).isEmpty();
    }

    /** On a sheet of A4 (ISO 216: 210 by 297 mm) the corners are 363.7 mm apart. */
    @Test
    void aStrapLongerThanTheSheetIsNamedOnce() {
        Cuts cuts = Cuts.of(rectangle("strap", 350, 10).direction(0), rectangle("tab", 60, 20))
                .times(3);
        assertEquals(List.of("sheets [strap]"), told(cuts.on(panel("a4", 297, 210, 1))));
        assertEquals(List.of(), told(cuts.on(panel("a4", 297, 210, 1), panel("strip", 400, 30, 1))), "fits the strip");
        assertEquals(List.of(), told(cuts.on(panel("a4", 297, 210, 1), hide("0,0 400,0 200,500", 0))));
        assertTrue(isToldFree(370, 10, 297, 210), "longer than from corner to corner");
        assertEquals(
                List.of(),
                told(cuts.rules(rule("strap", Lies.AT_ANY_ANGLE, null, null, null, null))
                        .on(panel("a4", 297, 210, 1))),
                "from corner to corner");
    }

    /**
     * A rectangle of p by q, longer than a, fits one of a by b just where b is at least (2pqa + (p² - q²) √(p² + q² - a²)) / (p² + q²):
     * W. B. Carver, American Mathematical Monthly 64 (1957), problem E 1225; from memory.
     */
    @Test
    void rectanglesInRectanglesAreToldByTheirPublishedCondition() {
        SplittableRandom random = new SplittableRandom(3);
        int fitting = 0;
        int tooLarge = 0;
        for (int i = 0; i < 300; i++) {
            double a = random.nextDouble(150, 400);
            double b = random.nextDouble(100, a);
            double p = random.nextDouble(a, 1.3 * a);
            double q = random.nextDouble(5, 60);
            double across = Math.hypot(p, q);
            double needed = (2 * p * q * a + (p * p - q * q) * Math.sqrt(across * across - a * a)) / (across * across);
            boolean told = isToldFree(p, q, a, b);
            if (needed <= b) {
                assertTrue(!told, p + " x " + q + " fits " + a + " x " + b);
                fitting++;
            } else if (needed > b + 3) { // what is not certain is not said
                assertTrue(told, p + " x " + q + " does not fit " + a + " x " + b);
                tooLarge++;
            }
        }
        assertTrue(fitting > 50 && tooLarge > 50, fitting + " fit, " + tooLarge + " do not");
    }
}
