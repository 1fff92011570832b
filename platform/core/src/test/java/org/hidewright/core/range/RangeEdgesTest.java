package org.hidewright.core.range;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.hidewright.api.measure.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where answers, checks and choices begin and end within one range. Each model has its edge where its own inequality says,
 * which is what is expected; a step is a sixteenth of the range.
 */
class RangeEdgesTest {
    /** Of a step; the bracket is halved until it is no wider. */
    private static final double FOUND = 1e-7;

    private static RangeStudy<String> study(Range range, DoubleFunction<Trial<String>> model) {
        return RangeStudy.of(List.of(range), x -> model.apply(x[0])).orElseThrow();
    }

    private static Trial<String> chosen(Object choice) {
        return new Trial.Answered<>(Map.of("choice", choice));
    }

    private static Trial<String> told(boolean holds, String what) {
        return new Trial.Answered<>(Map.of("y", 1.0), holds ? Map.of("check", what) : Map.of());
    }

    private static List<Switch> switches(Range range, DoubleFunction<Trial<String>> model) {
        return study(range, model).choices().get("choice").switches();
    }

    /** In narrow and wide ranges, near nothing and far from it, below it and across it. */
    @ParameterizedTest(name = "{2} from {0} to {1}")
    @CsvSource({
        "1000, 1000.016, 1000.00330007",
        "1000, 1016, 1003.3",
        "0, 16000, 3300.7",
        "-16, 0, -12.7",
        "-1000.016, -1000, -1000.0033001",
        "-8e-6, 8e-6, -4.7e-6",
        "1000, 1016, 1012.8",
        "-8e-6, 8e-6, 4.9e-6"
    })
    void edgesAndSwitchesAreFoundToATenMillionthOfAStep(double low, double high, double edge) {
        Range range = Range.between(low, high);
        // where neighbouring numbers lie farther apart than that, to two of them
        double close = Math.max(FOUND * (high - low) / 16, 2 * Math.ulp(Math.max(Math.abs(low), Math.abs(high))));
        boolean lower = edge < range.nominal();
        DoubleFunction<Trial<String>> refusing =
                x -> x < edge == lower ? new Trial.Refused<>("no") : new Trial.Answered<>(Map.of("y", x));
        Part refused = study(range, refusing).refused().get(0).part();
        assertEquals(edge, lower ? refused.to() : refused.from(), close);
        assertEquals(lower ? low : high, lower ? refused.from() : refused.to());
        Raised<String> raised =
                study(range, x -> told(x < edge == lower, "look")).raised().get(0);
        assertEquals(
                edge, lower ? raised.parts().get(0).to() : raised.parts().get(0).from(), close);
        List<Switch> switches = switches(range, x -> chosen(x < edge ? "below" : "above"));
        assertEquals(1, switches.size());
        assertEquals(edge, switches.get(0).at(), close);
    }

    /** Refused in the middle: below 3.3 and above 13.7 of 0 to 16 there are answers, and nothing else is told. */
    @Test
    void ofAModelRefusedAtTheMiddleThePartsWithAnswersAreFound() {
        Range range = Range.between(0, 16);
        RangeStudy<String> study = study(
                range,
                x -> x > 3.3 && x < 13.7
                        ? new Trial.Refused<>("no")
                        : new Trial.Answered<>(Map.of("y", x), Map.of("check", "look")));
        assertEquals(2, study.answered().size());
        Part below = study.answered().get(0);
        assertEquals(0, below.from());
        assertEquals(3.3, below.to(), FOUND);
        Part above = study.answered().get(1);
        assertEquals(13.7, above.from(), FOUND);
        assertEquals(16, above.to());
        assertEquals(Map.of(), study.spreads());
        assertEquals(List.of(), study.raised());
        assertEquals(List.of(), study.refused());
        assertEquals(false, study.placesChange());
        // 17 steps, and two edges halved from a step to its ten-millionth
        assertEquals(17 + 2 * 24, study.tried());
        assertEquals(
                Optional.empty(),
                RangeStudy.of(List.of(range, range), x -> new Trial.Refused<>("no")),
                "nowhere at all");
        assertEquals(
                List.of(),
                study(range, x -> new Trial.Answered<>(Map.of("y", x))).answered());
    }

