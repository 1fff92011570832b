package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

class ScarfTest {
    private static final List<String> ALWAYS = List.of("blade", "not-for-loads");
    private final Scarf scarf = new Scarf();

    private static Scarf.Ends ends(double first, double second, Scarf.ScarfCut cut, double glueMm, double widthMm) {
        return new Scarf.Ends(
                Length.ofMm(first),
                Length.ofMm(second),
                cut,
                Length.ofMm(glueMm),
                widthMm > 0 ? Optional.of(Length.ofMm(widthMm)) : Optional.empty());
    }

    private Scarf.Joint joint(Scarf.Ends ends) {
        return Told.answers(scarf, scarf.calculate(ends, Working.NONE));
    }

    private List<String> told(Scarf.Ends ends) {
        return Told.by(scarf, scarf.calculate(ends, Working.NONE));
    }

    /** Pythagoras with 3-4-5: 3 mm thick, lap 4 mm, glued face 5 mm. */
    @Test
    void theGluedFaceIsTheSlantOfTheBevel() {
        Steps steps = new Steps(scarf);
        Scarf.Joint joint =
                Told.answers(scarf, scarf.calculate(ends(3, 3, new Scarf.ByLap(Length.ofMm(4)), 0.8, 20), steps));
        assertEquals(4, joint.lap().mm(), 1e-12);
        assertEquals(4.0 / 3, joint.slope(), 1e-12);
        assertEquals(36.86989764584402, joint.angle().in(Units.DEGREE), 1e-9);
        assertEquals(5, joint.gluedLength().mm(), 1e-12);
        assertEquals(100, joint.gluedArea().orElseThrow().mm2(), 1e-12);
        assertEquals(4, joint.thicknessAcross().mm(), 1e-12); // 3 + 0.8 / cos = 3 + 0.8 x 5/4
        assertEquals(0, joint.step().mm());
        assertEquals(4.0 / 3, steps.result("scarf-slope"), 1e-12);
        assertEquals(Math.atan2(3, 4), steps.result("scarf-angle"), 1e-12);
        assertEquals(5, steps.result("scarf-glued-length"), 1e-12);
        assertEquals(100, steps.result("scarf-glued-area"), 1e-12);
        assertEquals(4, steps.result("scarf-across"), 1e-12);
        assertEquals(0, steps.result("scarf-step"));
        assertEquals(0, steps.times("scarf-lap") + steps.times("scarf-lap-at-angle"));
    }

    @Test
    void aSlopeGivesTheLapOfTheThinnerPiece() {
        Steps steps = new Steps(scarf);
        scarf.calculate(ends(3, 3.05, new Scarf.BySlope(8), 0, 0), steps);
        assertEquals(24, steps.result("scarf-lap"), 1e-12);
        for (Scarf.Ends ends :
                List.of(ends(3, 3.05, new Scarf.BySlope(8), 0, 0), ends(3.05, 3, new Scarf.BySlope(8), 0, 0))) {
            Scarf.Joint joint = joint(ends);
            assertEquals(24, joint.lap().mm(), 1e-12);
            assertEquals(8, joint.slope(), 1e-12);
            assertEquals(3, joint.thicknessAcross().mm(), 1e-12);
            assertEquals(0.05, joint.step().mm(), 1e-12);
            assertEquals(Optional.empty(), joint.gluedArea());
            assertEquals(ALWAYS, told(ends));
        }
    }

    @Test
    void anAngleGivesTheLap() {
        Steps steps = new Steps(scarf);
        Scarf.Ends ends = ends(2, 2, new Scarf.BySlopeAngle(Angle.of(30, Units.DEGREE)), 0, 0);
        Scarf.Joint joint = Told.answers(scarf, scarf.calculate(ends, steps));
        assertEquals(2 * Math.sqrt(3), joint.lap().mm(), 1e-12);
        assertEquals(4, joint.gluedLength().mm(), 1e-12);
        assertEquals(2 * Math.sqrt(3), steps.result("scarf-lap-at-angle"), 1e-12);
    }

    @Test
    void aShortLapIsChecked() {
        assertEquals(ALWAYS, told(ends(3, 3, new Scarf.BySlope(6), 0, 0)));
        assertEquals(List.of("scarf-short", "blade", "not-for-loads"), told(ends(3, 3, new Scarf.BySlope(5.9), 0, 0)));
    }

    @Test
    void unequalPiecesAreChecked() {
        assertEquals(
                List.of("scarf-unequal", "blade", "not-for-loads"), told(ends(3, 3.2, new Scarf.BySlope(8), 0, 0)));
        assertEquals(ALWAYS, told(ends(3, 3.0625, new Scarf.BySlope(8), 0, 0)));
    }

    @Test
    void allThreeWaysToSetTheBevelAgree() {
        Random random = new Random(77);
        for (int i = 0; i < 500; i++) {
            double mm = 0.5 + random.nextDouble() * 6;
            double slope = 1 + random.nextDouble() * 20;
            double glue = random.nextDouble() * 0.3;
            Scarf.Joint bySlope = joint(ends(mm, mm, new Scarf.BySlope(slope), glue, 30));
            Scarf.Joint byLap = joint(ends(mm, mm, new Scarf.ByLap(bySlope.lap()), glue, 30));
            Scarf.Joint byAngle = joint(ends(mm, mm, new Scarf.BySlopeAngle(bySlope.angle()), glue, 30));
            for (Scarf.Joint joint : List.of(byLap, byAngle)) {
                assertEquals(slope, joint.slope(), 1e-9 * slope);
                assertEquals(bySlope.lap().mm(), joint.lap().mm(), 1e-9 * slope * mm);
                assertEquals(
                        bySlope.thicknessAcross().mm(), joint.thicknessAcross().mm(), 1e-9);
            }
            double sine = mm / bySlope.gluedLength().mm();
            assertEquals(Math.sin(bySlope.angle().base()), sine, 1e-12);
        }
    }
}
