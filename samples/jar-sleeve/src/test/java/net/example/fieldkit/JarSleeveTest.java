package net.example.fieldkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.example.fieldkit.JarSleeve.Jar;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.junit.jupiter.api.Test;

class JarSleeveTest {
    private final JarSleeve sleeve = new JarSleeve();

    @Test
    void theSleeveGoesRoundTheMiddleOfTheLeather() {
        // source: circumference of a circle; pi * (65 + 1 + 2) + 12
        assertEquals(
                225.6283, cut(65, 2, 1, 12).answers().orElseThrow().cutLength().mm(), 0.0001);
    }

    @Test
    void anOverlapTooShortToStitchIsTold() {
        assertEquals(
                List.of(JarSleeve.THIN_OVERLAP.at("overlap", Length.ofMm(5), Length.ofMm(2))),
                cut(65, 2, 1, 5).notices());
    }

    @Test
    void endsThatMeetEdgeToEdgeNeedNoOverlap() {
        assertEquals(List.of(), cut(65, 2, 1, 0).notices());
    }

    private Outcome<JarSleeve.Sleeve> cut(double diameter, double thickness, double ease, double overlap) {
        return sleeve.calculate(
                new Jar(Length.ofMm(diameter), Length.ofMm(thickness), Length.ofMm(ease), Length.ofMm(overlap)),
                Working.NONE);
    }
}
