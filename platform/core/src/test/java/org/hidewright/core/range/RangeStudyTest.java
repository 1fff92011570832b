package org.hidewright.core.range;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hidewright.api.measure.Range;
import org.junit.jupiter.api.Test;

class RangeStudyTest {
    private static RangeStudy<String> study(List<Range> inputs, Model<String> model) {
        return RangeStudy.of(inputs, model).orElseThrow();
    }

    private static Model<String> number(ToDoubleFunction<double[]> model) {
        return x -> new Trial.Answered<>(Map.of("y", model.applyAsDouble(x)));
    }

    @Test
    void withoutRangesNothingMoves() {
        Spread spread = study(List.of(), number(x -> 7)).spreads().get("y");
        assertEquals(7, spread.nominal());
        assertFalse(spread.moves());
        assertEquals(0, spread.firstOrder().standardUncertainty());
        assertTrue(spread.firstOrderHolds());
    }

    @Test
    void aSquareAtZeroIsMetFromZeroToItsEnds() {
        Spread square = study(List.of(Range.between(-2, 2)), number(x -> x[0] * x[0]))
                .spreads()
                .get("y");
        assertEquals(0, square.low());
        assertEquals(4, square.high());
        assertEquals(0, square.firstOrder().standardUncertainty(), 1e-15);
        assertArrayEquals(new double[] {0}, square.firstOrder().shares());
        assertFalse(square.firstOrderHolds());
    }

    @Test
    void aHumpInsideTheRangeIsMet() {
        // 4 x (1 - x) is 0 at both ends and 1 in the middle
        Spread hump = study(List.of(Range.between(0, 1)), number(x -> 4 * x[0] * (1 - x[0])))
                .spreads()
                .get("y");
        assertEquals(0, hump.low());
        assertEquals(1, hump.high());
    }

    @Test
    void theLargerOfTwoKeepsItsCorner() {
        Spread larger = study(List.of(Range.between(1, 3), Range.between(2, 3)), number(x -> Math.max(x[0], x[1])))
                .spreads()
                .get("y");
        assertEquals(2.5, larger.nominal());
        assertEquals(3, larger.high());
        assertEquals(2, larger.low());
    }

    @Test
    void onlyACornerMeetsTheWorst() {
        // 1 where both are high; nowhere while one alone moves
        Model<String> both = number(x -> x[0] > 0.9 && x[1] > 0.9 && x[2] > 0.9 ? 1 : 0);
        List<Range> three = List.of(Range.between(0, 1), Range.between(0, 1), Range.between(0, 1));
        assertEquals(1, study(three, both).spreads().get("y").high());
        List<Range> nine = Stream.generate(() -> Range.between(0, 1)).limit(9).toList();
        Model<String> all = number(x -> {
            for (double one : x) {
                if (one < 0.999) {
                    return 0;
                }
            }
            return 1;
        });
        assertEquals(1, study(nine.subList(0, 8), all).spreads().get("y").high());
        assertEquals(0, study(nine, all).spreads().get("y").high(), "too many corners are not tried");
    }

    @Test
    void theNearestOfAListSwitchesHalfwayBetween() {
        List<Double> punches = List.of(3.0, 4.0, 5.0);
        RangeStudy<String> study = study(List.of(Range.between(3.2, 4.9)), x -> {
            double nearest = punches.stream()
                    .min((a, b) -> Double.compare(Math.abs(a - x[0]), Math.abs(b - x[0])))
                    .orElseThrow();
            return new Trial.Answered<>(Map.of("punch", String.valueOf(nearest)));
        });
        Choices punch = study.choices().get("punch");
        assertEquals("4.0", punch.nominal());
        assertEquals(Set.of("3.0", "5.0"), punch.others());
        assertEquals(2, punch.switches().size());
        assertEquals(3.5, punch.switches().get(0).at(), 1e-6);
        assertEquals("3.0", punch.switches().get(0).from());
        assertEquals("4.0", punch.switches().get(0).to());
        assertEquals(4.5, punch.switches().get(1).at(), 1e-6);
        assertEquals("5.0", punch.switches().get(1).to());
        assertEquals(0, punch.switches().get(0).input());
        assertTrue(study.spreads().isEmpty());
    }

    @Test
    void aChoiceMetOnlyTogetherIsNamedWithoutASwitch() {
        RangeStudy<String> study = study(
                List.of(Range.between(0, 1), Range.between(0, 1)),
                x -> new Trial.Answered<>(Map.of("fit", x[0] + x[1] > 1.6 ? "tight" : "good")));
        assertEquals(Set.of("tight"), study.choices().get("fit").others());
        assertEquals(List.of(), study.choices().get("fit").switches());
    }

