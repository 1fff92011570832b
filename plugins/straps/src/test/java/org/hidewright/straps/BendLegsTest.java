package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BendLegsTest {
    private static final double RADIUS_MM = 3;
    private static final double THICKNESS_MM = 2;

    @ParameterizedTest(name = "turned {0} degrees")
    @ValueSource(doubles = {30, 89, 90, 91, 120, 150})
    void aLegThatEndsInsideTheBendIsRefused(double degrees) {
        double setback = (RADIUS_MM + THICKNESS_MM) * Math.tan(Math.toRadians(degrees) / 2);
        Outcome<BendAllowance.Allowance> outcome = bend(degrees, setback - 0.01);
        assertTrue(outcome.refused());
        assertEquals("bend-legs-too-short", outcome.notices().get(0).kind().key());
    }

    @ParameterizedTest(name = "turned {0} degrees")
    @ValueSource(doubles = {30, 89, 90, 91, 120, 150})
    void legsThatEndWhereTheBendDoesLeaveTheBendAlone(double degrees) {
        double setback = (RADIUS_MM + THICKNESS_MM) * Math.tan(Math.toRadians(degrees) / 2);
        BendAllowance.Allowance answers = bend(degrees, setback).answers().orElseThrow();
        assertEquals(
                answers.allowance().mm(), answers.flatLength().orElseThrow().mm(), 1e-9);
    }

    private static Outcome<BendAllowance.Allowance> bend(double degrees, double legMm) {
        Optional<Length> leg = Optional.of(Length.ofMm(legMm));
        return new BendAllowance()
                .calculate(
                        new BendAllowance.OneBend(
                                Length.ofMm(THICKNESS_MM),
                                Length.ofMm(RADIUS_MM),
                                Angle.ofRadians(Math.toRadians(degrees)),
                                Face.GRAIN,
                                new Preparation.None(),
                                Optional.empty(),
                                leg,
                                leg),
                        Working.NONE);
    }
}