    @Test
    void whatIsToldAtTheMiddleAndEndsWithinTheRangeIsTold() {
        Range range = Range.between(0, 16);
        Raised<String> ended =
                study(range, x -> told(x > 3.3, "at " + x)).ended().get(0);
        assertEquals("at 8.0", ended.what());
        assertEquals(1, ended.parts().size());
        assertEquals(3.3, ended.parts().get(0).from(), FOUND);
        assertEquals(16, ended.parts().get(0).to());
        assertEquals(List.of(), study(range, x -> told(true, "all over")).ended());
        assertEquals(
                List.of(), study(range, x -> told(x > 9, "not at the middle")).ended());
        // where there is no answer nothing can be told, which ends nothing
        assertEquals(
                List.of(),
                study(range, x -> x < 3.3 ? new Trial.Refused<>("no") : told(true, "wherever it is answered"))
                        .ended());
        RangeStudy<String> two = RangeStudy.of(List.of(range, range), x -> told(x[0] > 3.3 && x[1] < 12.2, "both"))
                .orElseThrow();
        assertEquals(
                List.of(0, 1),
                two.ended().get(0).parts().stream().map(Part::input).toList());
    }

    /** The place told is midway between the nearest two that were tried on either side. */
    @Test
    void anEdgeIsMidwayBetweenTheNearestPlacesTried() {
        double edge = 3.3;
        Range range = Range.between(0, 16);
        TreeSet<Double> tried = new TreeSet<>();
        RangeStudy<String> study = study(range, x -> {
            tried.add(x);
            return x < edge ? new Trial.Refused<>("thin") : new Trial.Answered<>(Map.of("y", x));
        });
        double below = tried.lower(edge);
        double above = tried.ceiling(edge);
        assertTrue(above - below <= FOUND, above + " and " + below);
        assertEquals((below + above) / 2, study.refused().get(0).part().to(), 1e-15);
        tried.clear();
        Switch found = switches(range, x -> {
                    tried.add(x);
                    return chosen(x < edge);
                })
                .get(0);
        assertEquals((tried.lower(edge) + tried.ceiling(edge)) / 2, found.at(), 1e-15);
    }

