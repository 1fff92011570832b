package org.hidewright.thickness;

import java.util.List;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** How hard a gauge presses on the leather, so that two gauges can be compared. */
@Calculates("gauge-pressure")
@Component(service = Calculator.class)
public final class GaugePressure implements Calculator<GaugePressure.Gauge, GaugePressure.Pressed> {
    private static final Formula WEIGHT = Formula.of("gauge-weight", "F = m · g", Origins.STANDARD_GRAVITY);
    private static final Formula POUNDS = Formula.of("gauge-pounds-force", "F = f · p", Origins.STANDARD_GRAVITY);
    private static final Formula FOOT = Formula.of("gauge-foot", "A = π · d · d / 4", Origins.GEOMETRY);
    private static final Formula PRESSURE = Formula.of("gauge-pressure", "P = 1000 · F / A", Origins.ISO_2589);

    /** Standard acceleration of free fall in m/s², exact by convention. */
    private static final double STANDARD_GRAVITY = 9.80665;
    /** Newtons in one pound-force: 0.45359237 kg at standard gravity, exact. */
    private static final double NEWTONS_PER_POUND_FORCE = 0.45359237 * STANDARD_GRAVITY;
    /** One N/mm² is 1000 kPa. */
    private static final double KPA_PER_MPA = 1000;

    /** What is asked. */
    public record Gauge(
            @Asked(preset = "{\"dead-weight\":{\"mass\":\"393 g\"}}")
            GaugeLoad load,

            @Asked(unit = "mm", min = "0.1 mm", max = "200 mm", usual = "5-30 mm", preset = "10 mm")
            Length foot) {}

    /** What presses the foot down. */
    public sealed interface GaugeLoad permits DeadWeight, SpringNewtons, SpringPounds {}

    /** A weight that rests on the foot. */
    public record DeadWeight(
            @Asked(unit = "g", min = "0.1 g", max = "100000 g", usual = "100-1000 g", preset = "393 g")
            Mass mass) implements GaugeLoad {}

    /** A spring, its force in newtons. */
    public record SpringNewtons(
            @Asked(min = "0.001", max = "10000", usual = "1-20", example = "4.45")
            double newtons) implements GaugeLoad {}

    /** A spring, its force in pounds-force. */
    public record SpringPounds(
            @Asked(min = "0.001", max = "10000", usual = "0.2-5", example = "1")
            double poundsForce) implements GaugeLoad {}

    /** What is answered: pressure in kilopascals, force in newtons. */
    public record Pressed(
            @Answered(by = "gauge-pressure", step = "0.1", lead = true)
            double kilopascals,

            @Answered(by = "standard-gravity", step = "0.01")
            double newtons,

            @Answered(unit = "mm²", by = "gauge-foot", step = "0.1 mm²")
            Area footArea) {}

    @Override
    public Outcome<Pressed> calculate(Gauge gauge, Working working) {
        double newtons = newtons(gauge.load(), working);
        double diameter = gauge.foot().mm();
        Area area = Area.ofMm2(Math.PI * diameter * diameter / 4);
        working.step(FOOT, area, "d", gauge.foot());
        double kilopascals = newtons / area.mm2() * KPA_PER_MPA;
        working.step(PRESSURE, kilopascals, "F", newtons, "A", area.mm2());
        return Outcome.of(new Pressed(kilopascals, newtons, area));
    }

    private static double newtons(GaugeLoad load, Working working) {
        if (load instanceof DeadWeight weight) {
            double kilograms = weight.mass().in(Units.KILOGRAM);
            double newtons = kilograms * STANDARD_GRAVITY;
            working.step(WEIGHT, newtons, "m", kilograms, "g", STANDARD_GRAVITY);
            return newtons;
        } else if (load instanceof SpringPounds pounds) {
            double newtons = pounds.poundsForce() * NEWTONS_PER_POUND_FORCE;
            working.step(POUNDS, newtons, "f", pounds.poundsForce(), "p", NEWTONS_PER_POUND_FORCE);
            return newtons;
        }
        return ((SpringNewtons) load).newtons();
    }

    @Override
    public List<Formula> formulas() {
        return List.of(WEIGHT, POUNDS, FOOT, PRESSURE);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of();
    }
}
