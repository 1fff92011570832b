package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;
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

    @Test
    void oneLegAloneIsToldAtTheOther() {
        Optional<Length> leg = Optional.of(Length.ofMm(50));
        Outcome<BendAllowance.Allowance> only = bend(90, leg, Optional.empty());
        assertEquals("bend-one-leg", only.notices().get(0).kind().key());
        assertEquals("leg-b", only.notices().get(0).place());
        assertEquals("leg-a", bend(90, Optional.empty(), leg).notices().get(0).place());
        assertTrue(bend(90, Optional.empty(), Optional.empty()).notices().isEmpty());
    }

    private static Outcome<BendAllowance.Allowance> bend(double degrees, double legMm) {
        Optional<Length> leg = Optional.of(Length.ofMm(legMm));
        return bend(degrees, leg, leg);
    }

    private static Outcome<BendAllowance.Allowance> bend(double degrees, Optional<Length> legA, Optional<Length> legB) {
        return new BendAllowance()
                .calculate(
                        new BendAllowance.OneBend(
                                Length.ofMm(THICKNESS_MM),
                                Length.ofMm(RADIUS_MM),
                                Angle.ofRadians(Math.toRadians(degrees)),
                                Face.GRAIN,
                                new Preparation.None(),
                                Optional.empty(),
                                legA,
                                legB),
                        Working.NONE);
    }
}