    /**
     * A range so narrow that there are fewer numbers in a step than halvings asked for: between neighbouring numbers there is
     * nothing left to try. A double of 1000 has a neighbour 1.1e-13 away (IEEE 754, 52 bits behind the point of 2^9).
     */
    @ParameterizedTest
    @CsvSource({"1000, 1e-6", "1000, 1e-9", "1000, 1e-12", "-1000, 1e-8", "1e15, 2"})
    void aRangeOfFewNumbersIsStudiedToAnEnd(double low, double width) {
        Range range = Range.between(low, low + width);
        double edge = low + width * 0.31;
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            RangeStudy<String> study = study(
                    range,
                    x -> x < low + width * 0.2
                            ? new Trial.Refused<>("thin")
                            : new Trial.Answered<>(
                                    Map.of("choice", x < edge),
                                    x > low + width * 0.6 ? Map.of("c", "thick") : Map.of()));
            double near = Math.max(FOUND * width, 4 * Math.ulp(low));
            assertEquals(low + width * 0.2, study.refused().get(0).part().to(), near);
            assertEquals(edge, study.choices().get("choice").switches().get(0).at(), near);
            assertEquals(low + width * 0.6, study.raised().get(0).parts().get(0).from(), near);
        });
    }

    @Test
    void aPartMayLieInsideTheRangeAndThereMayBeSeveral() {
        // 0 to 16 in steps of 1; refused from 1.5 to 4.25 and from 10.5 to 12.75
        RangeStudy<String> study = study(
                Range.between(0, 16),
                x -> x >= 1.5 && x < 4.25 || x >= 10.5 && x < 12.75
                        ? new Trial.Refused<>("gap at " + x)
                        : new Trial.Answered<>(Map.of("y", x)));
        List<RefusedPart<String>> parts = study.refused();
        assertEquals(2, parts.size());
        assertEquals(1.5, parts.get(0).part().from(), FOUND);
        assertEquals(4.25, parts.get(0).part().to(), FOUND);
        assertEquals("gap at 2.0", parts.get(0).why(), "the first step in it is the farthest from the middle");
        assertEquals(10.5, parts.get(1).part().from(), FOUND);
        assertEquals(12.75, parts.get(1).part().to(), FOUND);
        assertEquals("gap at 12.0", parts.get(1).why(), "and here the last");
    }

    @Test
    void aPartOfASingleStepIsAPart() {
        List<Part> parts = study(Range.between(0, 16), x -> told(x > 4.75 && x < 5.5, "at " + x)).raised().stream()
                .flatMap(raised -> raised.parts().stream())
                .toList();
        assertEquals(1, parts.size());
        assertEquals(4.75, parts.get(0).from(), FOUND);
        assertEquals(5.5, parts.get(0).to(), FOUND);
        // an end alone: between the last two steps
        Part end = study(Range.between(0, 16), x -> told(x > 15.5, "end"))
                .raised()
                .get(0)
                .parts()
                .get(0);
        assertEquals(15.5, end.from(), FOUND);
        assertEquals(16, end.to());
        Part start = study(Range.between(0, 16), x -> told(x < 0.5, "start"))
                .raised()
                .get(0)
                .parts()
                .get(0);
        assertEquals(0, start.from());
        assertEquals(0.5, start.to(), FOUND);
    }

    @Test
    void whatIsToldUpToARefusalEndsThere() {
        RangeStudy<String> study = study(
                Range.between(0, 16),
                x -> x > 12.5 ? new Trial.Refused<>("too much at " + x) : told(x > 9.25, "much at " + x));
        Part part = study.raised().get(0).parts().get(0);
        assertEquals(9.25, part.from(), FOUND);
        assertEquals(12.5, part.to(), FOUND);
        assertEquals("much at 12.0", study.raised().get(0).what(), "the last step before the refusal");
        assertEquals("too much at 16.0", study.refused().get(0).why());
    }

    @Test
    void oneThingToldOverTwoInputsHasAPartOfEach() {
        List<Raised<String>> raised = RangeStudy.of(
                        List.of(Range.between(0, 16), Range.between(100, 116)),
                        x -> told(x[0] > 12.5 || x[1] < 103.25, x[0] + " and " + x[1]))
                .orElseThrow()
                .raised();
        assertEquals(1, raised.size());
        assertEquals("16.0 and 108.0", raised.get(0).what(), "the far end of the first part");
        List<Part> parts = raised.get(0).parts();
        assertEquals(List.of(0, 1), parts.stream().map(Part::input).toList());
        assertEquals(12.5, parts.get(0).from(), FOUND);
        assertEquals(16, parts.get(0).to());
        assertEquals(100, parts.get(1).from());
        assertEquals(103.25, parts.get(1).to(), FOUND);
    }

    /** Between two steps a choice may change twice: told is where the lower one ends, and what comes next above it. */
    @Test
    void ofTwoSwitchesWithinAStepTheLowerIsFound() {
        // steps at 5 and 6; the first place tried between is 5.5
        List<Switch> switches =
                switches(Range.between(0, 16), x -> chosen(x < 5.2 ? "3 mm" : x < 5.7 ? "4 mm" : "5 mm"));
        assertEquals(1, switches.size());
        assertEquals(5.2, switches.get(0).at(), FOUND);
        assertEquals("3 mm", switches.get(0).from());
        assertEquals("4 mm", switches.get(0).to());
    }

    @Test
    void aRefusedGapWithinAStepHidesNotWhatComesAfterIt() {
        List<Switch> switches = switches(
                Range.between(0, 16),
                x -> x >= 5.2 && x < 5.8 ? new Trial.Refused<>("between") : chosen(x < 5.2 ? "3 mm" : "4 mm"));
        assertEquals(1, switches.size());
        assertEquals(5.2, switches.get(0).at(), FOUND);
        assertEquals("3 mm", switches.get(0).from());
        assertEquals("4 mm", switches.get(0).to());
    }

    @Test
    void acrossARefusedStepNoSwitchIsTold() {
        RangeStudy<String> study = study(
                Range.between(0, 16),
                x -> x >= 4.2 && x < 6.8 ? new Trial.Refused<>("between") : chosen(x < 5 ? "3 mm" : "4 mm"));
        Choices choice = study.choices().get("choice");
        assertEquals(List.of(), choice.switches());
        assertEquals(Set.of("3 mm"), choice.others());
        assertEquals(4.2, study.refused().get(0).part().from(), FOUND);
        assertEquals(6.8, study.refused().get(0).part().to(), FOUND);
    }

    /** Per input 17 steps and two for the first order; 2^n corners from two to eight inputs; a sample of 400. */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 419", "2, 442", "3, 465", "8, 808", "9, 571"})
    void asManyPlacesAreTriedAsIsSaid(int inputs, int expected) {
        List<Range> ranges =
                Stream.generate(() -> Range.between(0, 1)).limit(inputs).toList();
        RangeStudy<String> study = RangeStudy.<String>of(ranges, x -> new Trial.Answered<>(Map.of("y", 1.0)))
                .orElseThrow();
        assertEquals(expected, study.tried());
        assertEquals(0, study.refusals());
    }

    @Test
    void bothEndsAreTriedExactly() {
        // 0.1 and 0.7 have no exact binary form; what is tried is what was typed, not what sums of steps come to
        List<Double> tried = new ArrayList<>();
        study(Range.between(0.1, 0.7), x -> {
            tried.add(x);
            return chosen(1);
        });
        assertTrue(tried.contains(0.1) && tried.contains(0.7), tried::toString);
    }
}
