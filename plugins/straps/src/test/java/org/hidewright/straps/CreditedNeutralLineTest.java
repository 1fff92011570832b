package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

class CreditedNeutralLineTest {
    private static final Section LEG = new Section.Straight("leg", Length.ofMm(100), Optional.empty(), Length.ZERO);

    @Test
    void aStraightStrapStandsOnGeometryAlone() {
        assertEquals(List.of(), credited(LEG));
    }

    @Test
    void aFoldNobodyMeasuredStandsOnTheHabit() {
        assertEquals(List.of(Origins.NEUTRAL_HABIT), credited(LEG, fold("a", Optional.empty())));
    }

    @Test
    void aFoldThatWasMeasuredStandsOnTheMeasuredStrip() {
        assertEquals(List.of(Origins.NEUTRAL_MEASURED), credited(LEG, fold("a", Optional.of(0.52))));
    }

    @Test
    void oneFoldByHabitAmongMeasuredOnesLeavesTheWholeLengthToTheHabit() {
        assertEquals(
                List.of(Origins.NEUTRAL_HABIT),
                credited(fold("a", Optional.of(0.52)), LEG, fold("b", Optional.empty())));
    }

    private static Section fold(String id, Optional<Double> measured) {
        return new Section.Bend(
                id,
                new Core.RoundBar(Length.ofMm(6)),
                Angle.ofRadians(Math.PI),
                Face.GRAIN,
                new Preparation.None(),
                Optional.empty(),
                measured);
    }

    private static List<Source> credited(Section... sections) {
        List<Source> credited = new ArrayList<>();
        new StrapLayout()
                .calculate(
                        new StrapLayout.Strap(
                                Length.ofMm(3),
                                Length.ofMm(20),
                                List.of(sections),
                                List.of(),
                                Length.ZERO,
                                Optional.empty(),
                                Optional.empty(),
                                false),
                        new Working() {
                            @Override
                            public void step(Formula formula, Object result, Object... symbolsAndValues) {}

                            @Override
                            public void source(String answer, Source source) {
                                assertEquals("cut-length", answer);
                                credited.add(source);
                            }
                        });
        return credited;
    }
}
