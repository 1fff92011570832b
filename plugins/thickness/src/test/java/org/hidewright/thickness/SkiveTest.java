package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkiveTest {
    private static final List<String> ALWAYS = List.of("blade", "leather-dust");
    private final Skive skive = new Skive();

    private static Skive.Edge at(double mm, double toMm, double degrees) {
        return new Skive.Edge(Length.ofMm(mm), Length.ofMm(toMm), new Skive.ByAngle(Angle.of(degrees, Units.DEGREE)));
    }

    private static Skive.Edge over(double mm, double toMm, double widthMm) {
        return new Skive.Edge(Length.ofMm(mm), Length.ofMm(toMm), new Skive.ByWidth(Length.ofMm(widthMm)));
    }

    private Skive.Taken taken(Skive.Edge edge) {
        return Told.answers(skive, skive.calculate(edge, Working.NONE));
    }

    private List<String> told(Skive.Edge edge) {
        return Told.by(skive, skive.calculate(edge, Working.NONE));
    }

    /** Known right triangles: 45 degrees, 30 degrees (1 to the root of 3), and 3-4-5. */
    @ParameterizedTest(name = "{0} mm to {1} mm at {2} deg is {3} mm wide")
    @CsvSource({
        "2, 0.5, 45, 1.5, 2.1213203435596424",
        "2, 1, 30, 1.7320508075688772, 2",
        "4, 1, 36.86989764584402, 4, 5"
    })
    void anAngleGivesTheWidth(double mm, double toMm, double degrees, double width, double along) {
        Skive.Taken taken = taken(at(mm, toMm, degrees));
        assertEquals(mm - toMm, taken.depth().mm(), 1e-12);
        assertEquals(width, taken.width().mm(), 1e-9 * width);
        assertEquals(along, taken.alongTheCut().mm(), 1e-9 * along);
        assertEquals(degrees, taken.angle().in(Units.DEGREE), 1e-9 * degrees);
        assertEquals((mm - toMm) / mm, taken.shareRemoved(), 1e-12);
        assertEquals(toMm * 64 / 25.4, taken.targetOunces(), 1e-9);
    }

    @Test
    void aWidthGivesTheAngle() {
        Steps steps = new Steps(skive);
        Skive.Taken taken = Told.answers(skive, skive.calculate(over(4, 1, 4), steps));
        assertEquals(36.86989764584402, taken.angle().in(Units.DEGREE), 1e-9); // 3-4-5 triangle
        assertEquals(4, taken.width().mm());
        assertEquals(5, taken.alongTheCut().mm(), 1e-12);
        assertEquals(3, steps.result("skive-depth"), 1e-12);
        assertEquals(Math.atan2(3, 4), steps.result("skive-angle"), 1e-12);
        assertEquals(5, steps.result("skive-along"), 1e-12);
        assertEquals(0.75, steps.result("skive-share"), 1e-12);
        assertEquals(0, steps.times("skive-width"));
    }

    @Test
    void theWorkingShowsTheWidthAtAnAngle() {
        Steps steps = new Steps(skive);
        skive.calculate(at(2, 0.5, 45), steps);
        assertEquals(1.5, steps.result("skive-width"), 1e-12);
        assertEquals(0, steps.times("skive-angle"));
    }

    @Test
    void aTargetThatIsNotThinnerIsRefused() {
        for (double target : new double[] {2, 2.5}) {
            Outcome<Skive.Taken> outcome = skive.calculate(at(2, target, 10), Working.NONE);
            assertEquals("skive-target-not-thinner at target", Told.refusal(skive, outcome));
        }
    }

    @Test
    void anEdgeAsGoodAsFeatheredIsChecked() {
        assertEquals(List.of("skive-feathered", "blade", "leather-dust"), told(at(2, 0, 10)));
        assertEquals(List.of("skive-feathered", "blade", "leather-dust"), told(at(2, 0.19, 10)));
        assertEquals(ALWAYS, told(at(2, 0.2, 10)));
    }

    @Test
    void aCutSteeperThanHalfARightAngleIsChecked() {
        assertEquals(ALWAYS, told(at(2, 1, 45)));
        assertEquals(List.of("skive-too-steep", "blade", "leather-dust"), told(at(2, 1, 45.1)));
        assertEquals(List.of("skive-too-steep", "blade", "leather-dust"), told(over(2, 1, 0.9)));
    }

    @Test
    void wideningTheSkiveFlattensTheCutAndBothWaysAgree() {
        Random random = new Random(5);
        for (int i = 0; i < 1000; i++) {
            double mm = 0.5 + random.nextDouble() * 6;
            double to = mm * random.nextDouble() * 0.95;
            double degrees = 1 + random.nextDouble() * 80;
            Skive.Taken taken = taken(at(mm, to, degrees));
            assertTrue(taken(at(mm, to, degrees + 1)).width().compareTo(taken.width()) < 0);
            assertTrue(taken(at(mm + 0.1, to, degrees)).width().compareTo(taken.width()) > 0);
            Skive.Taken back = taken(over(mm, to, taken.width().mm()));
            assertEquals(degrees, back.angle().in(Units.DEGREE), 1e-9 * degrees);
        }
    }
}
