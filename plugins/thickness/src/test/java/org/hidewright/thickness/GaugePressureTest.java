package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Units;
import org.junit.jupiter.api.Test;

class GaugePressureTest {
    private final GaugePressure pressure = new GaugePressure();

    private GaugePressure.Pressed under(GaugePressure.GaugeLoad load, Length foot, Working working) {
        return Told.answers(pressure, pressure.calculate(new GaugePressure.Gauge(load, foot), working));
    }

    /** ISO 2589:2016, 4.1.3: 393 g on 10 mm, near the old convention of 500 g/cm² (500.4 gf/cm²). */
    @Test
    void aWeightPressesByItsForceOverTheFoot() {
        Steps steps = new Steps(pressure);
        GaugePressure.Pressed pressed = under(new GaugePressure.DeadWeight(Mass.ofGrams(393)), Length.ofMm(10), steps);
        assertEquals(3.85401345, pressed.newtons(), 1e-12);
        assertEquals(78.53981633974483, pressed.footArea().mm2(), 1e-12);
        assertEquals(500.4, pressed.kilopascals() / 98.0665 * 1000, 0.05);
        assertEquals(3.85401345, steps.result("gauge-weight"), 1e-12);
        assertEquals(78.53981633974483, steps.result("gauge-foot"), 1e-12);
        assertEquals(pressed.kilopascals(), steps.result("gauge-pressure"), 1e-12);
    }

    /** ASTM D1814-70, 6.1: 1 lbf (4.45 N) at 2 oz and 2 lbf (8.9 N) at 12 oz on a foot of 0.4 in. */
    @Test
    void aSpringInPoundsForceIsTheSameInNewtons() {
        Length foot = Length.of(0.4, Units.INCH);
        Steps steps = new Steps(pressure);
        GaugePressure.Pressed one = under(new GaugePressure.SpringPounds(1), foot, steps);
        assertEquals(4.4482216152605, one.newtons(), 1e-12);
        assertEquals(4.4482216152605, steps.result("gauge-pounds-force"), 1e-12);
        GaugePressure.Pressed two = under(new GaugePressure.SpringPounds(2), foot, Working.NONE);
        assertEquals(8.9, two.newtons(), 0.05);
        assertEquals(2 * one.kilopascals(), two.kilopascals(), 1e-9);
        assertEquals(one, under(new GaugePressure.SpringNewtons(one.newtons()), foot, Working.NONE));
    }
}