    @Test
    void partsOfTheRangeAreRefused() {
        RangeStudy<String> study = study(
                List.of(Range.between(2, 4), Range.between(0, 1)),
                x -> x[0] > 3.1
                        ? new Trial.Refused<>("too thick")
                        : x[0] < 2.2
                                ? new Trial.Refused<>("too thin")
                                : new Trial.Answered<>(Map.of("y", x[0] + x[1])));
        List<RefusedPart<String>> parts = study.refused();
        assertEquals(2, parts.size());
        assertEquals("too thin", parts.get(0).why());
        assertEquals(0, parts.get(0).part().input());
        assertEquals(2, parts.get(0).part().from());
        assertEquals(2.2, parts.get(0).part().to(), 1e-6);
        assertEquals("too thick", parts.get(1).why());
        assertEquals(3.1, parts.get(1).part().from(), 1e-6);
        assertEquals(4, parts.get(1).part().to());
        Spread sum = study.spreads().get("y");
        assertEquals(3.5, sum.nominal());
        assertEquals(2.2, sum.low(), 0.1, "only the sample comes near");
        assertEquals(4.1, sum.high(), 0.1);
        assertTrue(study.refusals() > 0 && study.refusals() < study.tried());
    }

    private static Trial<String> telling(double[] x, Map<Object, String> told) {
        return new Trial.Answered<>(Map.of("y", x[0]), told);
    }

    @Test
    void whatIsToldInPartsOfARangeIsKeptOnceWithItsParts() {
        RangeStudy<String> study = study(List.of(Range.between(2, 4), Range.between(0, 1)), x -> {
            Map<Object, String> told = new HashMap<>(Map.of("always", "be careful"));
            if (x[0] < 2.3 || x[0] > 3.6) {
                told.put("fit", "poor at " + x[0]);
            }
            if (x[1] > 0.9 && x[0] < 3.9) {
                told.put("edge", "near at " + x[1]);
            }
            return x[0] > 3.9 ? new Trial.Refused<>("too thick") : telling(x, told);
        });
        Map<String, Raised<String>> raised = new HashMap<>();
        study.raised().forEach(one -> raised.put(one.what().split(" ")[0], one));
        assertEquals(Set.of("poor", "near"), raised.keySet());
        Raised<String> fit = raised.get("poor");
        assertEquals("poor at 2.0", fit.what(), "as it is at the far end");
        assertEquals(2, fit.parts().size());
        assertEquals(2, fit.parts().get(0).from());
        assertEquals(2.3, fit.parts().get(0).to(), 1e-6);
        assertEquals(3.6, fit.parts().get(1).from(), 1e-6);
        assertEquals(3.9, fit.parts().get(1).to(), 1e-6, "what is refused tells nothing");
        Raised<String> edge = raised.get("near");
        assertEquals("near at 1.0", edge.what());
        assertEquals(1, edge.parts().size());
        assertEquals(1, edge.parts().get(0).input());
        assertEquals(0.9, edge.parts().get(0).from(), 1e-6);
        assertEquals(1, edge.parts().get(0).to());
    }

    @Test
    void whatIsToldOnlyAsSeveralMoveTogetherHasNoPart() {
        List<Raised<String>> raised = study(
                        List.of(Range.between(0, 1), Range.between(0, 1)),
                        x -> telling(x, x[0] + x[1] > 1.6 ? Map.of("fit", "tight") : Map.of()))
                .raised();
        assertEquals(List.of(new Raised<>("tight", List.of())), raised);
    }

    @Test
    void whereOneSideIsRefusedTheOtherTellsTheUncertainty() {
        Model<String> model = x -> x[0] > 1 ? new Trial.Refused<>("over") : new Trial.Answered<>(Map.of("y", 3 * x[0]));
        Spread spread = study(List.of(Range.between(0, 2)), model).spreads().get("y");
        assertEquals(3 / Math.sqrt(3), spread.firstOrder().standardUncertainty(), 1e-12);
        Model<String> mirrored =
                x -> x[0] < 1 ? new Trial.Refused<>("under") : new Trial.Answered<>(Map.of("y", 3 * x[0]));
        Spread other = study(List.of(Range.between(0, 2)), mirrored).spreads().get("y");
        assertEquals(3 / Math.sqrt(3), other.firstOrder().standardUncertainty(), 1e-12);
    }

    @Test
    void refusedAtItsNominalValuesThereIsNoStudy() {
        assertTrue(RangeStudy.of(List.of(Range.between(0, 2)), x -> new Trial.Refused<>("never"))
                .isEmpty());
    }

    @Test
    void answersThatComeAndGoAreTold() {
        RangeStudy<String> study = study(List.of(Range.between(0, 2)), x -> {
            Map<String, Object> answers = new HashMap<>(Map.of("y", x[0]));
            if (x[0] > 1.5) {
                answers.put("extra", 1.0);
            }
            return new Trial.Answered<>(answers);
        });
        assertTrue(study.placesChange());
        assertEquals(Set.of("y"), study.spreads().keySet());
        assertFalse(study(List.of(Range.between(0, 2)), number(x -> x[0])).placesChange());
    }

    @Test
    void everyStudyIsTheSame() {
        List<double[]> first = new ArrayList<>();
        List<double[]> second = new ArrayList<>();
        List<Range> inputs = List.of(Range.between(0, 1), Range.between(5, 6));
        for (List<double[]> places : List.of(first, second)) {
            study(inputs, x -> {
                places.add(x.clone());
                return new Trial.Answered<>(Map.of("y", x[0] * x[1]));
            });
        }
        assertEquals(first.size(), second.size());
        for (int i = 0; i < first.size(); i++) {
            assertArrayEquals(first.get(i), second.get(i));
            assertTrue(inputs.get(0).contains(first.get(i)[0]) && inputs.get(1).contains(first.get(i)[1]));
        }
    }
}
